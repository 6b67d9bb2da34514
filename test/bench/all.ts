import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { benchCards } from './cards.ts';
import { benchChoose } from './choose.ts';
import { benchLooks } from './looks.ts';
import { benchPlan } from './plan.ts';

/** Every suite: what is measured, in the words of the table. Ratios of one run hold better than times. */
const SUITES: readonly (readonly [name: string, run: () => Promise<Readonly<Record<string, number>>>])[] = [
  ['Looks', benchLooks],
  ['Plan', benchPlan],
  ['Choose', benchChoose],
  ['Cards', benchCards],
];

const report = (name: string, measured: readonly (readonly [what: string, value: number])[]): void => {
  const width = Math.max(...measured.map(([what]) => what.length));
  process.stdout.write(`${name}\n`);
  for (const [what, value] of measured) {
    process.stdout.write(`  ${what.padEnd(width)}  ${Number(value.toPrecision(3)).toLocaleString('en-GB')}\n`);
  }
};

const wanted = process.argv.slice(2).map((name) => name.toLowerCase());
const chosen = SUITES.filter(([name]) => wanted.length === 0 || wanted.includes(name.toLowerCase()));
if (chosen.length === 1) {
  for (const [name, run] of chosen) report(name, Object.entries(await run()));
} else {
  // each in a process of its own: what one leaves in memory would slow the next
  for (const [name] of chosen) {
    const { status } = spawnSync(process.execPath, [...process.execArgv, fileURLToPath(import.meta.url), name], {
      stdio: 'inherit',
    });
    if (status !== 0) process.exitCode = 1;
  }
}
