import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';

/** Rows of a reference table, by column name. Every table keeps its source column. */
export const table = (name: string): readonly Readonly<Record<string, string>>[] =>
  parse(readFileSync(new URL(`./${name}.csv`, import.meta.url), 'utf8'), { columns: true, trim: true });
