import * as v from 'valibot';
import { colour, kind, nameText, noteText, numberBetween, pieceIds, read } from './parts.ts';

const SEVERITIES = ['rules out', 'lowers the score', 'off'] as const;

/** `off`, `rules out`, a number (the threshold), or `{severity, threshold}`. */
const ruleSetting = read<{ severity?: (typeof SEVERITIES)[number]; threshold?: number }>((input) => {
  if (input === false) return { value: { severity: 'off' } };
  if (typeof input === 'number') return { value: { threshold: input } };
  if (typeof input === 'string' && (SEVERITIES as readonly string[]).includes(input)) {
    return { value: { severity: input as (typeof SEVERITIES)[number] } };
  }
  const group = input as { severity?: unknown; threshold?: unknown };
  const right =
    typeof input === 'object' &&
    Object.keys(group).every((key) => key === 'severity' || key === 'threshold') &&
    (group.severity === undefined || (SEVERITIES as readonly unknown[]).includes(group.severity)) &&
    (group.threshold === undefined || typeof group.threshold === 'number');
  return right
    ? { value: group as { severity?: (typeof SEVERITIES)[number]; threshold?: number } }
    : {
        wrong: `${JSON.stringify(input)} is not a setting of a rule`,
        mend: 'write off, "rules out", "lowers the score", a number, or {severity: …, threshold: …}',
      };
});

export const rulesSchema = v.record(v.string(), ruleSetting);

const fixedLook = { title: v.optional(nameText), pieces: v.pipe(pieceIds, v.minLength(1)), note: v.optional(noteText) };

/** The front matter of a capsule. */
export const capsuleSchema = v.strictObject({
  title: nameText,
  traveller: v.optional(nameText),
  wardrobe: v.optional(nameText),
  list: v.optional(nameText),
  mood: v.optional(
    v.strictObject({ palette: v.optional(v.array(colour), []), words: v.optional(v.array(nameText), []) }),
    {},
  ),
  pieces: v.optional(pieceIds, []),
  choose: v.optional(v.strictObject({ keep: v.optional(pieceIds, []), 'leave out': v.optional(pieceIds, []) })),
  never: v.optional(v.array(v.pipe(pieceIds, v.minLength(2))), []),
  always: v.optional(v.array(v.pipe(pieceIds, v.minLength(2))), []),
  favourites: v.optional(v.array(v.strictObject(fixedLook)), []),
  fixed: v.optional(v.array(v.strictObject({ ...fixedLook, occasion: nameText })), []),
  rules: v.optional(rulesSchema, {}),
});
export type WrittenCapsule = v.InferOutput<typeof capsuleSchema>;

/** The front matter of `house-rules.md`. */
export const houseRulesSchema = v.strictObject({
  rules: v.optional(rulesSchema, {}),
  neutral: v.optional(v.array(colour), []),
  'not neutral': v.optional(v.array(colour), []),
});

/** The front matter of a list. */
export const listSchema = v.strictObject({
  title: nameText,
  lines: v.pipe(
    v.array(
      v.strictObject({
        what: nameText,
        count: v.pipe(numberBetween(1, 99), v.integer()),
        kinds: v.pipe(v.array(kind), v.minLength(1)),
      }),
    ),
    v.minLength(1),
  ),
});
export type WrittenList = v.InferOutput<typeof listSchema>;

const language = read<string>((input) => {
  try {
    const [canonical] = Intl.getCanonicalLocales(String(input));
    if (canonical !== undefined) return { value: canonical };
  } catch {
    // falls through to the problem below
  }
  return { wrong: `"${String(input)}" is not a language`, mend: 'write en-GB, en-US or de' };
});

/** The front matter of `studio.md`. */
export const studioSchema = v.strictObject({
  name: nameText,
  line: v.optional(noteText, ''),
  language: v.optional(language, 'en-GB'),
  units: v.optional(
    v.strictObject({
      temperature: v.optional(v.picklist(['C', 'F']), 'C'),
      length: v.optional(v.picklist(['cm', 'in']), 'cm'),
      weight: v.optional(v.picklist(['kg', 'lb']), 'kg'),
    }),
    {},
  ),
  paper: v.optional(v.picklist(['A4', 'Letter']), 'A4'),
  'page colours': v.optional(v.strictObject({ paper: v.optional(colour), ink: v.optional(colour) }), {}),
  'looks shown': v.optional(v.pipe(numberBetween(1, 300), v.integer()), 24),
  address: v.optional(v.pipe(v.string(), v.url('is not an address\nwrite it in full, https://…'))),
});
export type WrittenStudio = v.InferOutput<typeof studioSchema>;
