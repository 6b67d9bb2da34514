import {
  type ChooseQuestion,
  chooseCapsule,
  createPricer,
  type Proposal,
  positionsOf,
} from '../../lib/capsule/index.ts';
import type { PackingListPlan, Piece } from '../../lib/model/index.ts';
import { layeredLookTable } from '../../lib/outfit/index.ts';
import { buildProgramme } from '../../lib/plan/programme.ts';
import { loadSolver } from '../../lib/solver/index.ts';
import { brief, occasion } from '../plan/trip.ts';
import { likelyWardrobe } from './wardrobe.ts';

/** Nineteen pieces, and one place without a line. */
const LINES: PackingListPlan['lines'] = [
  {
    what: 'tops',
    count: 6,
    kinds: [
      't-shirt',
      'shirt',
      'blouse',
      'camisole',
      'boat-neck top',
      'fine roll-neck',
      'knitted top',
      'crew-neck jumper',
    ],
  },
  {
    what: 'bottoms',
    count: 4,
    kinds: ['jeans', 'chinos', 'tailored trousers', 'wide trousers', 'midi skirt', 'a-line skirt', 'pencil skirt'],
  },
  { what: 'dress', count: 1, kinds: ['shirt dress', 'tea dress', 'knitted dress'] },
  { what: 'layers', count: 2, kinds: ['cardigan', 'blazer', 'knitted jacket', 'denim jacket', 'overshirt'] },
  { what: 'coats', count: 2, kinds: ['wool coat', 'trench coat', 'short coat', 'rain jacket', 'down jacket'] },
  { what: 'shoes', count: 2, kinds: ['ankle boots', 'loafers', 'trainers', 'ballet flats', 'block heels'] },
  { what: 'bag and one more', count: 2, kinds: ['tote', 'cross-body bag', 'clutch', 'scarf', 'beret', 'belt'] },
];
const PIECES = 20;

const question = (size: number, most: 'core' | 'layered'): ChooseQuestion => ({
  wardrobe: likelyWardrobe(size),
  brief: brief({
    occasions: [
      occasion('2027-10-02', 'Museum'),
      occasion('2027-10-03', 'Dinner', { dress: 'smart casual' }),
      occasion('2027-10-04', 'Walk', { setting: { where: 'outdoors', sun: 'shade' }, activity: 'walking' }),
    ],
  }),
  traveller: 'Ada',
  list: { id: 'list', file: '', title: 'List', note: '', lines: LINES },
  mood: { palette: [], words: [] },
  rules: {},
  piecesAtMost: PIECES,
  proposals: 1,
  most,
});

const timed = async (size: number, most: 'core' | 'layered'): Promise<{ seconds: number; proposal: Proposal }> => {
  const start = process.cpuUsage();
  const choice = await chooseCapsule(question(size, most));
  const { user, system } = process.cpuUsage(start);
  const [proposal] = choice.possible ? choice.proposals : [];
  if (proposal === undefined) throw new Error(`nothing chosen from ${size} pieces`);
  return { seconds: (user + system) / 1e6, proposal };
};

const lookTable = (pieces: readonly Piece[], level: 'core' | 'layered') => {
  const table = layeredLookTable({ pieces, rules: {}, never: [], always: [] }, 1e7, level);
  if (table === undefined) throw new Error('too many looks');
  return table;
};

/** The plain way: place by place down the list, whatever adds most looks to what is there. */
const greedyLooks = (size: number): number => {
  const pieces = likelyWardrobe(size);
  const price = createPricer(lookTable(pieces, 'layered'), pieces.length);
  const inside = new Uint8Array(pieces.length);
  for (const { line } of positionsOf(LINES, PIECES)) {
    const kinds = line === undefined ? undefined : LINES[line]?.kinds;
    const { gain } = price(inside);
    let best = -1;
    pieces.forEach(({ kind }, number) => {
      const fits = inside[number] === 0 && (kinds === undefined || kinds.includes(kind));
      if (fits && (best < 0 || (gain[number] ?? 0) > (gain[best] ?? 0))) best = number;
    });
    if (best >= 0) inside[best] = 1;
  }
  return price(inside).looks;
};

/** The general way: one column a piece and one a core look, to a general integer solver; its bound when it stops. */
const bySolver = async (size: number): Promise<{ seconds: number; found: number; bound: number }> => {
  const pieces = likelyWardrobe(size);
  const { core, cores } = lookTable(pieces, 'core');
  const programme = buildProgramme();
  const packed = pieces.map(() => programme.choice());
  for (const { count, kinds } of LINES)
    programme.atLeast(
      count,
      pieces.flatMap(({ kind }, index) => (kinds.includes(kind) ? [[packed[index] ?? 0, 1] as const] : [])),
    );
  programme.atMost(
    PIECES,
    packed.map((column) => [column, 1] as const),
  );
  for (let c = 0; c < cores; c += 1) {
    const made = programme.choice(-1);
    for (const piece of [core[c * 2], core[c * 2 + 1]])
      if (piece !== undefined && piece >= 0)
        programme.atMost(0, [
          [made, 1],
          [packed[piece] ?? 0, -1],
        ]);
  }
  const done = programme.done();
  const start = process.cpuUsage();
  const { values, bound } = await (await loadSolver()).solve(done);
  const found = values.reduce((sum, value, column) => sum - value * (done.costs[column] ?? 0), 0);
  const { user, system } = process.cpuUsage(start);
  return { seconds: (user + system) / 1e6, found, bound: -bound };
};

/** Choosing 20 pieces: how far from the best possible at most, in what time, and beside two plainer ways. */
export const benchChoose = async (): Promise<Readonly<Record<string, number>>> => {
  await timed(60, 'layered');
  const measured: Record<string, number> = {};
  for (const size of [60, 150, 300]) {
    const { seconds, proposal } = await timed(size, 'layered');
    const looks = Number(proposal.counts.layered);
    measured[`20 of ${size}, layered: looks`] = looks;
    measured[`20 of ${size}, layered: percent from the best possible at most`] = proposal.gapAtMost * 100;
    measured[`20 of ${size}, layered: processor seconds`] = seconds;
    measured[`20 of ${size}, layered: times the looks of plain greedy`] = looks / greedyLooks(size);
  }
  const core = await timed(200, 'core');
  measured['20 of 200, core: percent from the best possible at most'] = core.proposal.gapAtMost * 100;
  measured['20 of 200, core: processor seconds'] = core.seconds;
  const small = await timed(60, 'core');
  const solver = await bySolver(60);
  measured['20 of 60, core: looks'] = Number(small.proposal.counts.core);
  measured['20 of 60, core, general integer solver: looks'] = solver.found;
  measured['20 of 60, core, general integer solver: percent from its bound'] =
    (1 - solver.found / Math.max(1, solver.bound)) * 100;
  measured['20 of 60, core, general integer solver: times as long'] = solver.seconds / small.seconds;
  return measured;
};

if (import.meta.url === `file://${process.argv[1]}`) console.table(await benchChoose());
