import type { Brief, Occasion, Piece, Plan, Weather } from '../../lib/model/index.ts';
import { createWardrobeEngine } from '../../lib/outfit/index.ts';
import { type LookSource, planTrip, type Solver } from '../../lib/plan/index.ts';
import { loadSolver } from '../../lib/solver/index.ts';
import type { KindId } from '../../lib/vocabulary/index.ts';
import { brief, capsule, occasion, piece } from '../plan/trip.ts';
import { watchWasmMemory } from '../solver/wasm-memory.ts';
import { collectGarbage } from './collect.ts';
import { type Spent, spentOn } from './spent.ts';

const ALL_WEATHER: readonly Weather[] = [7, 10, 12].map((lowC) => ({
  lowC,
  highC: lowC + 8,
  windMs: 2,
  humidityPercent: 65,
  rainPercent: 30,
  source: 'bench',
}));

/** A capsule as a stylist fills one: neutrals that go with each other, so that rules leave many looks. */
const TWENTY: readonly KindId[] = [
  't-shirt',
  'long-sleeved tee',
  'shirt',
  'blouse',
  'boat-neck top',
  'fine roll-neck',
  'jeans',
  'tailored trousers',
  'chinos',
  'midi skirt',
  'wrap dress',
  'cardigan',
  'crew-neck jumper',
  'blazer',
  'wool coat',
  'rain jacket',
  'loafers',
  'lace-up boots',
  'swimsuit',
  'bikini',
];
const SIXTY: readonly KindId[] = [
  ...TWENTY,
  ...TWENTY.slice(0, 16),
  'henley',
  'wrap top',
  'tunic',
  'knitted top',
  'v-neck jumper',
  'wide trousers',
  'corduroy trousers',
  'pencil skirt',
  'pleated skirt',
  'tea dress',
  'knitted dress',
  'long cardigan',
  'overshirt',
  'trench coat',
  'quilted jacket',
  'chelsea boots',
  'ankle boots',
  'trainers',
  'walking shoes',
  'socks',
  'tights',
  'gilet',
  'slipover',
  'roll-neck',
];

const NEUTRALS = ['#1f2a44', '#f4f1ea', '#8a8d91', '#2b2b2b', '#c8b79a'] as const;
const inNeutrals = (made: Piece, index: number): Piece => ({
  ...made,
  colours: [
    {
      name: 'neutral',
      hex: NEUTRALS[index % NEUTRALS.length] ?? '#1f2a44',
      oklch: { l: 0.4, c: 0.01, h: 0 },
      neutral: true,
      share: 1,
    },
  ],
});

const bagOf = (kinds: readonly KindId[]): readonly Piece[] =>
  kinds.map((kind, index) => inNeutrals(piece(`${kind.replaceAll(' ', '-')}-${index}`, kind), index));

/** Three occasions a day: something by day, a swim or a walk, an evening. */
const tripOf = (days: number): Brief => {
  const dates = Array.from({ length: days }, (_, day) =>
    new Date(Date.UTC(2027, 9, 2 + day)).toISOString().slice(0, 10),
  );
  const occasions = dates.flatMap((on, day): Occasion[] => [
    occasion(on, 'Morning', { part: 'morning', setting: { where: 'indoors', airC: 21 } }),
    day % 3 === 1
      ? occasion(on, 'Baths', {
          at: '14:00',
          needs: ['swim'],
          activity: 'swimming',
          setting: { where: 'indoors', airC: 28 },
        })
      : occasion(on, 'Walk', { at: '14:00', setting: { where: 'outdoors', sun: 'shade' }, activity: 'strolling' }),
    occasion(on, 'Dinner', {
      at: '19:30',
      part: 'evening',
      dress: day % 4 === 2 ? 'business' : 'smart casual',
      activity: 'sitting',
      setting: { where: 'indoors', airC: 22 },
    }),
  ]);
  const first = dates[0] ?? '';
  const last = dates.at(-1) ?? '';
  return brief({
    from: first,
    to: last,
    occasions,
    washDays: dates.filter((_, day) => day % 4 === 3),
    places: [
      {
        name: 'Here',
        from: first,
        to: last,
        at: { latitude: 48.21, longitude: 16.37 },
        timeZone: 'Europe/Vienna',
        days: Object.fromEntries(dates.map((on, day) => [on, ALL_WEATHER[day % 3] ?? ALL_WEATHER[0]])) as Record<
          string,
          Weather
        >,
      },
    ],
  });
};

const sourceOf = (pieces: readonly Piece[]): LookSource => {
  const engine = createWardrobeEngine({ pieces, rules: {}, never: [], always: [] });
  return {
    rank: (k, restriction) => engine.rank(k, restriction),
    explain: (ids, restriction) => {
      const { goes, look } = engine.explain([...ids], restriction);
      return look === undefined ? { goes, reasons: [] } : { goes, look, reasons: [] };
    },
  };
};

