import { cp, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { isNeutral, underHouse } from '../../lib/colour/index.ts';
import { readContent } from '../../lib/content/index.ts';
import { colour } from '../colour/pieces.ts';

const VALID = path.join(import.meta.dirname, 'cases', 'valid', 'content');
let folder = '';

beforeAll(async () => {
  folder = await mkdtemp(path.join(tmpdir(), 'wayfold-neutrals-'));
  await cp(VALID, folder, { recursive: true });
  const shirt = (colours: string): string => `---\nname: Shirt\nkind: shirt\ncolours: [${colours}]\n---\n`;
  await writeFile(path.join(folder, 'wardrobes', 'ada', 'shirt.md'), shirt('terracotta, burgundy'));
  await writeFile(
    path.join(folder, 'wardrobes', 'ada', 'own.md'),
    shirt('{name: terracotta, neutral: false}, {name: desert, value: terracotta}'),
  );
});
afterAll(() => rm(folder, { recursive: true }));

const neutralsUnder = async (rules: string): Promise<Readonly<Record<string, readonly boolean[]>>> => {
  await writeFile(path.join(folder, 'house-rules.md'), `---\n${rules}\n---\n`);
  const { content, problems } = await readContent(folder);
  expect(problems).toEqual([]);
  const pieces = content?.wardrobes.get('ada') ?? [];
  return Object.fromEntries(pieces.map(({ id, colours }) => [id, colours.map(isNeutral)]));
};

describe("the house's word on neutrals", () => {
  it('holds for every piece, by name and by what is the same to the eye', async () => {
    expect(await neutralsUnder('rules: {}')).toMatchObject({ shirt: [false, true], own: [false, false] });
    expect(await neutralsUnder('neutral: [terracotta]\nnot neutral: [burgundy]')).toMatchObject({
      shirt: [true, false],
      own: [false, true],
    });
  });

  it('stands below what a piece says of its own colour', () => {
    const house = { neutral: [colour('rust')], notNeutral: [colour('navy')] };
    expect(underHouse({ ...colour('rust'), neutral: false }, house).neutral).toBe(false);
    expect(underHouse({ ...colour('navy'), neutral: true }, house).neutral).toBe(true);
    expect(underHouse(colour('teal'), house)).toEqual(colour('teal'));
  });

  it('says which colour is misspelt, and where', async () => {
    await writeFile(path.join(folder, 'house-rules.md'), '---\nneutral: [teracotta]\n---\n');
    const { problems } = await readContent(folder);
    expect(problems).toHaveLength(1);
    expect(problems[0]).toMatchObject({ file: 'house-rules.md', line: 2 });
    expect(problems[0]?.mend).toContain('terracotta');
  });
});
