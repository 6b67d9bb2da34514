import type { LineCheck } from '../../capsule/index.ts';
import type { Guide, MoodPair } from '../../guide/index.ts';
import type { LookCounts } from '../../model/index.ts';
import { phrase } from '../../words/index.ts';
import type { PictureIndex } from '../pictures.ts';
import type { SiteVoice } from '../voice.ts';
import { type Frame, frameOf } from './frame.ts';
import { type Bolt, boltsOf, type PieceTile, pieceToScale } from './pieces.ts';

export interface SwatchView {
  readonly name: string;
  /** Below the guide's root. */
  readonly cloth: string | undefined;
}

/** A piece of a look that takes from both: drawn to the scale of the page, and named. */
export interface DrawnPiece extends SwatchView {
  readonly image: PieceTile['image'];
  /** Prefix of the picture's addresses, below the guide's root. */
  readonly root: string;
}

/** Two moods on one list, and in one bag. */
export interface PairView {
  readonly titles: readonly string[];
  readonly lines: readonly {
    readonly what: string;
    readonly sides: readonly { readonly pieces: readonly SwatchView[]; readonly note: string }[];
  }[];
  readonly union: readonly string[];
  readonly looks: readonly (readonly DrawnPiece[])[];
}

export interface MoodsView {
  readonly frame: Frame;
  readonly kick: string;
  readonly heading: string;
  readonly lede: string;
  readonly moods: readonly {
    readonly title: string;
    readonly href: string;
    readonly words: string;
    readonly bolts: readonly Bolt[];
    readonly only: readonly SwatchView[];
  }[];
  readonly rows: readonly { readonly name: string; readonly values: readonly string[] }[];
  readonly shared: readonly SwatchView[];
  /** This guide's mood with each other one. */
  readonly pairs: readonly PairView[];
  readonly words: Readonly<
    Record<
      'compared' | 'shared' | 'only' | 'noneShared' | 'mood' | 'lines' | 'line' | 'together' | 'cross' | 'noCross',
      string
    >
  >;
}

type Member = { readonly guide: Guide; readonly pictures: PictureIndex };

const BOLTS_SHOWN = 6;
const CROSS_SHOWN = 6;
/** Page pixels a centimetre of the drawings of one look beside one another. */
const DRAWN_PX_PER_CM = 0.85;

/** From this guide's root to that of another guide of the trip. */
export const prefixOf = (guide: Guide, other: Guide): string =>
  other.id === guide.id ? '' : `../${other.capsule.id}/`;

const swatchIn = (guide: Guide, members: readonly Member[], id: string): SwatchView => {
  const owner = members.find((member) => member.guide.pieces.some((piece) => piece.id === id));
  const cloth = owner?.pictures.cloth[id]?.address;
  return {
    name: owner?.guide.pieces.find((piece) => piece.id === id)?.name ?? id,
    cloth: owner === undefined || cloth === undefined ? undefined : prefixOf(guide, owner.guide) + cloth,
  };
};

const drawnIn = (guide: Guide, members: readonly Member[], id: string): DrawnPiece => {
  const owner = members.find((member) => member.guide.pieces.some((piece) => piece.id === id));
  return {
    ...swatchIn(guide, members, id),
    image: owner === undefined ? undefined : pieceToScale(id, owner.pictures, DRAWN_PX_PER_CM),
    root: owner === undefined ? '' : prefixOf(guide, owner.guide),
  };
};

const digits = ({ core, layered, complete }: LookCounts) => ({
  core: String(core),
  layered: String(layered),
  complete: String(complete),
});

const pairView = (guide: Guide, members: readonly Member[], pair: MoodPair, { say }: SiteVoice): PairView => {
  const { comparison, combined } = pair;
  const swatch = (id: string): SwatchView => swatchIn(guide, members, id);
  const noteOf = ({ pieces, under, over }: LineCheck): string =>
    [
      ...(pieces.length === 0 ? [phrase('compare', 'line empty', {})] : []),
      ...(under > 0 ? [phrase('compare', 'line lacks', { under })] : []),
      ...(over.length > 0 ? [phrase('compare', 'line over', { pieces: over.map((id) => swatch(id).name) })] : []),
    ]
      .map(say)
      .join('; ');
  return {
    titles: comparison.sides.map(({ title }) => title),
    lines: comparison.lines.map(({ what, wanted, sides }) => ({
      what: say(phrase('compare', 'line asks', { what, wanted })),
      sides: sides.map((side) => ({ pieces: side.pieces.map(swatch), note: noteOf(side) })),
    })),
    union: [
      phrase('compare', 'union is', {
        first: comparison.sides[0].pieces.length,
        second: comparison.sides[1].pieces.length,
        shared: combined.shared.length,
        together: combined.pieces.length,
      }),
      phrase('compare', 'union looks', digits(combined.counts)),
      phrase('compare', 'cross looks', digits(combined.cross)),
    ].map(say),
    looks: combined.crossLooks
      .slice(0, CROSS_SHOWN)
      .map(({ look }) => look.worn.map(({ piece }) => drawnIn(guide, members, piece))),
  };
};

