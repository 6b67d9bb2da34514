import { phrase } from '../../words/phrase.ts';
import { COMMON_PRACTICE, type OccasionRule, ORDINARY_POINTS } from './rule.ts';

/** On uneven ground and long walks the heel is at most `threshold` cm, whatever the shoe is said to suit. */
export const HEELS_ON_GROUND: OccasionRule = {
  id: 'heels-on-ground',
  says: phrase('outfit', 'rule heels-on-ground', {}),
  shape: 'occasion',
  severity: 'rules out',
  threshold: { default: 4, low: 0, high: 15, unit: phrase('outfit', 'unit cm', {}) },
  points: ORDINARY_POINTS,
  source: COMMON_PRACTICE,
  at: ({ piece, slot }, asked, threshold) => {
    const rough = asked.needs?.includes('uneven ground') || asked.needs?.includes('long walking');
    return slot === 'shoes' && rough && piece.heelCm > threshold
      ? phrase('outfit', 'heels on ground', { shoes: piece.name, heelCm: piece.heelCm, mostCm: threshold })
      : undefined;
  },
};

/** In rain and snow feet stay dry: no open shoes. */
export const DRY_FEET: OccasionRule = {
  id: 'dry-feet',
  says: phrase('outfit', 'rule dry-feet', {}),
  shape: 'occasion',
  severity: 'rules out',
  points: ORDINARY_POINTS,
  source: COMMON_PRACTICE,
  at: ({ piece, slot }, asked) =>
    slot === 'shoes' &&
    (asked.needs?.includes('rain') || asked.needs?.includes('snow')) &&
    !piece.covers.includes('feet')
      ? phrase('outfit', 'open in rain', { shoes: piece.name })
      : undefined,
};
