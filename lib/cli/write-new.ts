import { mkdir, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { contentFolder } from './content.ts';
import { type Given, type Surroundings, UsageError } from './verb.ts';

/**
 * Writes a new content file below a folder of the content when `--write` names one, and says where it is. The name is one
 * word of small letters, digits and hyphens, so that it stays in the folder; nothing is overwritten. Throws `UsageError`
 * for another name and for a file that is there.
 */
export const writeIfAsked = async (
  below: string,
  text: string,
  { write, content }: Given,
  world: Surroundings,
): Promise<void> => {
  if (write === undefined) return;
  const name = String(write);
  if (!/^[a-z0-9][a-z0-9-]*$/.test(name))
    throw new UsageError(`--write wants a name of small letters, digits and hyphens, not "${name}"`);
  const folder = path.join(contentFolder(content, world), below);
  const file = path.join(folder, `${name}.md`);
  await mkdir(folder, { recursive: true });
  try {
    await writeFile(file, text, { flag: 'wx' });
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error;
    throw new UsageError(`${name}.md is there already; nothing was written. Choose another name`);
  }
  world.err(`written: ${path.relative(world.folder, file)}`);
};
