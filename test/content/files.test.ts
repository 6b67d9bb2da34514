import { mkdir, mkdtemp, readdir, readFile, rm, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { readContent } from '../../lib/content/index.ts';

let folder: string;
beforeEach(async () => {
  folder = await mkdtemp(path.join(tmpdir(), 'wayfold-content-'));
});
afterEach(() => rm(folder, { recursive: true, force: true }));

const write = async (file: string, bytes: string | Uint8Array): Promise<void> => {
  await mkdir(path.dirname(path.join(folder, file)), { recursive: true });
  await writeFile(path.join(folder, file), bytes);
};
const problemOf = async (file: string): Promise<string | undefined> =>
  (await readContent(folder)).problems.find((problem) => problem.file === file)?.wrong;

describe('what a content folder may not hold', () => {
  it('says that a folder does not exist, or is empty', async () => {
    expect((await readContent(path.join(folder, 'nowhere'))).problems[0]?.wrong).toBe('there is no such folder');
    expect((await readContent(folder)).problems[0]?.wrong).toBe('the content folder is empty');
  });

  it('refuses a 5 MB note, a binary file and another encoding than UTF-8', async () => {
    await write('wardrobes/ada/long.md', `---\nname: x\n---\n${'word '.repeat(1024 * 1024)}`);
    await write('wardrobes/ada/binary.md', Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 0, 0, 0]));
    await write('wardrobes/ada/latin.md', Buffer.from('---\nname: blouse à pois\n---\n', 'latin1'));
    expect(await problemOf('wardrobes/ada/long.md')).toMatch(/too large/);
    expect(await problemOf('wardrobes/ada/binary.md')).toMatch(/not plain text/);
    expect(await problemOf('wardrobes/ada/latin.md')).toMatch(/UTF-8/);
  });

  it('does not follow a link out of the folder', async () => {
    const outside = await mkdtemp(path.join(tmpdir(), 'wayfold-outside-'));
    await writeFile(path.join(outside, 'secret.md'), '---\nname: secret\n---\n');
    await mkdir(path.join(folder, 'wardrobes/ada'), { recursive: true });
    await symlink(path.join(outside, 'secret.md'), path.join(folder, 'wardrobes/ada/secret.md'));
    await symlink(outside, path.join(folder, 'wardrobes/bea'));
    expect(await problemOf('wardrobes/ada/secret.md')).toMatch(/leads out of the content folder/);
    expect(await problemOf('wardrobes/bea/')).toMatch(/link/);
    await rm(outside, { recursive: true });
  });

  it('reads ten thousand files and reports each wrong one', async () => {
    const all = 10_000;
    await mkdir(path.join(folder, 'wardrobes/ada'), { recursive: true });
    const text = '---\nname: White shirt\nkind: shirt\ncolours: [white]\n---\n';
    for (let start = 0; start < all; start += 500) {
      await Promise.all(
        Array.from({ length: 500 }, (_, index) =>
          writeFile(
            path.join(folder, `wardrobes/ada/shirt-${start + index}.md`),
            (start + index) % 100 === 0 ? '' : text,
          ),
        ),
      );
    }
    const { problems } = await readContent(folder);
    expect(problems.filter(({ wrong }) => wrong.includes('no front matter'))).toHaveLength(all / 100);
  });

  it('changes nothing in it', async () => {
    await write('wardrobes/ada/shirt.md', '---\nname: x\nkind: shirt\ncolours: [white]\n---\r\n');
    const before = await readFile(path.join(folder, 'wardrobes/ada/shirt.md'));
    await readContent(folder);
    expect(await readFile(path.join(folder, 'wardrobes/ada/shirt.md'))).toEqual(before);
    expect(await readdir(folder)).toEqual(['wardrobes']);
  });
});
