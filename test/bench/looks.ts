import type { Piece } from '../../lib/model/index.ts';
import type { Seat } from '../../lib/outfit/grammar/seats.ts';
import { createGround, type Ground } from '../../lib/outfit/ground.ts';
import { createWardrobeEngine, type Restriction, type WardrobeRules } from '../../lib/outfit/index.ts';
import { pointsOf } from '../../lib/outfit/judge/points.ts';
import { compileSpace } from '../../lib/outfit/space/compile.ts';
import { countSpace } from '../../lib/outfit/space/count.ts';
import { Cursor } from '../../lib/outfit/space/cursor.ts';
import { rankSpace } from '../../lib/outfit/space/rank.ts';
import { tallySpace } from '../../lib/outfit/space/tally.ts';
import type { KindId } from '../../lib/vocabulary/index.ts';
import { pieceOf } from '../outfit/wardrobe.ts';
import { collectGarbage } from './collect.ts';
import { countForgetting, FORM, nestedLoops, plainLoops, solverLooks } from './other-ways.ts';

const COLOURS = [
  'black',
  'navy',
  'red',
  'mustard',
  'green',
  'orange',
  'purple',
  'teal',
  'pink',
  'camel',
  'royal blue',
  'white',
];
/** Kinds by share of a wardrobe, so that any size has the same make-up. */
const MAKE_UP: readonly (readonly [share: number, kinds: readonly KindId[]])[] = [
  [0.27, ['t-shirt', 'shirt', 'blouse', 'fine roll-neck', 'boat-neck top', 'knitted top']],
  [0.19, ['jeans', 'chinos', 'midi skirt', 'tailored trousers', 'wide trousers', 'a-line skirt']],
  [0.05, ['shirt dress', 'tea dress']],
  [0.12, ['cardigan', 'blazer', 'v-neck jumper', 'knitted jacket']],
  [0.09, ['wool coat', 'trench coat', 'short coat']],
  [0.12, ['ankle boots', 'loafers', 'trainers', 'ballet flats']],
  [0.08, ['tote', 'cross-body bag']],
  [0.08, ['scarf', 'beret']],
];

const wardrobeOf = (size: number): readonly Piece[] => {
  const kinds = MAKE_UP.flatMap(([share, list]) =>
    Array.from({ length: Math.max(1, Math.round(size * share)) }, (_, index) => list[index % list.length] as KindId),
  ).slice(0, size);
  return kinds.map((kind, index) =>
    pieceOf(`${kind.replaceAll(' ', '-')}-${index}`, kind, COLOURS[(index * 5) % COLOURS.length], {
      pattern: { type: index % 3 === 1 ? 'stripe' : 'plain', scale: index % 2 === 1 ? 'large' : 'small' },
      statement: index % 17 === 0,
    }),
  );
};

const rules = (size: number): WardrobeRules => ({ pieces: wardrobeOf(size), rules: {}, never: [], always: [] });
const OCCASION: Restriction = { dress: 'smart casual', clo: { min: 0.75, max: 1.6 } };

/** Processor seconds, which another program on the machine disturbs less than the clock. */
const seconds = (work: () => void): number => {
  const start = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(start);
  return (user + system) / 1e6;
};
/** Best of a few runs, after one to warm up. */
const best = (runs: number, work: () => void): number => {
  work();
  return Math.min(...Array.from({ length: runs }, () => seconds(work)));
};

const walk = (ground: Ground, asked: Restriction): number => {
  const space = compileSpace(ground, FORM, 'complete', asked);
  if (space === undefined) return 0;
  const cursor = new Cursor(space);
  let looks = 0;
  while (cursor.next()) looks += 1;
  return looks;
};

const count = (ground: Ground, asked: Restriction): bigint => {
  const space = compileSpace(ground, FORM, 'complete', asked);
  return space === undefined ? 0n : countSpace(space);
};

/** For each seat the looks that contain it, the space built as well, as recounting has to. */
const tally = (ground: Ground): Float64Array => {
  const space = compileSpace(ground, FORM, 'complete', {});
  const looks = space && tallySpace(space, ground.seats.length);
  if (looks === undefined) throw new Error('no looks to weigh');
  return looks;
};

const oneOfCap = ({ rulebook }: Ground, a: Seat, b: Seat): boolean =>
  rulebook.caps.every(
    ({ severity, most, counts }) => severity !== 'rules out' || most > 1 || !(counts(a) && counts(b)),
  );

const GROWTH_LOOKS = 3_000_000;

