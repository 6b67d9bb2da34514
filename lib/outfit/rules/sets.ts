import { phrase } from '../../words/phrase.ts';
import { ORDINARY_POINTS, type SetRule } from './rule.ts';

export const NEVER_TOGETHER: SetRule = {
  id: 'never-together',
  says: phrase('outfit', 'rule never-together', {}),
  shape: 'never',
  severity: 'rules out',
  points: 2 * ORDINARY_POINTS,
  source: 'the capsule',
};

export const ALWAYS_TOGETHER: SetRule = {
  id: 'always-together',
  says: phrase('outfit', 'rule always-together', {}),
  shape: 'always',
  severity: 'rules out',
  points: 2 * ORDINARY_POINTS,
  source: 'the capsule',
};
