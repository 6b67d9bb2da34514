import { beforeAll, describe, expect, it } from 'vitest';
import { type ChooseQuestion, chooseCapsule, type Proposal, silhouetteOf } from '../../lib/capsule/index.ts';
import { moodColourOf, parseColour } from '../../lib/colour/index.ts';
import type { NamedColour, Piece } from '../../lib/model/index.ts';
import { english } from '../../lib/words/english/index.ts';
import { createFormats } from '../../lib/words/formats.ts';
import { likelyWardrobe } from '../bench/wardrobe.ts';
import { brief, occasion } from '../plan/trip.ts';
import { engineOf } from './small.ts';

const SLOW_MS = 120_000;
const WARDROBE = likelyWardrobe(70, 5);
const KEEP = WARDROBE.filter(({ kind }) => kind === 'jeans').slice(0, 1);
const mood = ['rust', 'camel', 'cream', 'navy'].map((name): NamedColour => {
  const colour = parseColour(name);
  if (colour === undefined) throw new Error(name);
  return colour;
});
const QUESTION: ChooseQuestion = {
  wardrobe: WARDROBE,
  brief: brief({
    occasions: [occasion('2027-10-02', 'Museum'), occasion('2027-10-03', 'Office', { dress: 'business' })],
  }),
  traveller: 'Ada',
  list: {
    id: 'list',
    file: '',
    title: 'List',
    note: '',
    lines: [
      { what: 'tops', count: 4, kinds: ['t-shirt', 'shirt', 'blouse', 'knitted top', 'fine roll-neck'] },
      { what: 'bottoms', count: 3, kinds: ['jeans', 'chinos', 'tailored trousers', 'midi skirt', 'wide trousers'] },
      { what: 'layers', count: 2, kinds: ['cardigan', 'blazer', 'denim jacket'] },
      { what: 'coat', count: 1, kinds: ['wool coat', 'trench coat', 'short coat'] },
      { what: 'shoes', count: 2, kinds: ['ankle boots', 'loafers', 'trainers', 'ballet flats'] },
      { what: 'bag', count: 1, kinds: ['tote', 'cross-body bag'] },
    ],
  },
  mood: { palette: mood, words: [] },
  keep: KEEP.map(({ id }) => id),
  rules: {},
};

const garmentsOf = ({ pieces }: Proposal): readonly Piece[] =>
  pieces.filter((piece) => silhouetteOf(piece) !== undefined && !KEEP.includes(piece));

describe('two or three proposals', () => {
  let proposals: readonly Proposal[] = [];
  beforeAll(async () => {
    const choice = await chooseCapsule(QUESTION);
    proposals = choice.possible ? choice.proposals : [];
  }, SLOW_MS);

  it('are no neighbours of one another: every two differ in two fifths of the garments that were not asked for', () => {
    expect(proposals).toHaveLength(3);
    proposals.forEach((one, index) => {
      for (const two of proposals.slice(index + 1)) {
        const theirs = new Set(garmentsOf(two).map(({ id }) => id));
        const own = garmentsOf(one).filter(({ id }) => !theirs.has(id));
        expect(own.length / garmentsOf(one).length).toBeGreaterThanOrEqual(0.4);
      }
      for (const kept of KEEP) expect(one.pieces).toContain(kept);
    });
  });

  it('come by occasions dressed, then by looks, each counted anew', () => {
    for (const { pieces, counts } of proposals) expect(counts).toEqual(engineOf(pieces).count());
    const rank = proposals.map(({ serves, counts }) => serves.length * 1e6 + Number(counts.layered));
    expect(rank).toEqual(rank.toSorted((a, b) => b - a));
  });

  it('say what each wins and loses, and every figure of it is true', () => {
    const figures: Readonly<Record<string, (proposal: Proposal) => number>> = {
      'versus occasions': ({ serves }) => serves.length,
      'versus layered looks': ({ counts }) => Number(counts.layered),
      'versus core looks': ({ counts }) => Number(counts.core),
      'versus weight': ({ packed }) => packed.grams,
      'versus findings': ({ findings }) => findings.length,
      'versus shapes': ({ pieces }) => new Set(pieces.flatMap((piece) => silhouetteOf(piece) ?? [])).size,
    };
    const lessIsMore = new Set(['versus weight', 'versus findings']);
    let told = 0;
    for (const proposal of proposals) {
      const others = proposals.filter((other) => other !== proposal);
      for (const [said, best] of [
        [proposal.wins, true],
        [proposal.loses, false],
      ] as const) {
        for (const { key, values } of said) {
          const figure = figures[key];
          if (figure === undefined) continue;
          told += 1;
          const [mine, theirs] = [figure(proposal), others.map(figure)];
          const larger = best !== lessIsMore.has(key);
          expect(values.mine, key).toBe(mine);
          expect(values.theirs, key).toBe(larger ? Math.max(...theirs) : Math.min(...theirs));
          for (const other of theirs) expect(larger ? mine > other : mine < other, key).toBe(true);
        }
      }
      // what is the most is said wherever it is the most
      const looks = figures['versus layered looks'] as (one: Proposal) => number;
      const ahead = others.every((other) => looks(other) < looks(proposal));
      expect(proposal.wins.some(({ key }) => key === 'versus layered looks')).toBe(ahead);
    }
    expect(told).toBeGreaterThan(0);
  });

  it('says them in a sentence with both figures', () => {
    const f = createFormats({ language: 'en-GB', temperature: 'C', length: 'cm', weight: 'kg' });
    expect(english.capsule['versus layered looks']({ mine: 381, theirs: 377, ahead: 1 }, f)).toBe(
      'makes 381 layered looks; the next best makes 377',
    );
    expect(english.capsule['versus layered looks']({ mine: 370, theirs: 377, ahead: 0 }, f)).toBe(
      'makes 370 layered looks; each of the others makes at least 377',
    );
  });

  it('names what the second and third bring and leave beside the first', () => {
    const [first, ...others] = proposals;
    if (first === undefined) throw new Error('no proposal');
    expect([first.brings, first.leaves]).toEqual([[], []]);
    for (const other of others) {
      const back = [...other.pieces.filter((piece) => !other.brings.includes(piece)), ...other.leaves];
      expect(new Set(back.map(({ id }) => id))).toEqual(new Set(first.pieces.map(({ id }) => id)));
    }
  });

  it('prefers the colours of the mood where as many looks are to be had', async () => {
    const nearness = (some: readonly Proposal[]): number =>
      some[0]?.pieces.reduce((sum, { colours: [ground] }) => {
        return sum + (ground === undefined ? 0 : (moodColourOf(ground, mood)?.nearness ?? 0));
      }, 0) ?? 0;
    const choice = await chooseCapsule({ ...QUESTION, mood: { palette: [], words: [] }, proposals: 1 });
    if (!choice.possible) throw new Error('nothing chosen');
    expect(nearness(proposals)).toBeGreaterThan(nearness(choice.proposals));
  });
});
