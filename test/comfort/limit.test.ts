import { describe, expect, it } from 'vitest';
import {
  beyondTravelClothes,
  type ComfortQuestion,
  lookClo,
  requiredClo,
  WARMEST_TRAVEL_CLO,
} from '../../lib/comfort/index.ts';
import { KIND_IDS, KINDS, type KindId, type Slot } from '../../lib/vocabulary/index.ts';
import { pieceOfKind } from './garments.ts';

const at = (lowC: number, activity: ComfortQuestion['activity']): ComfortQuestion => ({
  setting: { where: 'outdoors', sun: 'shade' },
  activity,
  air: { lowC, highC: lowC, windMs: 2, humidityPercent: 70 },
});

/** The highest whole degree at which an activity is beyond clothes for travelling. */
const beginsAt = (activity: ComfortQuestion['activity']): number => {
  let lowC = 10;
  while (beyondTravelClothes(at(lowC, activity)) === undefined) lowC -= 1;
  return lowC;
};

describe('the cold that clothes for travelling do for', () => {
  it('ends where the warmest kind of every place is not enough', () => {
    const warmest = (slot: Slot): KindId =>
      KIND_IDS.filter((id) => KINDS[id].places.some((place) => place === slot)).toSorted(
        (a, b) => KINDS[b].clo[0] - KINDS[a].clo[0],
      )[0] as KindId;
    const slots: readonly Slot[] = [
      ...([
        'top',
        'mid layer',
        'outer layer',
        'base layer',
        'leg layer',
        'bottom',
        'legwear',
        'shoes',
        'headwear',
        'scarf',
        'gloves',
      ] as const),
    ];
    const all = lookClo(
      slots.map((slot) => pieceOfKind(warmest(slot))),
      slots,
    );
    expect(WARMEST_TRAVEL_CLO).toBeCloseTo(all.on, 6);
    // Source: ISO 11079:2007 speaks of 2 to 3 clo for winter clothing outdoors (from memory).
    expect(WARMEST_TRAVEL_CLO).toBeGreaterThan(2);
    expect(WARMEST_TRAVEL_CLO).toBeLessThan(3);
  });

  it('comes the later the more one moves, from the published method and not from a constant', () => {
    const [standing, strolling, walking, brisk] = (['standing', 'strolling', 'walking', 'brisk walking'] as const).map(
      beginsAt,
    );
    expect(standing).toBeGreaterThan(strolling ?? Number.NaN);
    expect(strolling).toBeGreaterThan(walking ?? Number.NaN);
    expect(walking).toBeGreaterThan(brisk ?? Number.NaN);
    for (const activity of ['standing', 'walking'] as const) {
      const lowC = beginsAt(activity);
      expect(requiredClo(at(lowC, activity)).min).toBeGreaterThan(WARMEST_TRAVEL_CLO);
      expect(requiredClo(at(lowC + 1, activity)).min).toBeLessThanOrEqual(WARMEST_TRAVEL_CLO);
    }
  });

  it('tells cold in which moving helps from cold in which nothing does', () => {
    expect(beyondTravelClothes(at(-8, 'standing'))).toBe('keeping still');
    expect(beyondTravelClothes(at(-8, 'walking'))).toBeUndefined();
    expect(beyondTravelClothes(at(-40, 'standing'))).toBe('altogether');
    expect(beyondTravelClothes(at(-40, 'walking'))).toBe('altogether');
    expect(beyondTravelClothes({ ...at(-40, 'standing'), setting: { where: 'indoors', airC: 20 } })).toBeUndefined();
  });
});
