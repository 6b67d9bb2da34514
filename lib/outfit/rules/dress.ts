import { DRESS_CODES } from '../../vocabulary/dress-codes.ts';
import { phrase } from '../../words/phrase.ts';
import { COMMON_PRACTICE, ORDINARY_POINTS, type PairRule } from './rule.ts';

const code = (index: number): string => DRESS_CODES[index] ?? '';

/**
 * Dress intervals of all pieces of a look have a code in common; in one dimension that is so when each two have one
 * (Helly's theorem). `threshold` is by how many steps a piece may be plainer than the rest.
 */
export const DRESS_MEETS: PairRule = {
  id: 'dress-meets',
  says: phrase('outfit', 'rule dress-meets', {}),
  shape: 'pair',
  severity: 'rules out',
  threshold: { default: 0, low: 0, high: 4, unit: phrase('outfit', 'unit steps', {}) },
  points: ORDINARY_POINTS,
  source: COMMON_PRACTICE,
  between: (a, b, threshold) => {
    const [plain, dressy] = a.piece.dress.high <= b.piece.dress.high ? [a.piece, b.piece] : [b.piece, a.piece];
    return plain.dress.high + threshold < dressy.dress.low
      ? phrase('outfit', 'dress apart', {
          plain: plain.name,
          dressy: dressy.name,
          ends: code(plain.dress.high),
          begins: code(dressy.dress.low),
        })
      : undefined;
  },
};
