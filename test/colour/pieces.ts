import { parseColour } from '../../lib/colour/index.ts';
import type { Measure, NamedColour, Piece } from '../../lib/model/index.ts';
import type { PatternType, Place } from '../../lib/vocabulary/index.ts';

/** A colour that has to be there. */
export const colour = (text: string): NamedColour => {
  const found = parseColour(text);
  if (found === undefined) throw new Error(`${text} is no colour`);
  return found;
};

const measure = (value: number): Measure => ({ value, low: value, high: value, basis: 'given', source: 'test' });

/** A piece with the given colours, first the ground; shares are even unless given. */
export const piece = (
  id: string,
  place: Place,
  colours: readonly (string | readonly [string, number])[],
  pattern: PatternType = 'plain',
  over: Partial<Piece> = {},
): Piece => ({
  id,
  wardrobe: 'ada',
  file: `wardrobes/ada/${id}.md`,
  name: id,
  kind: 'overshirt',
  places: [place],
  colours: colours.map((written) =>
    typeof written === 'string'
      ? { ...colour(written), share: 1 / colours.length }
      : { ...colour(written[0]), share: written[1] },
  ),
  pattern: { type: pattern, scale: 'medium' },
  cut: 'straight',
  length: 'hip',
  heelCm: 0,
  fabric: 'cotton jersey',
  fabricText: 'cotton jersey',
  grams: measure(200),
  litres: measure(1),
  clo: measure(0.2),
  dress: { low: 0, high: 2 },
  covers: [],
  suits: [],
  care: { wash: 30, dryHours: measure(12) },
  wears: measure(2),
  status: 'owned',
  statement: false,
  note: '',
  estimated: [],
  ...over,
});
