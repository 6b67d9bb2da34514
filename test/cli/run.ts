import path from 'node:path';
import { runCli } from '../../lib/cli/run.ts';

export const PROJECT = path.join(import.meta.dirname, '..', '..');

/** Runs a command line as a person would, and keeps what it said. */
export const run = async (
  args: readonly string[],
  folder = PROJECT,
): Promise<{ readonly code: number; readonly out: string; readonly err: string }> => {
  const out: string[] = [];
  const err: string[] = [];
  const code = await runCli(args, {
    out: (line) => out.push(line),
    err: (line) => err.push(line),
    watched: false,
    folder,
  });
  return { code, out: out.join('\n'), err: err.join('\n') };
};