/** Seconds of what `spentOn` gives in milliseconds. */
const secondsOf = ({ clock, processor }: Spent): Spent => ({ clock: clock / 1000, processor: processor / 1000 });

const planOnce = async (kinds: readonly KindId[], days: number, solver: Solver, behind: readonly KindId[] = []) => {
  const pieces = bagOf(kinds);
  const owned = bagOf([...kinds, ...behind.filter((kind) => !kinds.includes(kind))]);
  let plan: Plan | undefined;
  const spent = await spentOn(async () => {
    plan = await planTrip({
      brief: tripOf(days),
      traveller: 'Ada',
      capsule: capsule(),
      pieces,
      engine: sourceOf(pieces),
      solver,
      ...(behind.length === 0 ? {} : { wardrobe: { pieces: owned, engine: sourceOf(owned) } }),
    });
  });
  if (plan === undefined) throw new Error('no plan was made');
  return { ...secondsOf(spent), plan };
};

const PLANS_IN_ONE_PROCESS = 200;
const MEBIBYTE = 2 ** 20;

/** Bytes of the process's heap after a collection, of the solver's WebAssembly, and of the whole process. */
interface Memory {
  readonly heap: number;
  readonly solver: number;
  readonly resident: number;
}

/**
 * Memory after a quarter of 200 plans in one process and after all: a trip that is served, and in turn one whose dinners
 * are not, with its nearest looks and its mends from a larger wardrobe.
 */
const benchMemory = async (few: readonly KindId[]): Promise<Readonly<Record<string, number>>> => {
  const watch = watchWasmMemory();
  const solver = await loadSolver();
  watch.end();
  const measured: Memory[] = [];
  let mended = 0;
  for (let round = 0; round < PLANS_IN_ONE_PROCESS; round += 1) {
    const { plan } = await planOnce(few, round % 2 === 0 ? 3 : 4, solver, round % 2 === 0 ? [] : TWENTY);
    mended += plan.unserved.filter(({ mends }) => mends.length > 0).length;
    if (round === PLANS_IN_ONE_PROCESS / 4 || round === PLANS_IN_ONE_PROCESS - 1) {
      collectGarbage();
      const { heapUsed, rss } = process.memoryUsage();
      measured.push({ heap: heapUsed, solver: watch.bytes(), resident: rss });
    }
  }
  const [early, late] = measured;
  if (early === undefined || late === undefined) throw new Error('memory was not measured');
  return {
    'occasions mended in 200 plans': mended,
    'memory after 200 plans against after 50: heap, ratio': late.heap / early.heap,
    'the same: WebAssembly of the solver, ratio': late.solver / early.solver,
    'the same: whole process, ratio': late.resident / early.resident,
    'WebAssembly of the solver after 200 plans, MiB': late.solver / MEBIBYTE,
  };
};

/**
 * Seconds for whole plans at the two sizes, the small one also once the process has planned before, and the growth of memory
 * over many plans in one process. Processor time counts what the engine's compiler and the collector of memory do beside it.
 */
export const benchPlan = async (): Promise<Readonly<Record<string, number>>> => {
  const solver = await loadSolver();
  const small = await planOnce(TWENTY, 9, solver);
  const again = await planOnce(TWENTY, 9, solver);
  const large = await planOnce(SIXTY, 12, solver);
  const few: readonly KindId[] = [
    't-shirt',
    'shirt',
    'blouse',
    'jeans',
    'cardigan',
    'wool coat',
    'loafers',
    'swimsuit',
  ];
  const short = TWENTY.filter((kind) => few.includes(kind));
  const infeasible = await planOnce(short, 9, solver);
  return {
    'plan, 20 pieces, 9 days × 3, the first of a process: seconds on the clock': small.clock,
    'the first of a process: processor seconds': small.processor,
    'plan, 20 pieces, 9 days × 3, a later one: seconds on the clock (at most 2)': again.clock,
    'a later one: processor seconds': again.processor,
    'of 27 occasions, served': small.plan.served,
    'proven (1 yes)': Number(small.plan.proven),
    'plan, 60 pieces, 12 days × 3: seconds on the clock (at most 5)': large.clock,
    'plan, 60 pieces, 12 days × 3: processor seconds': large.processor,
    'of 36 occasions, served': large.plan.served,
    'large proven (1 yes)': Number(large.plan.proven),
    'plan that cannot serve all, with mends: processor seconds': infeasible.processor,
    'of 27 occasions, served by it': infeasible.plan.served,
    'infeasible proven (1 yes)': Number(infeasible.plan.proven),
    ...(await benchMemory(short)),
  };
};

if (import.meta.url === `file://${process.argv[1]}`) console.table(await benchPlan());
