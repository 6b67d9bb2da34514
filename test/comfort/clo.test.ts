import { describe, expect, it } from 'vitest';
import { cloOfLook, lookClo, lookComfort, requiredClo } from '../../lib/comfort/index.ts';
import { createWardrobeEngine } from '../../lib/outfit/index.ts';
import type { KindId, Slot } from '../../lib/vocabulary/index.ts';
import { lookOf, pieceOfKind } from './garments.ts';

const sum = (...worn: readonly (readonly [KindId, Slot])[]) =>
  lookClo(
    worn.map(([kind]) => pieceOfKind(kind)),
    worn.map(([, slot]) => slot),
  );

describe('insulation of a look', () => {
  it('counts removable layers in the range only', () => {
    const { off, on } = sum(
      ['blouse', 'top'],
      ['jeans', 'bottom'],
      ['cardigan', 'mid layer'],
      ['wool coat', 'outer layer'],
      ['loafers', 'shoes'],
    );
    expect(on - off).toBeCloseTo(0.25 + 0.6, 6);
    expect(sum(['swimsuit', 'swim']).on).toBe(0.04);
  });

  it('assumes socks in closed shoes, and none beside those of the look or in sandals', () => {
    const dressed = (...feet: readonly (readonly [KindId, Slot])[]): number =>
      sum(['t-shirt', 'top'], ['chinos', 'bottom'], ...feet).on;
    const bare = dressed(['sandals', 'shoes']);
    expect(dressed(['loafers', 'shoes'])).toBeCloseTo(bare + 0.02, 6);
    expect(dressed(['socks', 'legwear'], ['loafers', 'shoes'])).toBeCloseTo(bare + 0.02, 6);
    expect(dressed(['walking socks', 'legwear'], ['loafers', 'shoes'])).toBeCloseTo(bare + 0.05, 6);
    // leggings end at the ankle: the socks stay
    expect(dressed(['thermal leggings', 'leg layer'], ['loafers', 'shoes'])).toBeCloseTo(bare + 0.17, 6);
  });

  it('is the same to a look, to the search and to the reasons given', () => {
    const pieces = [
      ...(['t-shirt', 'chinos', 'crew-neck jumper', 'wool coat', 'thermal leggings', 'wool tights'] as const),
      ...(['pencil skirt', 'loafers', 'sandals'] as const),
    ].map((kind) => pieceOfKind(kind));
    const engine = createWardrobeEngine({ pieces, rules: {}, never: [], always: [] });
    const byId = new Map(pieces.map((piece) => [piece.id, piece]));
    const looks = [...engine.enumerate()];
    expect(looks.length).toBeGreaterThan(10);
    for (const look of looks) {
      const { on, off } = cloOfLook(look, byId);
      const worn = look.worn.map(({ piece }) => piece);
      const reached = (min: number, max: number): boolean => {
        const asked = { clo: { min, max } };
        const found = [...engine.enumerate({ restriction: asked })].some(({ id }) => id === look.id);
        expect(engine.explain(worn, asked).goes, look.id).toBe(found);
        return found;
      };
      expect(reached(on, off), look.id).toBe(true);
      expect(reached(on + 0.002, 9), look.id).toBe(false);
      expect(reached(0, off - 0.002), look.id).toBe(false);
    }
  });
});

describe('what an occasion asks for', () => {
  const outdoors = (airC: number, windMs = 2) =>
    requiredClo({
      setting: { where: 'outdoors', sun: 'shade' },
      activity: 'strolling',
      air: { lowC: airC, highC: airC, windMs, humidityPercent: 60 },
    });

  it('asks for less the warmer it is and for more wind', () => {
    for (let airC = -25; airC < 40; airC += 0.5) {
      expect(outdoors(airC + 0.5).min).toBeLessThanOrEqual(outdoors(airC).min);
      expect(outdoors(airC + 0.5).max).toBeLessThanOrEqual(outdoors(airC).max);
      if (airC <= 10) expect(outdoors(airC, 6).min).toBeGreaterThan(outdoors(airC, 1).min);
    }
  });

  it('joins without a jump', () => {
    for (const at of [10, 20]) expect(Math.abs(outdoors(at + 1e-6).min - outdoors(at - 1e-6).min)).toBeLessThan(1e-4);
    expect(outdoors(10).method).toBe('ISO 11079');
    expect(outdoors(15).method).toBe('joined');
    expect(outdoors(20).method).toBe('ISO 7730');
  });

  it('says in heat that the lightest clothes are right', () => {
    expect(outdoors(34)).toMatchObject({ max: 0.36, maxMethod: 'lightest' });
  });

  it('asks nothing of a swimmer', () => {
    const swim = requiredClo({
      setting: { where: 'indoors', airC: 29 },
      activity: 'swimming',
      air: { lowC: 29, highC: 29, windMs: 0, humidityPercent: 60 },
    });
    expect(swim).toMatchObject({ min: 0, max: Number.POSITIVE_INFINITY, method: 'none' });
  });

  it('grows beyond any travel clothes at −40 °C', () => {
    expect(outdoors(-40).min).toBeGreaterThan(3);
  });
});

describe('degrees of a look', () => {
  it('puts a coat look outdoors between winter and spring', () => {
    // common practice, no source: jumper and wool coat for a stroll at 3 to 10 °C
    const { look, pieces } = lookOf(
      ['blouse', 'top'],
      ['tailored trousers', 'bottom'],
      ['crew-neck jumper', 'mid layer'],
      ['wool coat', 'outer layer'],
      ['dress socks', 'legwear'],
      ['ankle boots', 'shoes'],
    );
    const full = lookComfort(look, pieces, 'strolling', 'outdoors').steps.at(-1);
    expect(full?.lowC).toBeLessThanOrEqual(5);
    expect(full?.highC).toBeGreaterThanOrEqual(10);
  });

  it('puts a sundress in summer', () => {
    // common practice, no source: a sundress for a stroll at 23 to 28 °C
    const { look, pieces } = lookOf(['sundress', 'one-piece'], ['loafers', 'shoes']);
    const { lowC, highC } = lookComfort(look, pieces, 'strolling', 'outdoors');
    expect(lowC).toBeGreaterThanOrEqual(21);
    expect(highC).toBeGreaterThanOrEqual(27);
  });

  it('accepts trousers, shirt and jacket on a chair at 21 °C', () => {
    // common practice, no source; ISO 7730 calls 22 °C ± 2 K right for 1 clo in winter
    const { look, pieces } = lookOf(
      ['shirt', 'top'],
      ['chinos', 'bottom'],
      ['blazer', 'mid layer'],
      ['socks', 'legwear'],
      ['loafers', 'shoes'],
    );
    const { lowC, highC } = lookComfort(look, pieces, 'sitting', 'indoors');
    expect(lowC).toBeLessThanOrEqual(21);
    expect(highC).toBeGreaterThanOrEqual(24);
  });

  it('goes on from step to step without a gap downwards', () => {
    const { look, pieces } = lookOf(
      ['t-shirt', 'top'],
      ['jeans', 'bottom'],
      ['overshirt', 'mid layer'],
      ['rain jacket', 'outer layer'],
      ['trainers', 'shoes'],
    );
    const { steps, lowC, highC } = lookComfort(look, pieces, 'walking', 'outdoors');
    expect(steps.map(({ layers }) => layers.length)).toEqual([0, 1, 1, 2]);
    expect(lowC).toBe(Math.min(...steps.map((step) => step.lowC)));
    expect(highC).toBe(Math.max(...steps.map((step) => step.highC)));
  });
});
