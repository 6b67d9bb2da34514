import { mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { Plan, PlanEntry } from '../../lib/model/index.ts';
import { run } from '../cli/run.ts';

/** What a stylist would write: a wardrobe as `id: kind, colour, more fields`, the lines of a brief and of a capsule. */
export interface Written {
  readonly wardrobe: Readonly<Record<string, readonly [kind: string, colour: string, ...fields: string[]]>>;
  readonly brief: readonly string[];
  readonly capsule: readonly string[];
}

const matter = (lines: readonly string[]): string => `---\n${lines.join('\n')}\n---\n`;

const write = async (folder: string, file: string, text: string): Promise<void> => {
  await mkdir(path.dirname(path.join(folder, file)), { recursive: true });
  await writeFile(path.join(folder, file), text);
};

/** Writes a content folder with one trip, `trip`, and one capsule, `plain`; hands it to a test and takes it away again. */
export const withContent = async <T>(written: Written, use: (folder: string) => Promise<T>): Promise<T> => {
  const folder = await mkdtemp(path.join(tmpdir(), 'wayfold-plan-'));
  try {
    for (const [id, [kind, colour, ...fields]] of Object.entries(written.wardrobe)) {
      await write(
        folder,
        `wardrobes/ada/${id}.md`,
        matter([`name: ${id}`, `kind: ${kind}`, `colours: [${colour}]`, ...fields]),
      );
    }
    await write(folder, 'lists/small.md', matter(['title: Small', 'lines: [{what: tops, count: 1, kinds: [shirt]}]']));
    await write(folder, 'trips/trip/brief.md', matter(written.brief));
    await write(folder, 'trips/trip/plain.md', matter(written.capsule));
    return await use(folder);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
};

export const planOf = async (folder: string): Promise<Plan> => {
  const { out, err } = await run(['plan', 'trip/plain', '--json', '--content', folder]);
  if (err !== '') throw new Error(err);
  return JSON.parse(out) as Plan;
};

const entered = (text: string, { line, action, field, value }: PlanEntry): string => {
  const lines = text.split('\n');
  if (line === undefined) {
    lines.splice(lines.lastIndexOf('---'), 0, `${field}: [${value}]`);
    return lines.join('\n');
  }
  const old = lines[line - 1] ?? '';
  if (action === 'add') lines[line - 1] = old.replace(/\]\s*$/, `, ${value}]`);
  // the last of the list goes with its heading
  else if (action === 'take out' && field === 'fixed') lines.splice(line - 2, 2);
  else if (action === 'take out') lines[line - 1] = old.replace(new RegExp(`(, )?${value}`), '').replace('[, ', '[');
  else if (old.includes(`${field}: `))
    lines[line - 1] = old.replace(new RegExp(`${field}: [^,}]+`), `${field}: ${value}`);
  else lines[line - 1] = old.replace(/\}\s*$/, `, ${field}: ${value}}`);
  return lines.join('\n');
};

/** Writes a mend's entries into the files, as it says. */
export const enter = async (folder: string, entries: readonly PlanEntry[]): Promise<void> => {
  for (const entry of entries) {
    const file = path.join(folder, entry.file);
    await writeFile(file, entered(await readFile(file, 'utf8'), entry));
  }
};