/** Counts, plan and weight of each mood; the plan in the words of the comparison. */
const rowsOf = (members: readonly Member[], pairs: readonly MoodPair[], voice: SiteVoice): MoodsView['rows'] => {
  const { word, formats, say } = voice;
  const row = (name: string, value: (other: Guide) => string): MoodsView['rows'][number] => ({
    name,
    values: members.map(({ guide }) => value(guide)),
  });
  const sideOf = ({ capsule }: Guide) =>
    pairs.flatMap(({ comparison }) => comparison.sides).find(({ id }) => id === capsule.id);
  const counted = (key: 'changes' | 'looks') => (other: Guide) => {
    const side = sideOf(other);
    return side === undefined ? '' : formats.count(side.plan[key]);
  };
  return [
    row(word('pieces heading'), (other) => formats.count(other.pieces.length)),
    row(word('core looks'), (other) => formats.count(other.counts.core)),
    row(word('layered looks'), (other) => formats.count(other.counts.layered)),
    row(word('complete looks'), (other) => formats.count(other.counts.complete)),
    row(say(phrase('compare', 'served', {})), ({ plan }) =>
      say(phrase('compare', 'served of', { served: plan.served, of: plan.of, proven: plan.proven ? 1 : 0 })),
    ),
    row(say(phrase('compare', 'changes', {})), counted('changes')),
    row(say(phrase('compare', 'looks worn', {})), counted('looks')),
    row(say(phrase('compare', 'unworn', {})), (other) => formats.count(sideOf(other)?.plan.unworn.length ?? 0)),
    row(say(phrase('compare', 'pieces weigh', {})), (other) => {
      const grams = sideOf(other)?.grams;
      return grams === undefined
        ? ''
        : say(phrase('compare', 'grams', { grams: grams.value, spread: (grams.high - grams.low) / 2 }));
    }),
    row(word('all weight'), ({ bagReport: { grams } }) =>
      say(phrase('compare', 'grams', { grams: grams.value, spread: (grams.high - grams.low) / 2 })),
    ),
  ];
};

/** The moods of one trip side by side, line by line, and in one bag; undefined where there is one mood only. */
export const moodsView = (
  guide: Guide,
  family: readonly Member[],
  all: readonly MoodPair[],
  voice: SiteVoice,
): MoodsView | undefined => {
  const pairs = all.filter(({ of }) => of.includes(guide.capsule.id));
  if (pairs.length === 0) return undefined;
  const ids = new Set(pairs.flatMap(({ of }) => of));
  const members = family.filter((member) => ids.has(member.guide.capsule.id));
  const { word, formats, say } = voice;
  const sets = members.map((member) => new Set(member.guide.pieces.map(({ id }) => id)));
  const inAll = [...(sets[0] ?? [])].filter((id) => sets.every((set) => set.has(id)));
  const together = new Set(sets.flatMap((set) => [...set]));
  return {
    frame: frameOf({
      guide,
      voice,
      page: 'cover',
      path: 'moods/',
      title: word('moods heading'),
      description: guide.brief.title,
    }),
    kick: guide.brief.title,
    heading: word('moods heading'),
    lede: word('moods lede', { shared: inAll.length, together: together.size }),
    moods: members.map((member) => ({
      title: member.guide.capsule.title,
      href: prefixOf(guide, member.guide) || './',
      words: formats.list(member.guide.capsule.mood.words),
      bolts: boltsOf(member.guide.palette.colours, voice).slice(0, BOLTS_SHOWN),
      only: member.guide.pieces.filter(({ id }) => !inAll.includes(id)).map(({ id }) => swatchIn(guide, [member], id)),
    })),
    rows: rowsOf(members, pairs, voice),
    shared: inAll.map((id) => swatchIn(guide, members, id)),
    pairs: pairs.map((pair) => pairView(guide, members, pair, voice)),
    words: {
      compared: word('moods compared'),
      shared: word('in every mood'),
      only: word('only in this mood'),
      noneShared: word('none shared'),
      mood: word('column mood'),
      lines: say(phrase('compare', 'lines heading', {})),
      line: say(phrase('compare', 'column line', {})),
      together: say(phrase('compare', 'together heading', {})),
      cross: say(phrase('compare', 'cross heading', {})),
      noCross: say(phrase('compare', 'no cross', {})),
    },
  };
};
