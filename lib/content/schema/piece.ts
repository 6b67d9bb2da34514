import * as v from 'valibot';
import {
  COVERAGE,
  CUTS,
  type Cut,
  LENGTHS,
  NEEDS,
  PATTERN_SCALES,
  PATTERN_TYPES,
  type PatternScale,
  type PatternType,
  PLACES,
} from '../../vocabulary/index.ts';
import { writeInstead } from '../nearest.ts';
import { cloth, colours, dressInterval, kind, nameText, noteText, numberBetween, price, read } from './parts.ts';

const CUT_NAMES = Object.keys(CUTS) as Cut[];

const PATTERN_FIELDS = ['type', 'scale'];

/** `stripe` or `{type: stripe, scale: small}`. */
const pattern = read<{ type: PatternType; scale: PatternScale }>((input) => {
  const group = typeof input === 'string' ? { type: input } : (input as Record<string, unknown>);
  if (typeof group !== 'object' || Array.isArray(group)) {
    return {
      wrong: `${JSON.stringify(input)} is not a pattern`,
      mend: 'write stripe, or {type: stripe, scale: small}',
    };
  }
  const stranger = Object.keys(group).find((key) => !PATTERN_FIELDS.includes(key));
  if (stranger !== undefined)
    return { wrong: `a pattern has no field "${stranger}"`, mend: writeInstead(stranger, PATTERN_FIELDS) };
  const type = String(group.type);
  const scale = String((group as { scale?: unknown }).scale ?? 'medium');
  if (!(PATTERN_TYPES as readonly string[]).includes(type)) {
    return { wrong: `there is no pattern "${type}"`, mend: writeInstead(type, PATTERN_TYPES) };
  }
  if (!(PATTERN_SCALES as readonly string[]).includes(scale)) {
    return { wrong: `there is no scale "${scale}"`, mend: writeInstead(scale, PATTERN_SCALES) };
  }
  return { value: { type: type as PatternType, scale: scale as PatternScale } };
});

const wash = read<number | 'hand' | 'dry clean' | 'wipe'>((input) => {
  if (input === 'hand' || input === 'dry clean' || input === 'wipe') return { value: input };
  if (typeof input === 'number' && input >= 20 && input <= 95) return { value: input };
  return {
    wrong: `${JSON.stringify(input)} is not a way to wash`,
    mend: 'write degrees from 20 to 95, or hand, dry clean or wipe',
  };
});

/** A word adds to what the kind is good for; `not` before it takes it away. */
export type AddedOrNot<Word extends string> = Word | `not ${Word}`;
const addedOrNot = <const Word extends string>(words: readonly Word[]): AddedOrNot<Word>[] => [
  ...words,
  ...words.map((word) => `not ${word}` as const),
];

/** Centimetres; what no piece can have is held to what one can have, with a warning. */
const measured = v.pipe(v.number(), v.finite());

/** The front matter of a piece. Three fields are needed; the rest come from the kind. */
export const pieceSchema = v.strictObject({
  name: nameText,
  kind: kind,
  colours,
  pattern: v.optional(pattern),
  places: v.optional(v.pipe(v.array(v.picklist(PLACES)), v.minLength(1))),
  cut: v.optional(v.picklist(CUT_NAMES)),
  length: v.optional(v.picklist(LENGTHS)),
  'length cm': v.optional(measured),
  'heel cm': v.optional(measured),
  fabric: v.optional(cloth),
  size: v.optional(read<string>((input) => ({ value: String(input) }))),
  grams: v.optional(numberBetween(1, 20_000)),
  litres: v.optional(numberBetween(0.005, 60)),
  clo: v.optional(numberBetween(0, 4)),
  dress: v.optional(dressInterval),
  covers: v.optional(v.array(v.picklist(addedOrNot(COVERAGE)))),
  suits: v.optional(v.array(v.picklist(addedOrNot(NEEDS)))),
  care: v.optional(v.strictObject({ wash: v.optional(wash), 'dry hours': v.optional(numberBetween(0, 240)) })),
  wears: v.optional(v.pipe(numberBetween(1, 1000), v.integer())),
  statement: v.optional(v.boolean()),
  status: v.optional(v.picklist(['owned', 'borrowed', 'to buy'])),
  price: v.optional(price),
  photo: v.optional(nameText),
  'note to self': v.optional(noteText),
});
export type WrittenPiece = v.InferOutput<typeof pieceSchema>;
