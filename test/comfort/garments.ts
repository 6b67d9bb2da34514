import type { Look, Piece } from '../../lib/model/index.ts';
import { KINDS, type KindId, type Slot } from '../../lib/vocabulary/index.ts';

/** A piece with nothing but its kind's defaults. */
export const pieceOfKind = (kind: KindId, change: Partial<Piece> = {}): Piece => {
  const row = KINDS[kind];
  const measure = (value: number) => ({ value, low: value, high: value, basis: 'estimated', source: 'test' }) as const;
  return {
    file: `wardrobes/test/${kind}.md`,
    id: kind.replaceAll(' ', '-'),
    wardrobe: 'test',
    name: kind,
    kind,
    places: row.places,
    ...(row.site === undefined ? {} : { site: row.site }),
    colours: [{ name: 'navy', hex: '#1f2a44', oklch: { l: 0.3, c: 0.05, h: 265 }, share: 1 }],
    pattern: { type: 'plain', scale: 'small' },
    cut: row.cut,
    length: row.length,
    heelCm: row.heelCm,
    fabric: row.fabric,
    fabricText: row.fabric,
    grams: measure(row.grams[0]),
    litres: measure(row.litres),
    clo: measure(row.clo[0]),
    dress: {
      low: ['casual', 'smart casual', 'business', 'cocktail', 'formal'].indexOf(row.dress[0]),
      high: ['casual', 'smart casual', 'business', 'cocktail', 'formal'].indexOf(row.dress[1]),
    },
    covers: row.covers,
    suits: row.suits,
    care: { wash: 40, dryHours: measure(row.dryHours) },
    wears: measure(row.wears[0]),
    status: 'owned',
    statement: false,
    note: '',
    estimated: [],
    ...change,
  };
};

/** A look of kinds in slots, and its pieces by id. */
export const lookOf = (
  ...worn: readonly (readonly [kind: KindId, slot: Slot])[]
): { readonly look: Look; readonly pieces: ReadonlyMap<string, Piece> } => {
  const pieces = worn.map(([kind]) => pieceOfKind(kind));
  return {
    look: {
      id: pieces.map(({ id }) => id).join('+'),
      worn: worn.map(([, slot], index) => ({ piece: pieces[index]?.id ?? '', slot })),
    },
    pieces: new Map(pieces.map((piece) => [piece.id, piece])),
  };
};
