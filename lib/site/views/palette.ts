import type { Guide } from '../../guide/index.ts';
import { paletteWheel, type Wheel } from '../svg/wheel.ts';
import type { SiteVoice } from '../voice.ts';
import { type Frame, frameOf } from './frame.ts';
import { type Bolt, boltsOf, pieceHref } from './pieces.ts';

export interface PaletteView {
  readonly frame: Frame;
  readonly kick: string;
  readonly heading: string;
  readonly summary: readonly string[];
  readonly bolts: readonly Bolt[];
  readonly wheel: Wheel;
  readonly rows: readonly {
    readonly name: string;
    readonly hex: string;
    readonly role: string;
    readonly share: string;
    readonly pieces: readonly { readonly name: string; readonly href: string }[];
  }[];
  readonly words: Readonly<Record<'wheel' | 'wheelMeans' | 'colour' | 'role' | 'share' | 'pieces' | 'table', string>>;
}

/** The palette: swatches in proportion, the wheel, and a table that says the same in words. */
export const paletteView = (guide: Guide, voice: SiteVoice): PaletteView => {
  const { word, say, formats } = voice;
  const { colours, summary } = guide.palette;
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
    wheel: paletteWheel(colours, voice),
    rows: colours.map(({ colour, role, share, pieces }) => ({
      name: word('colour name', { colour: colour.name }),
      hex: colour.hex,
      role: word(`role ${role}`),
      share: formats.percent(share),
      pieces: pieces.map((id) => ({
        name: guide.pieces.find((piece) => piece.id === id)?.name ?? id,
        href: pieceHref(id),
      })),
    })),
    words: {
      wheel: word('wheel heading'),
      wheelMeans: word('wheel means'),
      colour: word('column colour'),
      role: word('column role'),
      share: word('column share'),
      pieces: word('pieces heading'),
      table: word('palette table'),
    },
  };
};
