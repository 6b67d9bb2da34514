export { table } from '../reference/table.ts';

export const number = (row: Readonly<Record<string, string>>, column: string): number => {
  const text = row[column];
  if (text === undefined) throw new Error(`no column ${column}`);
  return text === '' ? Number.NaN : Number(text);
};
