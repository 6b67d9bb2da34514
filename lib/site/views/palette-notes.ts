import { DICHROMACIES, type Dichromacy, type PaletteReport, seenWith } from '../../colour/index.ts';
import type { Guide } from '../../guide/index.ts';
import type { Finding } from '../../model/index.ts';
import { phrase } from '../../words/index.ts';
import type { PictureIndex } from '../pictures.ts';
import type { SiteVoice } from '../voice.ts';

/** A finding about colours, with the cloths it speaks of. */
export interface NoteView {
  readonly cloths: readonly string[];
  readonly message: string;
  readonly reason: string;
  readonly mend: string;
}

const HARD_TO_TELL = 'colour-hard-to-tell';

const isOfColour = ({ rule }: Finding): boolean => rule.startsWith('colour-');

/** What the check has to say of the colours; pieces that are hard to tell apart have a part of their own. */
export const notesOf = ({ findings }: Guide, pictures: PictureIndex, { say }: SiteVoice): readonly NoteView[] =>
  findings
    .filter((finding) => isOfColour(finding) && finding.rule !== HARD_TO_TELL)
    .map(({ about, message, reason, mend }) => ({
      cloths: about.flatMap((id) => pictures.cloth[id]?.address ?? []),
      message: say(message),
      reason: reason === undefined ? '' : say(reason),
      mend: mend === undefined ? '' : say(mend),
    }));

/** What one colour more would do, each with its swatch. */
export const additionsOf = (
  { additions }: PaletteReport,
  { say }: SiteVoice,
): readonly { readonly hex: string; readonly text: string }[] =>
  additions.map(({ colour, reason }) => ({ hex: colour.hex, text: say(reason) }));

interface Stripe {
  readonly x: number;
  readonly width: number;
  readonly fill: string;
}

/** The palette as people with and without each kind of cone see it. */
export interface VisionView {
  readonly strips: readonly { readonly name: string; readonly stripes: readonly Stripe[] }[];
  readonly pairs: readonly {
    /** The grounds of the two pieces: as they are, and as they are seen. */
    readonly usual: readonly [string, string];
    readonly seen: readonly [string, string];
    readonly message: string;
    readonly reason: string;
  }[];
  readonly words: Readonly<Record<'heading' | 'means' | 'order' | 'seenAs' | 'nothing', string>>;
}

/** Strips are drawn this wide, in the units of their view box. */
const STRIP = 1000;

const stripesOf = ({ colours }: PaletteReport, seen: (hex: string) => string): readonly Stripe[] => {
  let x = 0;
  return colours.map(({ colour, share }) => {
    const width = Math.round(share * STRIP * 10) / 10;
    const stripe = { x: Math.round(x * 10) / 10, width, fill: seen(colour.hex) };
    x += width;
    return stripe;
  });
};

export const visionOf = (guide: Guide, { say }: SiteVoice): VisionView => {
  const told = (key: 'vision heading' | 'vision means' | 'vision usual' | 'seen as' | 'nothing hard'): string =>
    say(phrase('palette', key, {}));
  const groundOf = (id: string | undefined): string =>
    guide.pieces.find((piece) => piece.id === id)?.colours[0]?.hex ?? '#888888';
  const strip = (vision: Dichromacy): VisionView['strips'][number] => ({
    name: say(phrase('palette', 'vision without', { plain: say(phrase('colour', 'vision plain', { vision })) })),
    stripes: stripesOf(guide.palette, (hex) => seenWith(vision, hex)),
  });
  return {
    strips: [
      { name: told('vision usual'), stripes: stripesOf(guide.palette, (hex) => hex) },
      ...DICHROMACIES.map(strip),
    ],
    pairs: guide.findings
      .filter(({ rule }) => rule === HARD_TO_TELL)
      .map(({ about: [one, two], message, reason }) => {
        const [vision = 'deuteranopia'] =
          guide.palette.hardToTell.find((pair) => pair.one === one && pair.two === two)?.visions ??
          guide.palette.hardToTell.find((pair) => pair.one === two && pair.two === one)?.visions ??
          [];
        return {
          usual: [groundOf(one), groundOf(two)] as const,
          seen: [seenWith(vision, groundOf(one)), seenWith(vision, groundOf(two))] as const,
          message: say(message),
          reason: reason === undefined ? '' : say(reason),
        };
      }),
    words: {
      heading: told('vision heading'),
      means: told('vision means'),
      order: say(
        phrase('palette', 'palette in order', { colours: guide.palette.colours.map(({ colour }) => colour.name) }),
      ),
      seenAs: told('seen as'),
      nothing: told('nothing hard'),
    },
  };
};
