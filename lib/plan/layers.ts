import { cloOfLook, isRemovable } from '../comfort/index.ts';
import type { Look, Piece } from '../model/index.ts';
import { type Moment, requiredAt } from './moments.ts';

export interface Layers {
  readonly on: readonly string[];
  readonly carried: readonly string[];
}

/**
 * Which of a look's layers are worn at the middle of the occasion's temperatures, and which are taken along: as little
 * as keeps warm enough. A rain layer is on where rain is asked for.
 */
export const layersFor = (moment: Moment, look: Look, pieces: ReadonlyMap<string, Piece>): Layers => {
  const layers = look.worn.filter(({ piece, slot }) => isRemovable(slot) && (pieces.get(piece)?.clo.value ?? 0) > 0);
  const all = layers.map(({ piece }) => piece);
  const { air, occasion } = moment;
  if (air === undefined || moment.required?.method === 'none') {
    return occasion.setting.where === 'indoors' ? { on: [], carried: all } : { on: all, carried: [] };
  }
  const mean = (air.lowC + air.highC) / 2;
  const asked = requiredAt(occasion, moment.place, { ...air, lowC: mean, highC: mean });
  const off = cloOfLook(look, pieces).off;
  const wet = occasion.needs.includes('rain') && occasion.setting.where === 'outdoors';
  let best: { readonly on: readonly string[]; readonly clo: number } | undefined;
  for (let chosen = 0; chosen < 2 ** all.length; chosen += 1) {
    const on = all.filter((_, index) => (chosen & (2 ** index)) !== 0);
    const dry =
      !wet ||
      layers.every(
        ({ piece, slot }) => slot !== 'outer layer' || !pieces.get(piece)?.suits.includes('rain') || on.includes(piece),
      );
    const clo = off + on.reduce((sum, piece) => sum + (pieces.get(piece)?.clo.value ?? 0), 0);
    if (dry && clo >= asked.min && (best === undefined || clo < best.clo)) best = { on, clo };
  }
  const on = best?.on ?? all;
  return { on, carried: all.filter((piece) => !on.includes(piece)) };
};
