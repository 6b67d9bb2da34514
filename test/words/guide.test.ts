import { cp, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { publish } from '../../lib/publish/index.ts';

const SMALL = path.join(import.meta.dirname, '..', 'content', 'cases', 'valid', 'content');

/** English words that only the interface would write; none is a name in this content. */
const TELL_TALE =
  /\b(the|with|and|looks? for|from|pieces|packing|wear|stay|take|along|weather|evening|morning|tops|bottoms|shoes|layers|estimated|today|why|findings|show|any)\b/i;

let folder: string;
const pages = new Map<string, string>();

beforeAll(async () => {
  folder = await mkdtemp(path.join(tmpdir(), 'wayfold-german-'));
  await cp(SMALL, path.join(folder, 'content'), { recursive: true });
  // the lines of a list are the stylist's own words, and shown as they stand
  const list = path.join(folder, 'content', 'lists', 'small.md');
  await writeFile(list, (await readFile(list, 'utf8')).replace('what: tops', 'what: Oberteile'));
  await writeFile(path.join(folder, 'content', 'studio.md'), '---\nname: Atelier Anna\nlanguage: de\n---\n');
  const result = await publish({
    contentFolder: path.join(folder, 'content'),
    out: path.join(folder, 'out'),
    cacheFolder: path.join(folder, 'cache'),
    edition: 'stylist',
  });
  expect(result.ok).toBe(true);
  for (const file of await readdir(path.join(folder, 'out'), { recursive: true })) {
    if (file.endsWith('.html')) pages.set(file, await readFile(path.join(folder, 'out', file), 'utf8'));
  }
}, 120_000);
afterAll(() => rm(folder, { recursive: true, force: true }));

/** What a reader sees or hears, piece by piece. */
const spoken = (html: string): readonly string[] => [
  ...html
    .replaceAll(/<(style|script)[\s\S]*?<\/\1>/g, '')
    .split(/<[^>]*>/)
    .map((text) => text.trim())
    .filter((text) => text !== ''),
  ...[...html.matchAll(/\s(?:alt|aria-label|title)="([^"]+)"/g)].map((match) => match[1] ?? ''),
];

describe('a guide of a German studio', () => {
  it('says so on every page', () => {
    expect(pages.size).toBeGreaterThan(6);
    for (const [file, html] of pages) expect(html, file).toMatch(/<html[^>]* lang="de"/);
  });

  it('has no English word of the interface on any page', () => {
    const found = [...pages].flatMap(([file, html]) =>
      spoken(html)
        .filter((text) => TELL_TALE.test(text))
        .map((text) => `${file}: ${text}`),
    );
    expect(found).toEqual([]);
  });
});
