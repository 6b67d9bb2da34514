import type { Piece } from '../../model/index.ts';
import type { LookTable, WardrobeEngine } from '../../outfit/index.ts';
import type { Demand } from '../serving.ts';
import { type PartedLooks, planesOf } from './looks.ts';

/** Layered looks of a wardrobe beyond which occasions are held only against cores, with any layers. */
const MOST_LOOKS = 60_000;

/** The cores that can be finished for an occasion, by the layers worn over them; shoes and what finishes are left aside. */
export interface Need {
  /** As `planes`, for one occasion; or one entry for all when layers are left aside too. */
  readonly planes: ReadonlyMap<number, Uint8Array>;
  readonly anyLayers?: Uint8Array;
}

/** What each distinct occasion needs of a set of garments: necessary, and all but sufficient. */
export const needsOf = (
  demands: readonly Demand[],
  engine: WardrobeEngine,
  pieces: readonly Piece[],
  table: LookTable,
  looks: PartedLooks,
): readonly Need[] => {
  const numberOf = new Map(pieces.map(({ id }, number) => [id, number]));
  const wide = looks.layers.length + 1;
  // where cores alone are counted, any layers may be worn over them
  const fine = table.looks <= MOST_LOOKS && table.layers.some((piece) => piece >= 0);
  const distinct = [...new Map(demands.map((demand) => [JSON.stringify(demand.restriction), demand])).values()];
  return distinct.map(({ restriction }): Need => {
    const planes = new Map<number, Uint8Array>();
    for (const { worn } of engine.enumerate({ restriction, level: fine ? 'layered' : 'core' })) {
      let [first, bottom, mid, outer] = [-1, 0, 0, 0];
      for (const { piece, slot } of worn) {
        const number = numberOf.get(piece) ?? -1;
        if (slot === 'bottom') bottom = looks.rowOf[number] ?? 0;
        else if (slot === 'mid layer' || slot === 'cover-up') mid = looks.layerOf[number] ?? 0;
        else if (slot === 'outer layer') outer = looks.layerOf[number] ?? 0;
        else first = number;
      }
      const core = looks.cell[bottom * looks.pieces + first] ?? -1;
      if (core < 0) continue;
      const plane = planes.get(mid * wide + outer) ?? new Uint8Array(looks.cores);
      plane[core] = 1;
      planes.set(mid * wide + outer, plane);
    }
    const any = planes.get(0) ?? new Uint8Array(looks.cores);
    return fine ? { planes } : { planes: new Map(), anyLayers: any };
  });
};

/** The cores that serve under a set of layers; undefined when there is none. */
export const servedUnder = (need: Need, looks: PartedLooks, set: readonly number[]): Uint8Array | undefined => {
  if (need.anyLayers !== undefined) return need.anyLayers.includes(1) ? need.anyLayers : undefined;
  const served = new Uint8Array(looks.cores);
  let some = false;
  for (const { at } of planesOf(looks, set)) {
    const plane = need.planes.get(at);
    if (plane === undefined) continue;
    some = true;
    for (let c = 0; c < served.length; c += 1) served[c] = (served[c] as number) | (plane[c] as number);
  }
  return some ? served : undefined;
};
