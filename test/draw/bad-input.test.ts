import { describe, expect, it } from 'vitest';
import type { Drawing, DrawnPiece } from '../../lib/draw/drawing.ts';
import { drawPiece } from '../../lib/draw/garment.ts';
import { KIND_IDS, PATTERN_TYPES } from '../../lib/vocabulary/index.ts';
import { samplePiece } from '../specimen/sample.ts';

const check = (what: string, drawing: Drawing): void => {
  expect(drawing.marks.length, what).toBeGreaterThan(0);
  expect(JSON.stringify(drawing), what).not.toMatch(/NaN|Infinity|undefined|null/);
  // nothing anyone wears or carries is larger than a person with stretched arms
  expect(drawing.box.width, what).toBeGreaterThan(0.5);
  expect(Math.max(drawing.box.width, drawing.box.height), what).toBeLessThan(200);
};

describe('bad input', () => {
  it('draws every kind without a colour, in every pattern', () => {
    for (const kind of KIND_IDS) {
      const type = PATTERN_TYPES[KIND_IDS.indexOf(kind) % PATTERN_TYPES.length] ?? 'plain';
      for (const changes of [{ colours: [] }, { colours: [], pattern: { type, scale: 'large' } }] as const)
        check(
          `${kind} ${JSON.stringify(changes)}`,
          drawPiece(samplePiece(kind, changes as Partial<DrawnPiece>), 'small'),
        );
    }
  });

  it('draws every kind at absurd lengths and heels as something that can be worn', () => {
    for (const kind of KIND_IDS) {
      for (const far of [-40, 0, 5000, Number.NaN, Number.POSITIVE_INFINITY])
        check(`${kind} of ${far}`, drawPiece(samplePiece(kind, { lengthCm: far, heelCm: far }), 'small'));
    }
  });
});
