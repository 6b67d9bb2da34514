import * as v from 'valibot';
import { onSurface, parseColour } from '../colour/index.ts';
import type { Measure, Piece, PieceColour, PieceField } from '../model/index.ts';
import {
  dressIndex,
  estimateClo,
  estimateDryHours,
  estimateGrams,
  estimateLitres,
  estimateWears,
  FABRICS,
  type FabricId,
  fabricOf,
  given,
  KINDS,
  type Kind,
  type KindId,
} from '../vocabulary/index.ts';
import type { FrontMatter } from './front-matter.ts';
import { toProblems } from './problems.ts';
import type { Read } from './result.ts';
import { fieldsOf } from './schema/fields.ts';
import type { WrittenColour } from './schema/parts.ts';
import { type AddedOrNot, pieceSchema, type WrittenPiece } from './schema/piece.ts';

/** Shares as written; what is left over goes to the colours without one, the ground taking the larger part. */
const shareOut = (colours: readonly WrittenColour[]): readonly PieceColour[] => {
  const written = colours.reduce((sum, { share }) => sum + (share ?? 0), 0);
  const open = colours.filter(({ share }) => share === undefined);
  const left = Math.max(0, 1 - written);
  const weights = open.map((colour) => (colour === colours[0] && colours.length > 1 ? 2 : 1));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const shares = colours.map(({ share }, index) => {
    if (share !== undefined) return share;
    const place = open.indexOf(colours[index] as WrittenColour);
    return (left * (weights[place] ?? 1)) / total;
  });
  const sum = shares.reduce((a, b) => a + b, 0);
  return colours.map(({ name, hex, oklch, neutral }, index) => ({
    name,
    hex,
    oklch,
    ...(neutral === undefined ? {} : { neutral }),
    share: sum > 0 ? (shares[index] ?? 0) / sum : 1 / colours.length,
  }));
};

const GUESSED = [
  'cut',
  'length',
  'fabric',
  'grams',
  'litres',
  'clo',
  'dress',
  'covers',
  'suits',
  'wears',
  'places',
] as const;

const NOT = 'not ';

/** Evening shoes: of suede they are still worn to cocktails. common practice, no source */
const EVENING_SHOES: ReadonlySet<KindId> = new Set(['pumps', 'block heels', 'slingbacks', 'heeled sandals']);

const dressOf = (written: WrittenPiece, kind: Kind, fabric: FabricId): Piece['dress'] => {
  if (written.dress !== undefined) return written.dress;
  const [low, high] = [dressIndex(kind.dress[0]), dressIndex(kind.dress[1])];
  if (written.fabric === undefined) return { low, high };
  const leastHigh = EVENING_SHOES.has(written.kind) ? dressIndex('cocktail') : low;
  return { low, high: Math.max(low, Math.min(high, Math.max(leastHigh, FABRICS[fabric].dressHigh))) };
};

/** What the kind has, and what is written besides it; `not rain` takes rain away. */
const besides = <Word extends string>(
  usual: readonly Word[],
  written: readonly AddedOrNot<Word>[] = [],
): readonly Word[] => {
  const taken = written.filter((word) => word.startsWith(NOT)).map((word) => word.slice(NOT.length));
  const added = written.filter((word): word is Word => !word.startsWith(NOT));
  return [...new Set([...usual, ...added])].filter((word) => !taken.includes(word));
};

const measure = (value: number | undefined, estimated: () => Measure): Measure =>
  value === undefined ? estimated() : given(value);

/** What a piece without a colour is taken for: a neutral that goes with most. Own choice. */
const UNWRITTEN: readonly WrittenColour[] = [parseColour('mid grey')].filter((colour) => colour !== undefined);

const POINTED_AT: readonly PieceField[] = ['name', 'colours', 'length cm', 'heel cm', 'photo'];

const linesOf = (written: WrittenPiece, matter: FrontMatter): NonNullable<Piece['lines']> =>
  Object.fromEntries(
    POINTED_AT.flatMap((field) => (written[field] === undefined ? [] : [[field, matter.lineOf([field])]])),
  );

const resolve = (id: string, wardrobe: string, written: WrittenPiece, matter: FrontMatter, fabric: FabricId): Piece => {
  const kind = KINDS[written.kind];
  const dryHours = written.care?.['dry hours'];
  const long = { length: written.length, lengthCm: written['length cm'] };
  const machine = kind.group === 'shoes' || kind.group === 'bags' || kind.group === 'jewellery' ? 'wipe' : 30;
  return {
    id,
    wardrobe,
    file: matter.file,
    lines: linesOf(written, matter),
    name: written.name,
    kind: written.kind,
    places: written.places ?? kind.places,
    ...(kind.site === undefined ? {} : { site: kind.site }),
    colours: shareOut(written.colours.length > 0 ? written.colours : UNWRITTEN).map((colour) =>
      onSurface(colour, FABRICS[fabric].surface),
    ),
    pattern: written.pattern ?? { type: 'plain', scale: 'medium' },
    cut: written.cut ?? kind.cut,
    length: written.length ?? kind.length,
    ...(written['length cm'] === undefined ? {} : { lengthCm: written['length cm'] }),
    heelCm: written['heel cm'] ?? kind.heelCm,
    fabric,
    fabricText: written.fabric ?? fabric,
    grams: measure(written.grams, () => estimateGrams(kind, fabric, written.size, long)),
    litres: measure(written.litres, () => estimateLitres(kind, fabric, written.size, long)),
    clo: measure(written.clo, () => estimateClo(kind, fabric, long)),
    dress: dressOf(written, kind, fabric),
    covers: besides(kind.covers, written.covers),
    suits: besides(kind.suits, written.suits),
    care: {
      wash: written.care?.wash ?? machine,
      dryHours: measure(dryHours, () => estimateDryHours(kind, fabric)),
    },
    wears: measure(written.wears, () => estimateWears(kind)),
    status: written.status ?? 'owned',
    ...(written.price === undefined ? {} : { price: written.price }),
    ...(written.size === undefined ? {} : { size: written.size }),
    ...(written.photo === undefined ? {} : { photo: written.photo }),
    statement: written.statement ?? false,
    note: matter.body,
    ...(written['note to self'] === undefined ? {} : { noteToSelf: written['note to self'] }),
    estimated: [
      ...(written.colours.length === 0 ? ['colours'] : []),
      ...GUESSED.filter((name) => written[name] === undefined),
      ...(written.care?.wash === undefined ? ['care wash'] : []),
      ...(dryHours === undefined ? ['dry hours'] : []),
      ...(written['heel cm'] === undefined && kind.group === 'shoes' ? ['heel cm'] : []),
    ],
  };
};

/** Reads a piece's file: three fields are needed, the others come from the kind and are listed in `estimated`. */
export const readPiece = (id: string, wardrobe: string, matter: FrontMatter): Read<Piece> => {
  const parsed = v.safeParse(pieceSchema, matter.data);
  if (!parsed.success) return { problems: toProblems(matter, parsed.issues, fieldsOf(pieceSchema)) };
  const written = parsed.output;
  // the schema has checked that the description names a cloth
  const fabric = fabricOf(KINDS[written.kind], written.fabric);
  return { value: resolve(id, wardrobe, written, matter, fabric), problems: [] };
};
