import type { Formats } from '../formats.ts';
import { capital } from '../letters.ts';

/** English sentences of the palette page. */
export const palette = {
  'wheel said': (v: { families: readonly string[] }) => `The palette on the colour wheel. ${v.families.join(' ')}`,
  'wheel family': (v: { family: string; colours: readonly string[] }, f: Formats) =>
    capital(`${v.family}: ${f.list(v.colours)}.`),
  'wheel means': () =>
    'Each dot is a colour. Its direction is the hue, its distance from the middle the strength, its size how much of it is seen. Colours across the middle from each other are opposites.',
  'hue heading': () => 'Hue',
  'colour and pieces': () => 'Colour, and the pieces that show it',
  'hardly seen': (_: Record<never, never>, f: Formats) => `under ${f.percent(0.01)}`,
  'relations heading': () => 'How they go together',
  'relations means': () =>
    'What counts is where two colours stand on the wheel, and how strong and how light they are.',
  'neutrals go': (v: { colours: readonly string[] }, f: Formats) =>
    capital(
      v.colours.length === 1
        ? `${f.list(v.colours)} is a neutral and goes with every colour here.`
        : `${f.list(v.colours)} are neutrals and go with every colour here.`,
    ),
  'metals go': (v: { colours: readonly string[] }, f: Formats) =>
    capital(`${f.list(v.colours)}: metal goes with everything.`),
  'every two': () => 'Every two colours, with the reason',
  'two colours': () => 'Two colours',
  relation: () => 'Relation',
  why: () => 'Why',
  apart: () => 'How far apart',
  'pairs heading': () => 'Tops with bottoms, by colour',
  'pairs means': () => 'Each pair as it is worn, the top above. Here colour alone has a say:',
  'pairs in full': () => 'every pair, with all reasons',
  tops: () => 'tops',
  bottoms: () => 'bottoms',
  goes: () => 'goes',
  'does not go': () => 'does not go',
  'notes heading': () => 'Worth a second look',
  'nothing alone': () => 'No piece stands alone: each has something to go with.',
  'nothing alike': () => 'No two pieces that do the same job are too alike in colour.',
  'more heading': () => 'One colour more',
  'more means': () => 'What one more plain piece would do, in the colours of this mood.',
  'more means any': () => 'What one more plain piece would do.',
  'nothing more': () => 'No new colour would make more pairs.',
  'vision heading': () => 'As others see it',
  // one in twelve and one in two hundred: red-green deficiency of all degrees among Europeans, from memory
  'vision means': () =>
    'About one man in twelve and one woman in two hundred tell reds from greens less well than others. The strips show the palette with one kind of cone missing. Where that touches a look, the names of its pieces stand beside every picture of it.',
  'vision usual': () => 'With all three kinds of cones',
  'vision without': (v: { plain: string }) => capital(`with ${v.plain}`),
  'palette in order': (v: { colours: readonly string[] }, f: Formats) => capital(`${f.list(v.colours)}.`),
  'seen as': () => 'As they are, and as they are seen',
  'nothing hard': () => 'No two pieces that are worn together in this book look alike to anyone.',
} satisfies Record<string, (values: never, formats: Formats) => string>;