/** Ratios of looks: enumerate, count, rank and contribution against plain loops and a general solver, in one run. */
export const benchLooks = async (): Promise<Readonly<Record<string, number>>> => {
  const hundred = createGround(rules(100));
  let looks = 0;
  const first = seconds(() => {
    looks = walk(hundred, OCCASION);
  });
  const walked = best(7, () => walk(hundred, OCCASION));
  let looped = 0;
  const looping = seconds(() => {
    looped = nestedLoops(hundred, OCCASION, () => {});
  });
  if (looped !== looks) throw new Error(`loops found ${looped} looks, the cursor ${looks}`);

  const n = hundred.seats.length;
  let plain = 0;
  const plainly = seconds(() => {
    plain = plainLoops(hundred, OCCASION, (a, b) => hundred.goes[a.index * n + b.index] === 1);
  });
  if (plain !== looks) throw new Error(`plain loops found ${plain} looks, the cursor ${looks}`);

  const small = createGround(rules(35));
  const hard = small.rulebook.pairs.filter(({ severity }) => severity === 'rules out');
  let asking = 0;
  const byRule = seconds(() => {
    asking = plainLoops(
      small,
      OCCASION,
      (a, b) =>
        small.allowed[a.index] === 1 &&
        small.allowed[b.index] === 1 &&
        oneOfCap(small, a, b) &&
        hard.every(({ rule, threshold }) => rule.between(a, b, threshold) === undefined),
    );
  });
  if (asking !== walk(small, OCCASION)) throw new Error(`asking the rules found ${asking} looks`);
  const walkedSmall = best(10, () => walk(small, OCCASION));

  const large = createGround(rules(300));
  const wide: Restriction = { ...OCCASION, dress: 'cocktail' };
  let largeLooks = 0;
  const walkLarge = seconds(() => {
    largeLooks = walk(large, wide);
  });
  const counting = best(3, () => count(large, wide));
  if (count(large, wide) !== BigInt(largeLooks)) throw new Error('count and cursor differ at 300 pieces');

  const space = compileSpace(hundred, FORM, 'complete', OCCASION);
  if (space === undefined) throw new Error('no looks of 100 pieces');
  const ranking = best(5, () => rankSpace(hundred, space, 10));
  let top = Number.NEGATIVE_INFINITY;
  const scoring = seconds(() => {
    nestedLoops(hundred, OCCASION, (worn) => {
      top = Math.max(top, pointsOf(hundred, FORM, worn));
    });
  });
  if (rankSpace(hundred, space, 10)[0]?.points !== top) throw new Error('the best look is not the best');

  const capsule = createGround(rules(35));
  const weighing = best(50, () => tally(capsule));
  const recounting = best(5, () => {
    for (const { id } of capsule.pieces) count(capsule, { without: [id] });
  });
  const forgetting = best(5, () => {
    for (const { id } of capsule.pieces) countForgetting(capsule, { without: [id] });
  });
  const relisting = best(3, () => {
    for (const { id } of capsule.pieces) walk(capsule, { without: [id] });
  });
  const ofSeat = tally(capsule);
  for (const { id } of capsule.pieces) {
    const lost = walk(capsule, {}) - countForgetting(capsule, { without: [id] });
    const weighed = capsule.seats.reduce(
      (sum, { piece, index }) => sum + (piece.id === id ? (ofSeat[index] ?? 0) : 0),
      0,
    );
    if (lost !== weighed) throw new Error(`${id}: ${lost} looks lost, ${weighed} weighed`);
  }

  const ten = createGround(rules(14));
  const bySolver = await solverLooks(ten, 60);
  const cursor = compileSpace(ten, FORM, 'complete', {});
  if (cursor === undefined) throw new Error('no looks of 14 pieces');
  const perLook = best(20, () => walk(ten, {})) / Math.max(1, walk(ten, {}));

  collectGarbage();
  const engine = createWardrobeEngine(rules(100));
  const before = process.memoryUsage().heapUsed;
  let listed = 0;
  for (const look of engine.enumerate({ restriction: OCCASION })) {
    listed += look.worn.length > 0 ? 1 : 0;
    if (listed === GROWTH_LOOKS) break;
  }
  collectGarbage();
  const grown = process.memoryUsage().heapUsed / before;

  const judging = best(20, () =>
    engine.explain([...hundred.pieces.slice(0, 1), ...hundred.pieces.slice(30, 31)].map(({ id }) => id)),
  );
  return {
    'enumerate 100 pieces: complete looks of one occasion': looks,
    'enumerate: million looks a second, the first listing of a process': looks / first / 1e6,
    'enumerate: million looks a second, later ones': looks / walked / 1e6,
    'enumerate: times plain loops over every combination, pairs in a table': plainly / walked,
    'enumerate: times loops that stop at the first bad pair': looping / walked,
    'enumerate 35 pieces: times plain loops that ask each rule': byRule / walkedSmall,
    'enumerate: times a general integer solver, a look': bySolver.seconds / bySolver.looks / perLook,
    'count 300 pieces: complete looks of one occasion': largeLooks,
    'count: seconds': counting,
    'count: times enumerating them': walkLarge / counting,
    'best 10 of 100 pieces: times scoring all': scoring / ranking,
    'best 10 of 100 pieces: milliseconds': ranking * 1000,
    'contribution, 35 pieces: milliseconds': weighing * 1000,
    'contribution: times recounting without each piece (35 counts, so some 35 at most)': recounting / weighing,
    'contribution: times recounting with a count that remembers nothing': forgetting / weighing,
    'contribution: times enumerating without each piece': relisting / weighing,
    'memory after 3 million looks listed: times before': grown,
    'verdict: milliseconds': judging * 1000,
  };
};

if (import.meta.url === `file://${process.argv[1]}`) console.table(await benchLooks());
