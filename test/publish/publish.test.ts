import { createHash } from 'node:crypto';
import { cp, mkdir, mkdtemp, readdir, readFile, rename, rm, stat, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { publish } from '../../lib/publish/index.ts';
import { run } from '../cli/run.ts';

const SMALL = path.join(import.meta.dirname, '..', 'content', 'cases', 'valid', 'content');

let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(path.join(tmpdir(), 'wayfold-publish-'));
  await cp(SMALL, path.join(folder, 'content'), { recursive: true });
});
afterAll(() => rm(folder, { recursive: true, force: true }));

const build = (out: string, cache: string, content = 'content') =>
  publish({
    contentFolder: path.join(folder, content),
    out: path.join(folder, out),
    cacheFolder: path.join(folder, cache),
    edition: 'client',
  });

/** Every file with the hash of its bytes. */
const fingerprint = async (out: string): Promise<Record<string, string>> => {
  const root = path.join(folder, out);
  const files = (await readdir(root, { recursive: true })).sort();
  const hashes: Record<string, string> = {};
  for (const file of files) {
    const full = path.join(root, file);
    if ((await stat(full)).isFile())
      hashes[file] = createHash('sha256')
        .update(await readFile(full))
        .digest('hex');
  }
  return hashes;
};

describe('a build', () => {
  it('draws the card of a piece without the letters no font has, prints every sheet, and says so once', async () => {
    await cp(SMALL, path.join(folder, 'signs'), { recursive: true });
    const file = path.join(folder, 'signs', 'wardrobes', 'ada', 'shirt.md');
    await writeFile(file, (await readFile(file, 'utf8')).replace(/^name: .*$/m, 'name: 毛衣 Grey jumper 🧥'));
    const result = await build('signs-site', 'signs-cache', 'signs');
    if (!result.ok) throw new Error('refused');
    const card = await readFile(path.join(folder, 'signs-site', 'graz', 'plain', 'cards', 'look-01.svg'), 'utf8');
    expect(card).toContain('Grey jumper');
    expect(card).not.toMatch(/U\+|毛|🧥/u);
    expect(result.made.sheets).toBe(9);
    const told = result.told.flatMap(({ findings }) => findings).filter(({ rule }) => /letters|print/.test(rule));
    expect(told).toMatchObject([
      {
        level: 'warning',
        rule: 'letters',
        file: 'wardrobes/ada/shirt.md',
        line: 2,
        message: { values: { shown: 'Grey jumper', characters: ['毛', '衣', '🧥'] } },
      },
    ]);
  });

  it('writes pages, cards and sheets, and says how many', async () => {
    const result = await build('one', 'cache-one');
    expect(result.ok).toBe(true);
    if (!result.ok) return;
    expect(result.made.guides).toBe(1);
    const files = Object.keys(await fingerprint('one'));
    for (const page of ['', 'pieces', 'looks', 'days', 'packing']) {
      expect(files).toContain(path.join('graz', 'plain', page, 'index.html'));
    }
    expect(files).toContain(path.join('graz', 'plain', 'cards', 'look-01.png'));
    expect(files).toContain(path.join('graz', 'plain', 'print', 'packing-list-a4.pdf'));
    expect(files).toContain(path.join('graz', 'plain', 'print', 'packing-list-letter.pdf'));
  });

  it('builds a guide with an occasion nobody can dress for, and says so', async () => {
    const undressed = path.join(folder, 'undressed');
    await cp(SMALL, path.join(undressed, 'content'), { recursive: true });
    const brief = path.join(undressed, 'content', 'trips', 'graz', 'brief.md');
    await writeFile(brief, (await readFile(brief, 'utf8')).replace('dress: smart casual', 'dress: formal'));
    const { code, out, err } = await run(['build'], undressed);
    expect(code).toBe(0);
    expect(out).toContain('graz/plain:\nerror [');
    // what it is at, for a log that nobody watches
    expect(err).toMatch(/^[^\n]+, [^\n]+: \d+ pieces?, planning…\n[^\n]+: \d+ layered looks?, drawing 1 card…$/);
    expect(out).toContain('Dinner');
    expect(out).toMatch(/^1 guide, \d+ pages, 1 card, \d+ sheets in /m);
    expect(out).not.toContain('11ty');
  });

  it('gives the same bytes for the same content, with and without the cache', async () => {
    await build('two', 'cache-two');
    const fresh = await fingerprint('one');
    expect(await fingerprint('two')).toEqual(fresh);
    await build('two', 'cache-two');
    expect(await fingerprint('two')).toEqual(fresh);
  });

  it('leaves the last good output when the content has problems', async () => {
    const before = await fingerprint('one');
    await cp(path.join(folder, 'content'), path.join(folder, 'wrong'), { recursive: true });
    await writeFile(path.join(folder, 'wrong', 'wardrobes', 'ada', 'shirt.md'), '---\nname: x\n---\n');
    const result = await build('one', 'cache-one', 'wrong');
    expect(result.ok).toBe(false);
    expect(await fingerprint('one')).toEqual(before);
  });

  it('puts the last good output back after a build that was killed between the two renames', async () => {
    const before = await fingerprint('two');
    await rename(path.join(folder, 'two'), path.join(folder, 'two.last'));
    await mkdir(path.join(folder, 'two.next'));
    await build('two', 'cache-two');
    expect(await fingerprint('two')).toEqual(before);
    expect(await readdir(folder)).not.toContain('two.next');
    expect(await readdir(folder)).not.toContain('two.last');
  });

  it('never replaces a folder that it did not write, nor writes into the content', async () => {
    await mkdir(path.join(folder, 'mine'));
    await writeFile(path.join(folder, 'mine', 'letter.txt'), 'dear Ada');
    const foreign = await build('mine', 'cache-one');
    expect(foreign.ok).toBe(false);
    expect(await readFile(path.join(folder, 'mine', 'letter.txt'), 'utf8')).toBe('dear Ada');
    expect((await build('content/site', 'cache-one')).ok).toBe(false);
    expect(await readdir(path.join(folder, 'content'))).not.toContain('site');
  });
});
