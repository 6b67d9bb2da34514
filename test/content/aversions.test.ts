import { describe, expect, it } from 'vitest';
import { briefFor, readContent } from '../../lib/content/index.ts';
import { besideGuides, buildGuides } from '../../lib/guide/index.ts';
import { wornOffSkin } from '../../lib/outfit/index.ts';
import { loadSolver } from '../../lib/solver/index.ts';
import { fabricRefused } from '../../lib/vocabulary/index.ts';
import { PROJECT } from '../cli/run.ts';

const demo = async () => {
  const { content } = await readContent(`${PROJECT}/content`);
  if (content === undefined) throw new Error('no demo');
  return content;
};

describe('what one traveller avoids', () => {
  it('joins what nobody wears, of two heels the lower, and leaves the others alone', async () => {
    const { trips } = await demo();
    const [trip] = trips.filter(({ brief }) => brief.travellers.length > 1);
    const [one, two] = trip?.brief.travellers ?? [];
    if (trip === undefined || one === undefined || two === undefined) throw new Error('no trip of two');
    const brief = {
      ...trip.brief,
      avoid: { colours: [], fabrics: ['silk'], heelCmOver: 6 },
      travellers: [{ ...one, avoid: { colours: [], fabrics: ['linen'], heelCmOver: 4, againstSkin: ['wool'] } }, two],
    };
    const mine = briefFor(brief, one.name);
    expect(mine.avoid).toEqual({ colours: [], fabrics: ['silk', 'linen'], heelCmOver: 4, againstSkin: ['wool'] });
    expect(briefFor(mine, one.name).avoid).toEqual(mine.avoid);
    expect(briefFor(brief, two.name)).toBe(brief);
  });

  it('reaches the guides of that traveller only, and what they are told to buy', async () => {
    const content = await demo();
    const trip = content.trips.find(({ brief }) => brief.id === 'october-by-rail');
    const [first] = trip?.capsules ?? [];
    if (trip === undefined || first === undefined) throw new Error('no demo');
    const nobody = { ...first, id: 'other', traveller: 'Somebody else', fixed: [], favourites: [] };
    const capsule = { ...first, fixed: [], favourites: [] };
    const brief = {
      ...trip.brief,
      travellers: trip.brief.travellers.map((traveller) => ({
        ...traveller,
        avoid: { colours: [], fabrics: [], againstSkin: ['wool'] },
      })),
    };
    const asked = { ...content, trips: [{ brief, capsules: [capsule, nobody] }] };
    const [mine, theirs] = await buildGuides(asked, await loadSolver());
    if (mine === undefined || theirs === undefined) throw new Error('two guides');
    const woollen = (some: typeof mine): readonly string[] =>
      some.findings.filter(({ rule }) => rule === 'against-skin').flatMap(({ about }) => about);
    expect(woollen(mine).length).toBeGreaterThan(0);
    expect(woollen(theirs)).toEqual([]);
    const { improvements } = await besideGuides([mine], asked, { improve: true });
    const found = improvements.get(mine.id);
    const inn = [
      ...(found?.additions ?? []).map(({ piece }) => piece),
      ...(found?.purchases ?? []).map(({ piece }) => piece),
      ...(found?.swaps ?? []).map((swap) => swap.in),
    ];
    expect(inn.length).toBeGreaterThan(0);
    expect(inn.filter((piece) => fabricRefused(piece, ['wool']) !== undefined && !wornOffSkin(piece))).toEqual([]);
  });
});
