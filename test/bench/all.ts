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

const wanted = process.argv.slice(2).map((name) => name.toLowerCase());
for (const [name, run] of SUITES) {
  if (wanted.length > 0 && !wanted.includes(name.toLowerCase())) continue;
  const measured = Object.entries(await run());
  const width = Math.max(...measured.map(([what]) => what.length));
  process.stdout.write(`${name}\n`);
  for (const [what, value] of measured) {
    process.stdout.write(`  ${what.padEnd(width)}  ${Number(value.toPrecision(3)).toLocaleString('en-GB')}\n`);
  }
}
