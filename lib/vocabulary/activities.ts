/**
 * Activities with metabolic rate in met (1 met = 58.2 W/m²) and walking speed in metres a second, which moves the air.
 * Source of the rates: ASHRAE Handbook Fundamentals ch. 9 table 4; a row marked "own" is interpolated from it.
 */
export const ACTIVITIES = {
  resting: { met: 0.8, walkMs: 0, source: 'ASHRAE Handbook ch. 9 table 4, reclining' },
  sitting: { met: 1.0, walkMs: 0, source: 'ASHRAE Handbook ch. 9 table 4, seated, quiet' },
  travelling: { met: 1.1, walkMs: 0, source: 'own: seated, with some standing' },
  standing: { met: 1.2, walkMs: 0, source: 'ASHRAE Handbook ch. 9 table 4, standing, relaxed' },
  'strolling indoors': { met: 1.7, walkMs: 0.5, source: 'ASHRAE Handbook ch. 9 table 4, walking about' },
  strolling: { met: 2.0, walkMs: 0.9, source: 'ASHRAE Handbook ch. 9 table 4, walking 3.2 km/h' },
  walking: { met: 2.6, walkMs: 1.2, source: 'ASHRAE Handbook ch. 9 table 4, walking 4.3 km/h' },
  'brisk walking': { met: 3.8, walkMs: 1.8, source: 'ASHRAE Handbook ch. 9 table 4, walking 6.4 km/h' },
  dancing: { met: 3.0, walkMs: 0.5, source: 'ASHRAE Handbook ch. 9 table 4, dancing, social, 2.4 to 4.4' },
  swimming: { met: 4.0, walkMs: 0, source: 'own: no clothing is asked of it beyond swimwear' },
} as const satisfies Record<string, { met: number; walkMs: number; source: string }>;
export type ActivityId = keyof typeof ACTIVITIES;
