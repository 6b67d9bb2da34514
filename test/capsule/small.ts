import { type ChooseQuestion, limitsOf, overLimits } from '../../lib/capsule/index.ts';
import type { Occasion, PackingListPlan, Piece } from '../../lib/model/index.ts';
import { createWardrobeEngine, type WardrobeEngine } from '../../lib/outfit/index.ts';
import { momentsOf } from '../../lib/plan/index.ts';
import { seededRandom } from '../../lib/plan/random.ts';
import type { KindId } from '../../lib/vocabulary/index.ts';
import { pieceOf } from '../outfit/wardrobe.ts';
import { brief, occasion } from '../plan/trip.ts';

const COLOURS = ['white', 'black', 'rust', 'navy', 'mustard', 'bottle green', 'plum', 'camel', 'pink', 'teal'];
/** By what they are worn as; an overshirt is three things, so that lists overlap in more than kinds. */
const KINDS: readonly (readonly KindId[])[] = [
  ['t-shirt', 'shirt', 'fine roll-neck', 'v-neck jumper', 'flannel shirt'],
  ['jeans', 'chinos', 'midi skirt', 'leggings'],
  ['shirt dress', 'slip dress'],
  ['cardigan', 'blazer', 'overshirt'],
  ['trench coat', 'rain jacket', 'wool coat'],
  ['trainers', 'loafers', 'ankle boots'],
  ['swimsuit', 'bikini', 'sarong'],
];
const LINES: readonly PackingListPlan['lines'][number][] = [
  { what: 'tops', count: 2, kinds: ['t-shirt', 'shirt', 'fine roll-neck', 'v-neck jumper', 'flannel shirt'] },
  { what: 'bottoms', count: 1, kinds: ['jeans', 'chinos', 'midi skirt', 'leggings'] },
  { what: 'layers', count: 1, kinds: ['cardigan', 'blazer', 'overshirt', 'flannel shirt'] },
  { what: 'coats', count: 1, kinds: ['trench coat', 'rain jacket', 'wool coat', 'overshirt'] },
  { what: 'shoes', count: 1, kinds: ['trainers', 'loafers', 'ankle boots'] },
  { what: 'dresses', count: 1, kinds: ['shirt dress', 'slip dress'] },
  { what: 'swimwear', count: 1, kinds: ['swimsuit', 'bikini'] },
];
const WALK_IN_RAIN = occasion('2027-10-03', 'Walk in rain', {
  setting: { where: 'outdoors', sun: 'shade' },
  activity: 'walking',
  needs: ['rain'],
});
const OCCASIONS: readonly Occasion[] = [
  occasion('2027-10-02', 'Museum'),
  occasion('2027-10-03', 'Dinner', { dress: 'smart casual' }),
  WALK_IN_RAIN,
  occasion('2027-10-04', 'Concert', { dress: 'cocktail' }),
  occasion('2027-10-04', 'Swim', { needs: ['swim'] }),
  occasion('2027-10-05', 'Train', { transit: true }),
];

/** A small question of its own for every seed: wardrobe, list, free places, occasions, limits, pieces to keep. */
export const smallQuestion = (seed: number): ChooseQuestion => {
  const random = seededRandom(seed);
  const upTo = (most: number): number => Math.floor(random() * (most + 1));
  const any = <Item>(items: readonly Item[]): Item => items[Math.floor(random() * items.length)] as Item;
  const wardrobe = KINDS.flatMap((kinds, group) =>
    Array.from({ length: group < 2 ? 3 : 2 }, (_, index) => {
      const kind = any(kinds);
      return pieceOf(`${kind.replaceAll(' ', '-')}-${group}${index}`, kind, any(COLOURS), {
        pattern: { type: random() < 0.25 ? 'stripe' : 'plain', scale: 'medium' },
      });
    }),
  );
  const lines = LINES.filter((_, index) => index < 2 || random() < 0.7);
  const listed = lines.reduce((sum, { count }) => sum + count, 0);
  const occasions = OCCASIONS.filter(() => random() < 0.4);
  const grams = wardrobe.reduce((sum, piece) => sum + piece.grams.value, 0) / wardrobe.length;
  const piecesAtMost = listed + upTo(1);
  return {
    wardrobe,
    brief: brief({ occasions }),
    traveller: 'Ada',
    list: { id: 'small', file: '', title: 'Small', note: '', lines },
    mood: { palette: [], words: [] },
    rules: {},
    piecesAtMost,
    ...(random() < 0.5 ? { gramsAtMost: Math.round(grams * piecesAtMost * (0.55 + random() * 0.5)) } : {}),
    ...(random() < 0.3 ? { keep: [any(wardrobe).id] } : {}),
    proposals: 1,
  };
};

