import { describe, expect, it } from 'vitest';
import { type ChooseQuestion, chooseCapsule, overLimits, type Proposal } from '../../lib/capsule/index.ts';
import { limitsOf } from '../../lib/capsule/limits.ts';
import { layeredLookTable } from '../../lib/outfit/index.ts';
import { buildProgramme, type Term } from '../../lib/plan/programme.ts';
import { loadSolver } from '../../lib/solver/index.ts';
import { demandingQuestion, dressed, engineOf, everyBag, smallQuestion } from './small.ts';

const SEEDS = Array.from({ length: 24 }, (_, index) => index + 1);
const SLOW_MS = 120_000;

const firstOf = async (question: ChooseQuestion): Promise<Proposal | undefined> => {
  const choice = await chooseCapsule(question);
  return choice.possible ? choice.proposals[0] : undefined;
};

/** Looks of the best bag that dresses the occasions of a proposal, by trying every bag. */
const bestByTrying = (question: ChooseQuestion, { serves }: Proposal, level: 'core' | 'layered'): number => {
  const bags = everyBag(question)
    .map((bag) => ({ bag, looks: Number(engineOf(bag).count()[level]) }))
    .sort((a, b) => b.looks - a.looks);
  const serving = bags.find(({ bag }) => {
    const done = dressed(bag, question);
    return serves.every((occasion) => done.includes(occasion));
  });
  return serving?.looks ?? -1;
};

