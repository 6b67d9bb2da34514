import { readFileSync } from 'node:fs';

/** Rows of a reference table as records by column name. */
export const table = (name: string): readonly Readonly<Record<string, string>>[] => {
  const text = readFileSync(new URL(`../reference/${name}.csv`, import.meta.url), 'utf8').trim();
  const [header = [], ...rows] = text
    .split(/\r?\n/)
    .map((line) =>
      [...line.matchAll(/("(?:[^"]|"")*"|[^,]*)(?:,|$)/g)].map((match) =>
        (match[1] ?? '').replace(/^"|"$/g, '').replaceAll('""', '"'),
      ),
    );
  return rows.map((row) => Object.fromEntries(header.map((column, index) => [column, row[index] ?? ''])));
};

export const number = (row: Readonly<Record<string, string>>, column: string): number => {
  const text = row[column];
  if (text === undefined) throw new Error(`no column ${column}`);
  return text === '' ? Number.NaN : Number(text);
};
