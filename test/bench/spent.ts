import { readdirSync, readFileSync } from 'node:fs';

/** What a task took, milliseconds: on the clock, and of all processors together. */
export interface Spent {
  readonly clock: number;
  readonly processor: number;
}

/** Ticks of a second in which Linux counts processor time (USER_HZ of proc(5), the same on every common machine). */
const TICKS = 100;

/** Processor time of all processes that this one has started and that still run, milliseconds; 0 where there is no /proc. */
const childrenProcessor = (): number => {
  const processes = new Map<number, { readonly parent: number; readonly ticks: number }>();
  let entries: string[] = [];
  try {
    entries = readdirSync('/proc');
  } catch {
    return 0;
  }
  for (const entry of entries) {
    if (!/^\d+$/.test(entry)) continue;
    try {
      const text = readFileSync(`/proc/${entry}/stat`, 'utf8');
      // proc(5): after the name in brackets come state, parent, … user time and system time as the 12th and 13th
      const fields = text.slice(text.lastIndexOf(')') + 2).split(' ');
      processes.set(Number(entry), { parent: Number(fields[1]), ticks: Number(fields[11]) + Number(fields[12]) });
    } catch {
      // it has just ended
    }
  }
  const startedHere = (id: number): boolean => {
    const parent = processes.get(id)?.parent;
    return parent !== undefined && (parent === process.pid || startedHere(parent));
  };
  let ticks = 0;
  for (const [id, each] of processes) if (startedHere(id)) ticks += each.ticks;
  return (ticks * 1000) / TICKS;
};

const processorNow = (): number => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000 + childrenProcessor();
};

export const spentOn = async (task: () => Promise<unknown>): Promise<Spent> => {
  const before = processorNow();
  const start = performance.now();
  await task();
  const clock = performance.now() - start;
  return { clock, processor: processorNow() - before };
};

const middle = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;

/** The median of each. */
export const medianSpent = (all: readonly Spent[]): Spent => ({
  clock: middle(all.map(({ clock }) => clock)),
  processor: middle(all.map(({ processor }) => processor)),
});
