import type { PaletteColour } from '../../colour/index.ts';
import type { Guide } from '../../guide/index.ts';
import type { Piece } from '../../model/index.ts';
import { KIND_GROUPS, KINDS } from '../../vocabulary/index.ts';
import type { PictureIndex } from '../pictures.ts';
import type { SiteVoice } from '../voice.ts';
import { type Frame, frameOf } from './frame.ts';
import { type ImageView, pieceImage } from './pictures.ts';

export interface PieceTile {
  readonly id: string;
  readonly name: string;
  readonly href: string;
  readonly fabric: string;
  readonly image: (ImageView & { readonly shown: number; readonly shownHeight: number }) | undefined;
  readonly cloth: string | undefined;
  readonly shown: string;
  /** One stitch a shown look. */
  readonly stitches: readonly number[];
}

export interface Bolt {
  readonly name: string;
  readonly role: string;
  readonly hex: string;
  /** From 1 to 6, in proportion to what is seen of it. */
  readonly size: number;
  /** True where the strip is narrower than its words, on a wide page: they stand upright under it. */
  readonly upright: boolean;
}

export interface PiecesView {
  readonly frame: Frame;
  readonly kick: string;
  readonly heading: string;
  readonly rationale: string;
  readonly bolts: readonly Bolt[];
  readonly paletteLink: string;
  readonly groups: readonly {
    readonly heading: string;
    readonly count: number;
    /** Columns the group takes, of six. */
    readonly columns: number;
    readonly pieces: readonly PieceTile[];
  }[];
}

/** Page pixels a centimetre: one scale for every piece of the page; tiny things are shown at least this wide. */
const PX_PER_CM = 1.75;
const LEAST_WIDTH = 34;
const COLUMNS = 6;
const BOLTS_SHOWN = 8;

/** A piece's picture at the one scale of the page. */
export const pieceToScale = (id: string, pictures: PictureIndex, pxPerCm: number, alt = ''): PieceTile['image'] => {
  const image = pieceImage(id, pictures, alt);
  if (image === undefined) return undefined;
  const shown = Math.max(LEAST_WIDTH, Math.round(image.widthCm * pxPerCm));
  return { ...image, shown, shownHeight: Math.round((shown * image.height) / image.width) };
};

export const pieceHref = (id: string): string => `pieces/${id}/`;

const tileOf = (guide: Guide, piece: Piece, pictures: PictureIndex, { word }: SiteVoice): PieceTile => {
  const shownIn = guide.earnings.find((entry) => entry.piece === piece.id)?.shownIn ?? [];
  return {
    id: piece.id,
    name: piece.name,
    href: pieceHref(piece.id),
    fabric: piece.fabricText,
    image: pieceToScale(piece.id, pictures, PX_PER_CM),
    cloth: pictures.cloth[piece.id]?.address,
    shown: word('in shown looks', { count: shownIn.length }),
    stitches: shownIn.map((_, index) => index * 9 + 2),
  };
};

/** Width of a wide page's column, and of a letter of the strip's words, pixels. */
const SHEET = 1104;
const LETTER = 7.4;

/** Swatches of a palette, sized by how much of each is seen; `across` is the width they share on a wide page, pixels. */
export const boltsOf = (
  colours: readonly PaletteColour[],
  { word }: SiteVoice,
  across: number = SHEET,
): readonly Bolt[] => {
  const largest = Math.max(...colours.map(({ share }) => share), 0.001);
  const bolts = colours.map(({ colour, role, metal, share }) => ({
    name: word('colour name', { colour: colour.name }),
    role: word(metal ? 'role metal' : `role ${role}`),
    hex: colour.hex,
    size: Math.max(1, Math.round((share / largest) * COLUMNS)),
  }));
  const whole = bolts.reduce((sum, { size }) => sum + size, 0);
  return bolts.map((bolt) => {
    const words = Math.max(bolt.name.length, bolt.role.length) * LETTER;
    return { ...bolt, upright: words > (across * bolt.size) / whole - 2 };
  });
};

export const piecesView = (guide: Guide, pictures: PictureIndex, voice: SiteVoice): PiecesView => ({
  frame: frameOf({
    guide,
    voice,
    page: 'pieces',
    path: 'pieces/',
    title: voice.word('pieces heading'),
    description: guide.capsule.title,
  }),
  kick: voice.word('capsule pieces', { pieces: guide.pieces.length }),
  heading: guide.capsule.title,
  rationale: voice.markdown(guide.capsule.rationale),
  bolts: boltsOf(guide.palette.colours.slice(0, BOLTS_SHOWN), voice),
  paletteLink: voice.word('palette in full'),
  groups: KIND_GROUPS.flatMap((group) => {
    const pieces = guide.pieces
      .filter(({ kind }) => KINDS[kind].group === group)
      .map((piece) => tileOf(guide, piece, pictures, voice));
    return pieces.length === 0
      ? []
      : [
          {
            heading: voice.word(`group ${group}`),
            count: pieces.length,
            columns: Math.min(COLUMNS, pieces.length),
            pieces,
          },
        ];
  }),
});