describe('the proof of the best choice', () => {
  it.each(SEEDS)(
    'finds what trying every bag finds, and no bag is above its bound: seed %i',
    async (seed) => {
      const question = smallQuestion(seed);
      const proposal = await firstOf(question);
      if (proposal === undefined) {
        expect(everyBag(question)).toEqual([]);
        return;
      }
      const best = bestByTrying(question, proposal, 'layered');
      expect(Number(proposal.counts.layered)).toBe(best);
      expect(proposal.bound).toBeGreaterThanOrEqual(best);
      expect(overLimits(proposal.pieces, limitsOf(question.brief, question))).toBe(0);
      for (const id of question.keep ?? []) expect(proposal.pieces.map((piece) => piece.id)).toContain(id);
    },
    SLOW_MS,
  );

  it(
    'closes the gap altogether where only lines, occasions and kept pieces bind',
    async () => {
      for (const seed of SEEDS) {
        const { gramsAtMost: _, ...question } = smallQuestion(seed);
        const proposal = await firstOf(question);
        if (proposal !== undefined) expect(proposal.gapAtMost, `seed ${seed}`).toBe(0);
      }
    },
    SLOW_MS,
  );

  it(
    'finds the most core looks as well',
    async () => {
      for (const seed of [1, 3, 5, 9]) {
        const question: ChooseQuestion = { ...smallQuestion(seed), most: 'core' };
        const proposal = await firstOf(question);
        if (proposal === undefined) throw new Error(`seed ${seed} has an answer`);
        const best = bestByTrying(question, proposal, 'core');
        expect(Number(proposal.counts.core), `seed ${seed}`).toBe(best);
        expect(proposal.bound).toBeGreaterThanOrEqual(best);
      }
    },
    SLOW_MS,
  );

  it('has a bound that holds however early the proof is stopped', async () => {
    for (const seed of [7, 9, 16, 22]) {
      const question = smallQuestion(seed);
      const proven = await firstOf(question);
      if (proven === undefined) throw new Error(`seed ${seed} has an answer`);
      for (const effort of [0, 300, 1_000, 3_000, 10_000, 30_000]) {
        const stopped = await firstOf({ ...question, effort });
        expect(stopped?.bound, `seed ${seed}, ${effort} steps`).toBeGreaterThanOrEqual(Number(proven.counts.layered));
      }
    }
  });

  it(
    'agrees with an independent formulation on the solver: looks, lines, free places, weight',
    async () => {
      const solver = await loadSolver({ lpIterations: 4_000_000 });
      for (const seed of [2, 4, 21]) {
        const small = smallQuestion(seed);
        const grams = small.wardrobe.reduce((sum, piece) => sum + piece.grams.value, 0) / small.wardrobe.length;
        const question = {
          ...small,
          wardrobe: small.wardrobe.filter((_, index) => index % 4 !== 3),
          keep: [],
          brief: { ...small.brief, occasions: [] },
          gramsAtMost: Math.round(grams * (small.piecesAtMost ?? 0) * 1.05),
        };
        const { wardrobe, list, piecesAtMost = 0, gramsAtMost } = question;
        const table = layeredLookTable({ pieces: wardrobe, rules: {}, never: [], always: [] }, 1e5);
        if (table === undefined) throw new Error('too many looks');
        const programme = buildProgramme();
        const packed = wardrobe.map(() => programme.choice());
        // every packed piece takes one line that names its kind, or a place without a line
        const onLine = list.lines.map(({ count, kinds }) => {
          const terms = wardrobe.map(({ kind }): Term | undefined =>
            kinds.includes(kind) ? [programme.choice(), 1] : undefined,
          );
          programme.exactly(
            count,
            terms.filter((term) => term !== undefined),
          );
          return terms;
        });
        const beside = wardrobe.map((): Term => [programme.choice(), 1]);
        programme.atMost(piecesAtMost - list.lines.reduce((sum, { count }) => sum + count, 0), beside);
        wardrobe.forEach((_, piece) => {
          const lines = onLine.map((terms) => terms[piece]);
          const places = [...lines, beside[piece]].filter((term) => term !== undefined);
          programme.exactly(0, [...places, [packed[piece] ?? 0, -1]]);
        });
        programme.atMost(
          gramsAtMost,
          wardrobe.map((piece, index): Term => [packed[index] ?? 0, piece.grams.value]),
        );
        for (let core = 0; core < table.cores; core += 1) {
          for (let look = table.from[core] ?? 0; look < (table.from[core + 1] ?? 0); look += 1) {
            const made = programme.choice(-1);
            const worn = [
              table.core[core * 2],
              table.core[core * 2 + 1],
              table.layers[look * 2],
              table.layers[look * 2 + 1],
            ].filter((piece) => piece !== undefined && piece >= 0);
            for (const piece of worn)
              programme.atMost(0, [
                [made, 1],
                [packed[piece as number] ?? 0, -1],
              ]);
          }
        }
        const solved = await solver.solve(programme.done());
        const proposal = await firstOf(question);
        expect(solved.status, `seed ${seed}`).toBe(proposal === undefined ? 'infeasible' : 'optimal');
        if (proposal === undefined) continue;
        expect(Number(proposal.counts.layered), `seed ${seed}`).toBe(Math.round(-solved.bound));
        expect(proposal.bound).toBeGreaterThanOrEqual(Math.round(-solved.bound));
      }
    },
    SLOW_MS,
  );

  it(
    'dresses as many occasions as any bag can, and then makes the most looks',
    async () => {
      let short = 0;
      for (const seed of SEEDS.slice(0, 9)) {
        const question = demandingQuestion(seed);
        const proposal = await firstOf(question);
        if (proposal === undefined || proposal.unserved.length === 0) continue;
        short += 1;
        const bags = everyBag(question).map((bag) => ({
          dresses: dressed(bag, question).length,
          looks: Number(engineOf(bag).count().layered),
        }));
        const most = Math.max(...bags.map(({ dresses }) => dresses));
        expect(proposal.serves.length, `seed ${seed}`).toBe(most);
        const looks = bags.filter(({ dresses }) => dresses === most).map((bag) => bag.looks);
        expect(Number(proposal.counts.layered), `seed ${seed}`).toBe(Math.max(...looks));
      }
      expect(short).toBeGreaterThan(3);
    },
    SLOW_MS,
  );

  it('answers the same question in the same way', async () => {
    const question = { ...smallQuestion(10), proposals: 3 };
    const told = async (): Promise<string> =>
      JSON.stringify(await chooseCapsule(question), (_, value: unknown) =>
        typeof value === 'bigint' ? String(value) : value,
      );
    expect(await told()).toBe(await told());
  });
});
