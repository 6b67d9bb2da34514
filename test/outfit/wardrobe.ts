import { parseColour } from '../../lib/colour/index.ts';
import type { Measure, Piece } from '../../lib/model/index.ts';
import { dressIndex, KINDS, type KindId } from '../../lib/vocabulary/index.ts';

const measure = (value: number): Measure => ({ value, low: value, high: value, basis: 'given', source: 'test' });

/** A piece as its kind has it, in one named colour, with what a test wants to be different. */
export const pieceOf = (
  id: string,
  kind: KindId,
  colours: string | readonly string[] = 'black',
  change: Partial<Piece> = {},
): Piece => {
  const table = KINDS[kind];
  const names = typeof colours === 'string' ? [colours] : colours;
  return {
    id,
    wardrobe: 'test',
    file: `wardrobes/test/${id}.md`,
    name: id.charAt(0).toUpperCase() + id.slice(1).replaceAll('-', ' '),
    kind,
    places: table.places,
    ...(table.site === undefined ? {} : { site: table.site }),
    colours: names.map((name) => {
      const colour = parseColour(name);
      if (colour === undefined) throw new Error(`no colour ${name}`);
      return { ...colour, share: 1 / names.length };
    }),
    pattern: { type: 'plain', scale: 'medium' },
    cut: table.cut,
    length: table.length,
    heelCm: table.heelCm,
    fabric: table.fabric,
    fabricText: table.fabric,
    grams: measure(table.grams[0]),
    litres: measure(table.litres),
    clo: measure(table.clo[0]),
    dress: { low: dressIndex(table.dress[0]), high: dressIndex(table.dress[1]) },
    covers: table.covers,
    suits: table.suits,
    care: { wash: 30, dryHours: measure(table.dryHours) },
    wears: measure(table.wears[0]),
    status: 'owned',
    statement: false,
    note: '',
    estimated: [],
    ...change,
  };
};
