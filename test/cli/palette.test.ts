import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { differenceOf, relate } from '../../lib/colour/index.ts';
import { readFrontMatter } from '../../lib/content/front-matter.ts';
import { readPiece } from '../../lib/content/piece.ts';
import type { NamedColour } from '../../lib/model/index.ts';
import { photograph, SCENES } from '../photo/synthetic.ts';
import { run } from './run.ts';

let content = '';

beforeAll(async () => {
  content = await mkdtemp(path.join(tmpdir(), 'wayfold-palette-'));
  const scene = SCENES.find(({ name }) => name === 'green and mustard check');
  if (scene === undefined) throw new Error('no scene');
  await writeFile(path.join(content, 'shirt.jpg'), await photograph(scene, 3));
  await writeFile(path.join(content, 'note.jpg'), 'Dear diary');
});
afterAll(() => rm(content, { recursive: true }));

interface Told {
  readonly photo?: { readonly colours: readonly (NamedColour & { readonly share: number })[] };
  readonly palettes: readonly {
    readonly colours: readonly { readonly colour: NamedColour; readonly role: string }[];
  }[];
}

describe('a palette from a seed colour', () => {
  it.each([[['rust']], [['bottle', 'green']], [['#4a5560']], [['oklch(0.5 0.1 200)']]])('%j', async (words) => {
    const { code, out } = await run(['palette', ...words, '--json']);
    expect(code).toBe(0);
    const { palettes } = JSON.parse(out) as Told;
    expect(palettes.length).toBeGreaterThan(0);
    for (const { colours } of palettes) {
      expect(colours.some(({ role }) => role === 'base')).toBe(true);
      for (const { colour } of colours) expect(relate(colour, colours[0]?.colour ?? colour).goes).toBe(true);
    }
  });
});

describe('a palette from a photo', () => {
  it('reads its colours as lines for a piece, and builds palettes round the strongest', async () => {
    const { code, out } = await run(['palette', 'shirt.jpg', '--content', content]);
    expect(code).toBe(0);
    const line = out.split('\n').find((text) => text.startsWith('colours: ')) ?? '';
    const front = readFrontMatter({ path: 'shirt.md', text: `---\nname: Shirt\nkind: shirt\n${line}\n---\n` });
    const piece = front.ok ? readPiece('shirt', 'ada', front.matter).value : undefined;
    // the scene's own colours
    for (const hex of ['#24472f', '#c2922a'])
      expect(Math.min(...(piece?.colours ?? []).map((colour) => differenceOf(colour.hex, hex)))).toBeLessThan(5);
    expect(out).toContain('mustard');
    const { palettes, photo } = JSON.parse(
      (await run(['palette', 'shirt.jpg', '--content', content, '--json'])).out,
    ) as Told;
    expect(photo?.colours).toHaveLength(2);
    expect(palettes.length).toBeGreaterThan(0);
  });

  it.each([
    ['none.jpg', 'there is no photo'],
    ['note.jpg', 'is not a picture'],
    ['../outside.jpg', 'outside the content folder'],
    ['https://example.org/a.jpg', 'not a path below'],
  ])('says what is wrong with %s', async (name, says) => {
    const { code, err } = await run(['palette', name, '--content', content]);
    expect(code).toBe(1);
    expect(err).toContain(says);
    expect(err).not.toMatch(/\bat .*\.ts:/);
  });
});
