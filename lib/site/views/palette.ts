import type { PaletteColour } from '../../colour/index.ts';
import type { Guide } from '../../guide/index.ts';
import { phrase } from '../../words/index.ts';
import type { PictureIndex } from '../pictures.ts';
import { paletteWheel, type Wheel } from '../svg/wheel.ts';
import type { SiteVoice } from '../voice.ts';
import { type Frame, frameOf } from './frame.ts';
import { additionsOf, type NoteView, notesOf, type VisionView, visionOf } from './palette-notes.ts';
import { type PairGrid, pairGridOf, type RelationsView, relationsOf } from './palette-relations.ts';
import { type Bolt, boltsOf, pieceHref } from './pieces.ts';

export interface PaletteView {
  readonly frame: Frame;
  readonly kick: string;
  readonly heading: string;
  readonly summary: readonly string[];
  readonly bolts: readonly Bolt[];
  readonly wheel: Wheel;
  /** The wheel in words, for who does not see it. */
  readonly wheelSaid: string;
  readonly rows: readonly {
    readonly name: string;
    readonly hex: string;
    readonly role: string;
    readonly hue: string;
    readonly share: string;
    readonly pieces: readonly { readonly name: string; readonly href: string }[];
  }[];
  readonly relations: RelationsView;
  readonly pairs: PairGrid;
  readonly notes: readonly NoteView[];
  /** Good news, where there is nothing to note. */
  readonly fine: readonly string[];
  readonly additions: readonly { readonly hex: string; readonly text: string }[];
  readonly vision: VisionView;
  readonly words: Readonly<
    Record<
      | 'wheel'
      | 'wheelMeans'
      | 'colour'
      | 'role'
      | 'hue'
      | 'share'
      | 'table'
      | 'notes'
      | 'more'
      | 'moreMeans'
      | 'nothingMore',
      string
    >
  >;
}

/** A share below this would be rounded to nothing. */
const LEAST_SHARE = 0.005;

/** Hue families in the order in which the palette shows them, each with its colours. */
const wheelInWords = (colours: readonly PaletteColour[], { say }: SiteVoice): string => {
  const families = [...new Set(colours.map(({ family }) => family))].map((family) =>
    say(
      phrase('palette', 'wheel family', {
        family: say(phrase('colour', 'family name', { family })),
        colours: colours.filter((swatch) => swatch.family === family).map(({ colour }) => colour.name),
      }),
    ),
  );
  return say(phrase('palette', 'wheel said', { families }));
};

/** The palette: swatches in proportion, the wheel, what goes with what and why, and a table that says the same in words. */
export const paletteView = (guide: Guide, pictures: PictureIndex, voice: SiteVoice): PaletteView => {
  const { word, say, formats } = voice;
  const { colours, summary, lonely, tooAlike } = guide.palette;
  const told = (key: 'nothing alone' | 'nothing alike'): string => say(phrase('palette', key, {}));
  return {
    frame: frameOf({
      guide,
      voice,
      page: 'pieces',
      path: 'palette/',
      title: word('palette heading'),
      description: summary.map(say).join(' '),
    }),
    kick: guide.capsule.title,
    heading: word('palette heading'),
    summary: summary.map(say),
    bolts: boltsOf(colours, voice),
    wheel: paletteWheel(colours, (colour) => word('colour name', { colour })),
    wheelSaid: wheelInWords(colours, voice),
    rows: colours.map(({ colour, role, metal, family, share, pieces }) => ({
      name: word('colour name', { colour: colour.name }),
      hex: colour.hex,
      role: word(metal ? 'role metal' : `role ${role}`),
      hue: say(phrase('colour', 'family name', { family })),
      share: share < LEAST_SHARE ? say(phrase('palette', 'hardly seen', {})) : formats.percent(share),
      pieces: pieces.map((id) => ({
        name: guide.pieces.find((piece) => piece.id === id)?.name ?? id,
        href: pieceHref(id),
      })),
    })),
    relations: relationsOf(guide.palette, voice),
    pairs: pairGridOf(guide, pictures, voice),
    notes: notesOf(guide, pictures, voice),
    fine: [
      ...(lonely.length === 0 ? [told('nothing alone')] : []),
      ...(tooAlike.length === 0 ? [told('nothing alike')] : []),
    ],
    additions: additionsOf(guide.palette, voice),
    vision: visionOf(guide, voice),
    words: {
      wheel: word('wheel heading'),
      wheelMeans: say(phrase('palette', 'wheel means', {})),
      colour: say(phrase('palette', 'colour and pieces', {})),
      role: word('column role'),
      hue: say(phrase('palette', 'hue heading', {})),
      share: word('column share'),
      table: word('palette table'),
      notes: say(phrase('palette', 'notes heading', {})),
      more: say(phrase('palette', 'more heading', {})),
      moreMeans: say(phrase('palette', guide.capsule.mood.palette.length > 0 ? 'more means' : 'more means any', {})),
      nothingMore: say(phrase('palette', 'nothing more', {})),
    },
  };
};
