import { drawnLarger } from '../../draw/index.ts';
import { type Guide, rulesFor } from '../../guide/index.ts';
import type { HouseRuleSettings, Piece } from '../../model/index.ts';
import { packRules, slotsOfPiece } from '../../outfit/index.ts';
import type { Slot } from '../../vocabulary/index.ts';
import { phrase } from '../../words/index.ts';
import type { PictureIndex } from '../pictures.ts';
import type { TryData, TryPiece } from '../try-data.ts';
import type { SiteVoice } from '../voice.ts';
import { type Frame, frameOf, tryHref } from './frame.ts';
import { type PieceTile, pieceToScale } from './pieces.ts';
import { type LookTile, tileOf } from './tile.ts';

export interface TryView {
  readonly frame: Frame;
  readonly kick: string;
  readonly heading: string;
  readonly lede: string;
  readonly groups: readonly {
    readonly heading: string;
    /** Columns the group takes, of six. */
    readonly columns: number;
    readonly pieces: readonly { readonly id: string; readonly name: string; readonly image: PieceTile['image'] }[];
  }[];
  /** Looks of the book to begin with. */
  readonly starts: readonly LookTile[];
  /** `TryData` as JSON. */
  readonly data: string;
  readonly notes: readonly string[];
  readonly words: Readonly<
    Record<
      | 'needs'
      | 'clear'
      | 'reasons'
      | 'advice'
      | 'missing'
      | 'share'
      | 'send'
      | 'against'
      | 'board'
      | 'empty'
      | 'pairs'
      | 'begin'
      | 'looks',
      string
    >
  >;
}

/** Page pixels a centimetre in the list of pieces. */
const PX_PER_CM = 0.95;
const COLUMNS = 6;

type Heading =
  | 'tops'
  | 'bottoms'
  | 'one-pieces'
  | 'swimwear'
  | 'layers'
  | 'coats'
  | 'legwear'
  | 'shoes'
  | 'accessories';

/** Under which heading a piece is picked, by the place it is made for. */
const HEADINGS: Readonly<Partial<Record<Slot, Heading>>> = {
  top: 'tops',
  bottom: 'bottoms',
  'one-piece': 'one-pieces',
  swim: 'swimwear',
  'cover-up': 'swimwear',
  'mid layer': 'layers',
  'outer layer': 'coats',
  'leg layer': 'legwear',
  legwear: 'legwear',
  shoes: 'shoes',
};
const ORDER: readonly Heading[] = [
  'tops',
  'bottoms',
  'one-pieces',
  'layers',
  'coats',
  'swimwear',
  'legwear',
  'shoes',
  'accessories',
];

const STARTS_SHOWN = 6;

/** Looks to begin with; those first whose pictures everybody can tell apart. Each leads to where it can be changed. */
const startsOf = (guide: Guide, pictures: PictureIndex, voice: SiteVoice): TryView['starts'] => {
  const plain = guide.looks.filter(({ hardToTell }) => hardToTell.length === 0);
  return [...new Set([...plain, ...guide.looks])].slice(0, STARTS_SHOWN).map((look) => ({
    ...tileOf(guide, look, pictures, voice, 240),
    href: tryHref(look.look.worn.map(({ piece }) => piece)),
  }));
};

const slotOf = (piece: Piece): Slot => slotsOfPiece(piece)[0] ?? 'top';

const groupsOf = (guide: Guide, pictures: PictureIndex, { word }: SiteVoice): TryView['groups'] =>
  ORDER.flatMap((heading) => {
    const pieces = guide.pieces.filter((piece) => (HEADINGS[slotOf(piece)] ?? 'accessories') === heading);
    if (pieces.length === 0) return [];
    return [
      {
        heading: word(`group ${heading}`),
        columns: Math.min(COLUMNS, pieces.length),
        pieces: pieces.map(({ id, name }) => ({ id, name, image: pieceToScale(id, pictures, PX_PER_CM) })),
      },
    ];
  });

const refusalOf = ({ findings }: Guide, id: string, { say }: SiteVoice): string | undefined => {
  const found = findings.find(
    ({ rule, about }) => (rule === 'fabric-refused' || rule === 'heel-refused') && about.includes(id),
  );
  return found === undefined ? undefined : say(found.message);
};

const dataOf = (
  guide: Guide,
  pictures: PictureIndex,
  houseRules: HouseRuleSettings,
  base: string,
  voice: SiteVoice,
): TryData => {
  const { word, say } = voice;
  const { language, temperature, length, weight } = guide.studio;
  return {
    studio: { language, temperature, length, weight },
    rules: packRules(rulesFor(guide.pieces, guide.capsule, houseRules), say),
    pieces: Object.fromEntries(
      guide.pieces.flatMap((piece): [string, TryPiece][] => {
        const set = pictures.pieces[piece.id];
        const [clear, night] = [set?.clear[0], set?.night[0]];
        if (set === undefined || clear === undefined || night === undefined) return [];
        const { widthCm, heightCm, shape } = set;
        const refused = refusalOf(guide, piece.id, voice);
        return [
          [
            piece.id,
            {
              slot: slotOf(piece),
              shape,
              clear: base + clear.address,
              night: base + night.address,
              widthCm: Math.round(widthCm * 10) / 10,
              heightCm: Math.round(heightCm * 10) / 10,
              ...(refused === undefined ? {} : { refused }),
            },
          ],
        ];
      }),
    ),
    looks: Object.fromEntries(
      guide.looks.map(({ look, number, title, slug }) => [
        look.id,
        { text: word('try same as', { number, title: say(title) }), href: `${base}looks/${slug}/` },
      ]),
    ),
    words: {
      goes: word('try goes'),
      goesSoFar: word('try goes so far'),
      not: word('try not'),
      empty: word('try empty'),
      board: word('try board'),
      crowded: word('try crowded'),
      copied: word('try copied'),
      heading: word('try heading'),
    },
  };
};

/** The page on which a reader puts pieces together and is told whether they go, by the rules of the book. */
export const tryView = (
  guide: Guide,
  pictures: PictureIndex,
  houseRules: HouseRuleSettings,
  voice: SiteVoice,
): TryView => {
  const { word, say } = voice;
  const frame = frameOf({
    guide,
    voice,
    page: 'try',
    path: 'try/',
    title: word('try heading'),
    description: word('try lede'),
    script: `try-${voice.sentences}.js`,
  });
  const larger = guide.pieces.filter(({ kind }) => drawnLarger(kind)).map(({ name }) => name);
  return {
    frame,
    kick: word('capsule pieces', { pieces: guide.pieces.length }),
    heading: word('try heading'),
    lede: word('try lede'),
    groups: groupsOf(guide, pictures, voice),
    starts: startsOf(guide, pictures, voice),
    data: JSON.stringify(dataOf(guide, pictures, houseRules, frame.base, voice)),
    notes: larger.length === 0 ? [] : [say(phrase('draw', 'drawn larger', { pieces: larger }))],
    words: {
      needs: word('try needs script'),
      clear: word('try clear'),
      reasons: word('try reasons'),
      advice: word('try advice'),
      missing: word('try missing'),
      share: word('try share'),
      send: word('try send'),
      against: word('try against'),
      board: word('try board'),
      empty: word('try empty'),
      pairs: word('nav pairs'),
      begin: word('try begin'),
      looks: word('nav looks'),
    },
  };
};
