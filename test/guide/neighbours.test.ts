import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { readContent } from '../../lib/content/index.ts';
import { engineFor, piecesOfCapsule } from '../../lib/guide/index.ts';
import { neighboursOf, swapsOf } from '../../lib/guide/neighbours.ts';
import { PROJECT } from '../cli/run.ts';

const capsules = async () => {
  const { content } = await readContent(path.join(PROJECT, 'content'));
  if (content === undefined) throw new Error('the demo does not read');
  return content.trips.flatMap((trip) =>
    trip.capsules.map((capsule) => {
      const pieces = piecesOfCapsule(capsule, content.wardrobes.get(capsule.wardrobe) ?? []);
      return { capsule, pieces, engine: engineFor(pieces, capsule, content.houseRules) };
    }),
  );
};

describe('looks one piece away', () => {
  it('differ by one piece each way, and only those are told', () => {
    const look = (...ids: string[]) => ({
      id: ids.join('+'),
      worn: ids.map((piece) => ({ piece, slot: 'top' as const })),
    });
    const found = neighboursOf([look('a', 'b', 'c'), look('a', 'b', 'd'), look('a', 'e', 'd'), look('a', 'b')]);
    expect(found[0]).toEqual([{ number: 2, out: 'c', in: 'd' }]);
    expect(found[1]).toEqual([
      { number: 1, out: 'd', in: 'c' },
      { number: 3, out: 'b', in: 'e' },
    ]);
    expect(found[3]).toEqual([]);
  });

  it('exchanges of one piece go, change nothing else, and are all there are of them, against trying every piece', async () => {
    let told = 0;
    for (const { pieces, engine, capsule } of await capsules()) {
      for (const { look } of engine.varied(6)) {
        const worn = look.worn.map(({ piece }) => piece);
        const swaps = swapsOf(look, pieces, engine, Number.POSITIVE_INFINITY);
        for (const { out, in: into, pieces: made } of swaps) {
          expect(made).toEqual(worn.map((id) => (id === out ? into : id)));
          expect(worn).not.toContain(into);
        }
        // every exchange at all that makes a look with the new piece in the place of the old one
        const brute = look.worn.flatMap(({ piece: out, slot }) =>
          pieces.flatMap(({ id, places, site }) => {
            const fits = places.some(
              (place) => (place === 'jewellery' ? `jewellery ${site ?? 'neck'}` : place) === slot,
            );
            if (worn.includes(id) || !fits) return [];
            const { goes, complete } = engine.explain(worn.map((each) => (each === out ? id : each)));
            return goes && complete ? [`${out} ${id}`] : [];
          }),
        );
        expect(swaps.map((swap) => `${swap.out} ${swap.in}`).toSorted(), capsule.id).toEqual(brute.toSorted());
        told += swaps.length;
        // the first few touch as many different pieces of the look as can be exchanged
        const first = swaps.slice(0, new Set(swaps.map(({ out }) => out)).size).map(({ out }) => out);
        expect(new Set(first).size).toBe(first.length);
      }
    }
    expect(told).toBeGreaterThan(50);
  });
});
