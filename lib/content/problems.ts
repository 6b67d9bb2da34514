import type * as v from 'valibot';
import type { Problem } from '../model/index.ts';
import type { FrontMatter } from './front-matter.ts';
import { nearestWords, writeInstead } from './nearest.ts';

/** Message of a check that knows both what is wrong and what would be right. */
export const wrongAndMend = (wrong: string, mend: string): string => `${wrong}\n${mend}`;

type Issue = v.BaseIssue<unknown>;

const shown = (value: unknown): string => {
  const text = typeof value === 'string' ? `"${value}"` : JSON.stringify(value);
  return text !== undefined && text.length > 60 ? `${text.slice(0, 57)}…` : (text ?? 'nothing');
};

const pathOf = (issue: Issue): (string | number)[] =>
  (issue.path ?? []).map((item) => (typeof item.key === 'number' ? item.key : String(item.key)));

const field = (path: readonly (string | number)[]): string => {
  const named = path.filter((step) => typeof step === 'string');
  return named.length === 0 ? 'the front matter' : `"${named.join(' → ')}"`;
};

const KIND_OF_VALUE: Readonly<Record<string, string>> = {
  string: 'text',
  number: 'a number',
  boolean: 'true or false',
  array: 'a list, [like, this]',
  strict_object: 'a group of fields',
  record: 'a group of fields',
};

/** Fields by the dotted path of their group, for the nearest field to a misspelt one. */
export type FieldNames = (path: readonly (string | number)[]) => readonly string[];

const describe = (issue: Issue, fields: FieldNames): { wrong: string; mend: string } => {
  const path = pathOf(issue);
  const name = field(path);
  const last = String(path.at(-1) ?? '');
  if (isStranger(issue)) {
    const text = textWithCommas(issue, fields);
    const inGroup = path.length > 1 ? ` in ${field(path.slice(0, -1))}` : '';
    if (text !== undefined)
      return {
        wrong: `there is no field ${shown(last)}${inGroup}; a comma ends a text`,
        mend: `put the text in quotes: ${text.field}: "${text.whole}"`,
      };
    return {
      wrong: `there is no field ${shown(last)}${inGroup}`,
      mend: writeInstead(last, fields(path.slice(0, -1))),
    };
  }
  if (issue.input === null && issue.type !== 'null' && last !== '') {
    return { wrong: `${name} is empty`, mend: 'write something behind it, or take it out' };
  }
  if (issue.received === 'undefined' || issue.input === null) {
    return { wrong: `${name} is missing`, mend: `add ${last}: …` };
  }
  const [wrong = '', mend] = issue.message.split('\n');
  if (mend !== undefined) return { wrong: `${name}: ${wrong}`, mend };
  if (issue.type === 'picklist') {
    const requirement = (issue as v.PicklistIssue & { requirement?: unknown }).expected ?? '';
    const words = [...requirement.matchAll(/"([^"]*)"/g)].map((match) => match[1] ?? '');
    return { wrong: `${name} cannot be ${shown(issue.input)}`, mend: writeInstead(String(issue.input), words) };
  }
  if (issue.type in KIND_OF_VALUE) {
    return { wrong: `${name} cannot be ${shown(issue.input)}`, mend: `write ${KIND_OF_VALUE[issue.type]}` };
  }
  if (issue.type === 'min_value' || issue.type === 'gt_value') {
    return {
      wrong: `${name} is ${shown(issue.input)}, which is too small`,
      mend: `write at least ${String(issue.requirement)}`,
    };
  }
  if (issue.type === 'max_value') {
    return {
      wrong: `${name} is ${shown(issue.input)}, which is too large`,
      mend: `write at most ${String(issue.requirement)}`,
    };
  }
  if (issue.type === 'max_length') {
    return { wrong: `${name} is too long`, mend: `keep it to ${String(issue.requirement)}` };
  }
  if (issue.type === 'min_length' || issue.type === 'non_empty') {
    return { wrong: `${name} is empty`, mend: 'write something there' };
  }
  return { wrong: `${name} cannot be ${shown(issue.input)}`, mend: wrong };
};

const isStranger = (issue: Issue): boolean => issue.type === 'strict_object' && issue.expected === 'never';

/** What is written in the group a stranger stands in. */
const besideOf = (issue: Issue): readonly (readonly [string, unknown])[] => {
  const group = issue.path?.at(-1)?.input;
  return typeof group === 'object' && group !== null ? Object.entries(group) : [];
};

/** `{what: head, neck and hands}`: YAML reads what follows the comma as a field with nothing behind it. */
const textWithCommas = (issue: Issue, fields: FieldNames): { field: string; whole: string } | undefined => {
  const path = pathOf(issue);
  const known = fields(path.slice(0, -1));
  const key = String(path.at(-1));
  const beside = besideOf(issue);
  const at = beside.findIndex(([name]) => name === key);
  if (beside[at]?.[1] !== null || nearestWords(key, known, 1).length > 0) return undefined;
  const isRest = ([name, value]: readonly [string, unknown]): boolean => value === null && !known.includes(name);
  const start = beside.findLastIndex((entry, index) => index < at && !isRest(entry));
  const [name, value] = beside[start] ?? [];
  if (name === undefined || typeof value !== 'string') return undefined;
  const end = beside.findIndex((entry, index) => index > at && !isRest(entry));
  const rest = beside.slice(start + 1, end === -1 ? undefined : end).map(([word]) => word);
  return { field: name, whole: [value, ...rest].join(', ') };
};

/** The schema names only the first field that it does not know in a group; one text with commas is one problem. */
const everyStranger = (issue: Issue, fields: FieldNames): readonly Issue[] => {
  const last = issue.path?.at(-1);
  if (!isStranger(issue) || issue.path === undefined || last === undefined) return [issue];
  const [first, ...further] = issue.path;
  const known = fields(pathOf(issue).slice(0, -1));
  const issues = besideOf(issue)
    .filter(([key]) => !known.includes(key))
    .map(([key, value]): Issue => {
      const named = { ...last, key, value } as typeof last;
      return { ...issue, path: further.length === 0 ? [named] : [first, ...further.slice(0, -1), named] };
    });
  const texts = issues.map((each) => textWithCommas(each, fields)?.whole);
  return issues.filter((_, index) => texts[index] === undefined || texts.indexOf(texts[index]) === index);
};

const isMissing = (issue: Issue): boolean => issue.received === 'undefined' && !isStranger(issue);

/** True for a field that is missing only because its name is misspelt beside it: one slip is one problem. */
const isMisspeltBeside = (missing: Issue, issues: readonly Issue[], fields: FieldNames): boolean => {
  const path = pathOf(missing);
  const group = path.slice(0, -1);
  return issues.some((issue) => {
    const typed = pathOf(issue);
    return (
      isStranger(issue) &&
      typed.slice(0, -1).join() === group.join() &&
      nearestWords(String(typed.at(-1)), fields(group), 1)[0] === path.at(-1)
    );
  });
};

/** Turns the issues of a schema into problems with file, line, what is wrong and what would be right. */
export const toProblems = (
  matter: Pick<FrontMatter, 'file' | 'lineOf'>,
  issues: readonly Issue[],
  fields: FieldNames,
): readonly Problem[] => {
  const all = issues.flatMap((issue) => everyStranger(issue, fields));
  return all
    .filter((issue) => !(isMissing(issue) && isMisspeltBeside(issue, all, fields)))
    .map((issue) => ({ file: matter.file, line: matter.lineOf(pathOf(issue)), ...describe(issue, fields) }));
};
