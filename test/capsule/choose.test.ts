import { describe, expect, it } from 'vitest';
import { checkList, chooseCapsule, createPricer, imagine } from '../../lib/capsule/index.ts';
import { parseColour } from '../../lib/colour/index.ts';
import type { PackingListPlan, Piece } from '../../lib/model/index.ts';
import { createWardrobeEngine, layeredLookTable } from '../../lib/outfit/index.ts';
import { KINDS, type KindId } from '../../lib/vocabulary/index.ts';
import { brief } from '../plan/trip.ts';

const make = (kind: KindId, colour: string): Piece => {
  const named = parseColour(colour);
  if (named === undefined) throw new Error(colour);
  const piece = imagine({ kind, colour: named, pattern: 'plain', cut: KINDS[kind].cut }, 'test');
  return { ...piece, id: `${colour}-${kind}`.replaceAll(' ', '-'), status: 'owned' };
};

const wardrobe: readonly Piece[] = [
  ...['white', 'rust', 'navy', 'bottle green', 'mustard'].map((colour) => make('t-shirt', colour)),
  ...['navy', 'plum', 'camel', 'rust'].map((colour) => make('chinos', colour)),
  ...['charcoal', 'burgundy', 'olive'].map((colour) => make('cardigan', colour)),
  ...['camel', 'navy'].map((colour) => make('trench coat', colour)),
];

const list: PackingListPlan = {
  id: 'small',
  file: '',
  title: 'Small',
  note: '',
  lines: [
    { what: 'tops', count: 3, kinds: ['t-shirt'] },
    { what: 'bottoms', count: 2, kinds: ['chinos'] },
    { what: 'layers', count: 1, kinds: ['cardigan'] },
    { what: 'coats', count: 1, kinds: ['trench coat'] },
  ],
};

const layered = (pieces: readonly Piece[]): number =>
  Number(createWardrobeEngine({ pieces, rules: {}, never: [], always: [] }).count().layered);

const subsets = (pieces: readonly Piece[], size: number): readonly (readonly Piece[])[] =>
  size === 0
    ? [[]]
    : pieces.flatMap((piece, index) => subsets(pieces.slice(index + 1), size - 1).map((rest) => [piece, ...rest]));

const fillings = list.lines.reduce<readonly (readonly Piece[])[]>(
  (sets, { count, kinds }) =>
    sets.flatMap((set) =>
      subsets(
        wardrobe.filter(({ kind }) => kinds.includes(kind)),
        count,
      ).map((more) => [...set, ...more]),
    ),
  [[]],
);

const ask = { wardrobe, brief: brief(), traveller: 'Ada', list, mood: { palette: [], words: [] }, rules: {} };

describe('choosing', () => {
  it('finds what exhaustive search finds, and its bound is not below it', async () => {
    const best = Math.max(...fillings.map(layered));
    const choice = await chooseCapsule({ ...ask, proposals: 1 });
    expect(choice.possible).toBe(true);
    if (!choice.possible) return;
    const [proposal] = choice.proposals;
    expect(Number(proposal?.counts.layered)).toBe(best);
    expect(proposal?.bound).toBeGreaterThanOrEqual(best);
    expect(checkList(proposal?.pieces ?? [], list).filled).toBe(true);
  });

  it('prices every swap as recounting does', () => {
    const table = layeredLookTable({ pieces: wardrobe, rules: {}, never: [], always: [] }, 1e6);
    if (table === undefined) throw new Error('too many looks');
    const inside = wardrobe.filter((_, index) => index % 2 === 0);
    const flags = Uint8Array.from(wardrobe, (_, index) => (index % 2 === 0 ? 1 : 0));
    const pricing = createPricer(table, wardrobe.length)(flags);
    expect(pricing.looks).toBe(layered(inside));
    wardrobe.forEach((out, a) => {
      wardrobe.forEach((inn, b) => {
        if (flags[a] === 0 || flags[b] === 1) return;
        const after = [...inside.filter((piece) => piece !== out), inn];
        expect(pricing.looks + pricing.swap(a, b)).toBe(layered(after));
      });
    });
  });

  it('says the least that would mend what cannot be', async () => {
    const rules = async (change: object): Promise<readonly string[]> => {
      const choice = await chooseCapsule({ ...ask, ...change });
      return choice.possible ? [] : choice.findings.map(({ rule }) => rule);
    };
    expect(await rules({ leaveOut: wardrobe.map(({ id }) => id) })).toEqual(['wardrobe-empty']);
    expect(await rules({ gramsAtMost: 10 })).toEqual(['bag-weight']);
    expect(await rules({ keep: ['nothing'] })).toEqual(['keep-known']);
    expect(await rules({ wardrobe: wardrobe.filter(({ kind }) => kind !== 'cardigan') })).toEqual(['list-fillable']);
    expect(await rules({ piecesAtMost: 3 })).toEqual(['pieces-at-most']);
  });
});