/** More than a short list can dress: something of everything in four days. */
const DEMANDING: readonly Occasion[] = [
  occasion('2027-10-02', 'Museum', { needs: ['long walking'] }),
  occasion('2027-10-03', 'Dinner', { dress: 'smart casual' }),
  occasion('2027-10-03', 'Office', { dress: 'business' }),
  WALK_IN_RAIN,
  occasion('2027-10-04', 'Concert', { dress: 'cocktail' }),
  occasion('2027-10-04', 'Swim', { needs: ['swim'] }),
  occasion('2027-10-05', 'Hill', {
    setting: { where: 'outdoors', sun: 'shade' },
    activity: 'walking',
    needs: ['uneven ground', 'long walking'],
  }),
  occasion('2027-10-05', 'Church', { needs: ['shoulders covered', 'knees covered'] }),
];

/** The small question of a seed with no free place and most of the demanding occasions. */
export const demandingQuestion = (seed: number): ChooseQuestion => {
  const random = seededRandom(seed * 77);
  const { piecesAtMost: _, ...question } = smallQuestion(seed);
  return { ...question, brief: brief({ occasions: DEMANDING.filter(() => random() < 0.8) }) };
};

/** Whether every place on the list can be filled from a set: tried place by place, in every way. */
const fills = (pieces: readonly Piece[], { list }: ChooseQuestion): boolean => {
  const places = list.lines.flatMap(({ count, kinds }) => Array.from({ length: count }, () => kinds));
  const seat = (at: number, left: readonly Piece[]): boolean => {
    const kinds = places[at];
    return (
      kinds === undefined ||
      left.some((piece, index) => kinds.includes(piece.kind) && seat(at + 1, left.toSpliced(index, 1)))
    );
  };
  return seat(0, pieces);
};

const subsets = function* (pieces: readonly Piece[], most: number, from = 0): Generator<readonly Piece[]> {
  yield [];
  if (most === 0) return;
  for (let at = from; at < pieces.length; at += 1)
    for (const rest of subsets(pieces, most - 1, at + 1)) yield [pieces[at] as Piece, ...rest];
};

export const engineOf = (pieces: readonly Piece[]): WardrobeEngine =>
  createWardrobeEngine({ pieces, rules: {}, never: [], always: [] });

/** Occasion ids that a set has a look for, each asked by listing. */
export const dressed = (pieces: readonly Piece[], question: ChooseQuestion): readonly string[] => {
  const engine = engineOf(pieces);
  return momentsOf(question.brief, question.traveller)
    .filter(({ restriction }) => {
      for (const _ of engine.enumerate({ restriction })) return true;
      return false;
    })
    .map(({ occasion: { id } }) => id);
};

/** Every set of at most as many pieces that fills the list, holds to the limits and has what is kept. */
export const everyBag = (question: ChooseQuestion): readonly (readonly Piece[])[] => {
  const listed = question.list.lines.reduce((sum, { count }) => sum + count, 0);
  const { wardrobe, piecesAtMost = listed, keep = [] } = question;
  const limits = limitsOf(question.brief, question);
  const kinds = new Set(question.list.lines.flatMap((line) => line.kinds));
  // without a free place, pieces of no line cannot be packed
  const usable = piecesAtMost > listed ? wardrobe : wardrobe.filter(({ kind }) => kinds.has(kind));
  return [...subsets(usable, piecesAtMost)].filter(
    (set) =>
      set.length >= listed &&
      keep.every((id) => set.some((piece) => piece.id === id)) &&
      overLimits(set, limits) === 0 &&
      fills(set, question),
  );
};
