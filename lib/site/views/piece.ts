import type { Guide } from '../../guide/index.ts';
import type { Measure, Piece } from '../../model/index.ts';
import { DRESS_CODES } from '../../vocabulary/index.ts';
import type { PictureIndex } from '../pictures.ts';
import type { SiteVoice } from '../voice.ts';
import { type Frame, frameOf } from './frame.ts';
import { type ImageView, namedNote, pieceImage } from './pictures.ts';
import { type LookTile, tileOf } from './tile.ts';

export interface Fact {
  readonly name: string;
  readonly value: string;
}

export interface PieceView {
  readonly frame: Frame;
  readonly kick: string;
  readonly name: string;
  /** On a wide page: true where the facts stand beside the picture, since below it they would make its column the longer. */
  readonly factsBeside: boolean;
  readonly image: ImageView | undefined;
  readonly note: string;
  readonly facts: readonly Fact[];
  readonly earns: readonly Fact[];
  readonly goesWith: readonly { readonly name: string; readonly href: string; readonly cloth: string | undefined }[];
  readonly looks: readonly LookTile[];
  readonly words: Readonly<
    Record<'facts' | 'earns' | 'earnsMeans' | 'goesWith' | 'looks' | 'note' | 'estimated' | 'named', string>
  >;
}

/** The least insulation, clo, that is called so: a T-shirt is light, a shirt medium, a jumper warm, a coat very warm. common practice, no source */
const WARMTHS = [
  [0.5, 'very warm'],
  [0.26, 'warm'],
  [0.15, 'medium'],
  [0.03, 'light'],
] as const;

/** Of a wide page, in its pixels: the picture's column and most height, and what about stands beside it. */
const WIDE = { column: 520, picture: 560, head: 400, noteLine: 32, partner: 32 } as const;
/** Letters in a line of the note there. */
const NOTE_LETTERS = 46;

const pictureHeight = (image: ImageView | undefined): number =>
  image === undefined ? 0 : Math.min(WIDE.picture, (WIDE.column / image.width) * image.height);

const besideHeight = (note: string, partners: number): number =>
  WIDE.head +
  Math.ceil(note.length / NOTE_LETTERS) * WIDE.noteLine +
  (partners === 0 ? 0 : (partners + 2) * WIDE.partner);

const factsOf = (piece: Piece, { word, formats }: SiteVoice): readonly Fact[] => {
  const measured = ({ basis }: Measure, text: string): string => (basis === 'estimated' ? `${text} ≈` : text);
  const warmth = WARMTHS.find(([least]) => piece.clo.value >= least)?.[1];
  return [
    { name: word('fact cloth'), value: piece.fabricText },
    {
      name: word('fact colours'),
      value: formats.list(piece.colours.map(({ name }) => word('colour name', { colour: name }))),
    },
    { name: word('fact weight'), value: measured(piece.grams, formats.grams(piece.grams.value)) },
    { name: word('fact room'), value: measured(piece.litres, formats.litres(piece.litres.value)) },
    ...(warmth === undefined
      ? []
      : [{ name: word('fact warmth'), value: measured(piece.clo, word('warmth of a piece', { warmth })) }]),
    {
      name: word('fact dress'),
      value: word('dress from to', {
        low: DRESS_CODES[piece.dress.low] ?? '',
        high: DRESS_CODES[piece.dress.high] ?? '',
      }),
    },
    ...(piece.care.dryHours.value === 0
      ? []
      : [
          {
            name: word('fact dries'),
            value: measured(piece.care.dryHours, word('hours', { hours: piece.care.dryHours.value })),
          },
        ]),
  ];
};

const earnsOf = (guide: Guide, piece: Piece, { word, formats }: SiteVoice): readonly Fact[] => {
  const earned = guide.earnings.find((entry) => entry.piece === piece.id);
  if (earned === undefined) return [];
  const layered = {
    name: word('layered looks'),
    value: word('so many of', {
      count: formats.count(earned.layeredLooks),
      of: formats.count(guide.counts.layered),
    }),
  };
  return [
    // shoes, bags and jewellery finish a look: layered looks are counted without them
    ...(earned.layeredLooks === 0n ? [] : [layered]),
    {
      name: word('complete looks'),
      value: word('so many of', {
        count: formats.count(earned.completeLooks),
        of: formats.count(guide.counts.complete),
      }),
    },
    { name: word('worn on the trip'), value: word('times', { count: earned.wears }) },
  ];
};

/** One piece: what it is, what it earns, what it goes with, all its shown looks. */
export const pieceView = (guide: Guide, piece: Piece, pictures: PictureIndex, voice: SiteVoice): PieceView => {
  const { word } = voice;
  const partners = guide.pairs
    .filter(({ goes, top, bottom }) => goes && (top === piece.id || bottom === piece.id))
    .map(({ top, bottom }) => (top === piece.id ? bottom : top));
  const image = pieceImage(piece.id, pictures, piece.name, true);
  const looks = guide.looks
    .filter(({ look }) => look.worn.some((seat) => seat.piece === piece.id))
    .map((look) => tileOf(guide, look, pictures, voice, 480));
  return {
    frame: frameOf({
      guide,
      voice,
      page: 'pieces',
      path: `pieces/${piece.id}/`,
      title: piece.name,
      description: `${piece.name}, ${piece.fabricText}`,
    }),
    kick: guide.capsule.title,
    name: piece.name,
    factsBeside: pictureHeight(image) > besideHeight(piece.note, partners.length),
    image,
    note: voice.markdown(piece.note),
    facts: factsOf(piece, voice),
    earns: earnsOf(guide, piece, voice),
    goesWith: guide.pieces
      .filter(({ id }) => partners.includes(id))
      .map(({ id, name }) => ({ name, href: `pieces/${id}/`, cloth: pictures.cloth[id]?.address })),
    looks,
    words: {
      facts: word('facts heading'),
      earns: word('earns heading'),
      earnsMeans: word('earns means'),
      goesWith: word('goes with'),
      looks: word('looks of piece'),
      note: word('note heading'),
      estimated: word('estimated means'),
      named: namedNote(
        looks.map(({ named }) => named),
        voice,
      ),
    },
  };
};
