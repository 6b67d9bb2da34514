import { differenceOf } from '../../colour/difference.ts';
import { FINE_SURFACES, type Surface } from '../../vocabulary/fabrics.ts';
import { phrase } from '../../words/phrase.ts';
import type { Worn } from '../worn.ts';
import { COMMON_PRACTICE, ORDINARY_POINTS, type PairRule } from './rule.ts';
import { inSlot, surfaceOf } from './traits.ts';

const ROUGH: ReadonlySet<string> = new Set<Surface>(['fleece', 'shell', 'towelling', 'rubber']);
const clothes = inSlot('top', 'bottom', 'one-piece', 'mid layer', 'outer layer', 'shoes');
const garments = inSlot('top', 'bottom', 'one-piece', 'mid layer', 'outer layer');

const DENIM: ReadonlySet<string> = new Set<Surface>(['denim']);
const LEATHER: ReadonlySet<string> = new Set<Surface>(['leather', 'patent']);

const has = ({ piece }: Worn, surfaces: ReadonlySet<string>): boolean => surfaces.has(surfaceOf(piece));

/** CIEDE2000 below which two blues are one dye lot: a denim suit, worn on purpose. */
const ONE_DYE_LOT = 2;

/** Fine with rough, and denim with denim of nearly the same blue: nearer than `threshold` (CIEDE2000) yet not equal. */
export const FABRIC: PairRule = {
  id: 'fabric',
  says: phrase('outfit', 'rule fabric', {}),
  shape: 'pair',
  severity: 'rules out',
  threshold: { default: 14, low: 0, high: 100, unit: phrase('outfit', 'unit difference', {}) },
  points: ORDINARY_POINTS,
  source: COMMON_PRACTICE,
  between: (a, b, threshold) => {
    const said = { one: a.piece.name, two: b.piece.name };
    if (
      clothes(a) &&
      clothes(b) &&
      ((has(a, FINE_SURFACES) && has(b, ROUGH)) || (has(a, ROUGH) && has(b, FINE_SURFACES)))
    ) {
      return phrase('outfit', 'fine with rough', { ...said, fabrics: [a.piece.fabricText, b.piece.fabricText] });
    }
    if (garments(a) && garments(b) && has(a, DENIM) && has(b, DENIM)) {
      const [one] = a.piece.colours;
      const [two] = b.piece.colours;
      const difference = one === undefined || two === undefined ? 0 : differenceOf(one.hex, two.hex);
      if (difference >= ONE_DYE_LOT && difference < threshold) return phrase('outfit', 'denim on denim', said);
    }
    if (garments(a) && garments(b) && has(a, LEATHER) && has(b, LEATHER)) {
      return phrase('outfit', 'leather on leather', said);
    }
    return undefined;
  },
};
