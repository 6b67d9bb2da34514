import { cp, mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Look, Piece } from '../../lib/model/index.ts';
import { motifsOf } from '../../lib/publish/items.ts';
import { createFormats, english, say } from '../../lib/words/index.ts';
import { PROJECT, run } from '../cli/run.ts';
import { piece } from '../plan/trip.ts';

const [WIDTH, HEIGHT] = [320, 400];
type Paint = (x: number, y: number) => readonly [number, number, number];

/** A rust garment in the middle of a ground. */
const photograph = (ground: Paint): Promise<Buffer> => {
  const data = Buffer.alloc(WIDTH * HEIGHT * 3);
  for (let y = 0; y < HEIGHT; y += 1) {
    for (let x = 0; x < WIDTH; x += 1) {
      const garment = x > 80 && x < 240 && y > 80 && y < 330;
      data.set(garment ? [164, 73, 42] : ground(x, y), (y * WIDTH + x) * 3);
    }
  }
  return sharp(data, { raw: { width: WIDTH, height: HEIGHT, channels: 3 } })
    .jpeg({ quality: 92 })
    .toBuffer();
};

const RESTLESS: Readonly<Record<string, Paint>> = {
  tiles: (x, y) => ((Math.floor(x / 24) + Math.floor(y / 24)) % 2 === 0 ? [190, 40, 50] : [235, 225, 200]),
  stripes: (x) => (Math.floor(x / 18) % 2 === 0 ? [40, 60, 140] : [230, 230, 225]),
  floorboards: (x, y) => {
    const light = 130 + 60 * Math.sin(x / 6 + 3 * Math.sin(y / 50));
    return [light, Math.round(light * 0.7), Math.round(light * 0.45)];
  },
  carpet: (x, y) => {
    const speck = (Math.sin(Math.floor(x / 7) * 12.9898 + Math.floor(y / 7) * 78.233) * 43758.5453) % 1;
    return speck > 0.3 ? [200, 60, 60] : speck > -0.3 ? [40, 90, 60] : [220, 200, 150];
  },
  'edge of a bed': (_, y) => (y < 190 ? [240, 240, 238] : [60, 62, 70]),
};

describe('how a piece with a photo is shown', () => {
  let folder: string;
  beforeAll(async () => {
    folder = await mkdtemp(path.join(tmpdir(), 'wayfold-photos-'));
    await mkdir(path.join(folder, 'photos'));
  });
  afterAll(() => rm(folder, { recursive: true, force: true }));

  const shown = async (name: string, ground: Paint) => {
    const photo = `photos/${name.replaceAll(' ', '-')}.jpg`;
    await sharp(await photograph(ground)).toFile(path.join(folder, photo));
    const shirt: Piece = {
      ...piece('shirt', 'shirt', { name: 'Rust shirt', photo }),
      file: 'wardrobes/ada/shirt.md',
      lines: { photo: 7 },
    };
    const look: Look = { id: 'shirt', worn: [{ piece: 'shirt', slot: 'top' }] };
    const { findings, itemsOf } = await motifsOf([shirt], folder);
    const [item] = itemsOf(look, 'full');
    return { findings, isPhoto: item !== undefined && 'png' in item.picture };
  };

  it('is its photo, without a word, on a plain ground', async () => {
    expect(await shown('sheet', () => [240, 240, 238])).toEqual({ findings: [], isPhoto: true });
  });

  it.each(Object.entries(RESTLESS))('is its drawing on %s, with the reason, file and line', async (name, ground) => {
    const { findings, isPhoto } = await shown(name, ground);
    expect(isPhoto).toBe(false);
    expect(findings).toMatchObject([
      { level: 'warning', rule: 'photo', file: 'wardrobes/ada/shirt.md', line: 7, about: ['shirt'] },
    ]);
    const formats = createFormats({ language: 'en-GB', temperature: 'C', length: 'cm', weight: 'kg' });
    const [message, mend] = [findings[0]?.message, findings[0]?.mend].map((words) =>
      words === undefined ? '' : say(english, formats, words),
    );
    expect(message).toMatch(/^The photo of the rust shirt is not used: .*cannot be told from its ground\.$/);
    expect(mend).toBe('Photograph it on one plain cloth of another colour, with room round it.');
  });

  it('is told by check as well', async () => {
    const content = path.join(folder, 'content');
    await cp(path.join(PROJECT, 'test', 'content', 'cases', 'valid', 'content'), content, { recursive: true });
    await mkdir(path.join(content, 'photos'));
    await sharp(await photograph(RESTLESS.tiles ?? (() => [0, 0, 0]))).toFile(
      path.join(content, 'photos', 'shirt.jpg'),
    );
    const file = path.join(content, 'wardrobes', 'ada', 'shirt.md');
    await writeFile(file, (await readFile(file, 'utf8')).replace(/^kind:/m, 'photo: photos/shirt.jpg\nkind:'));
    const { out } = await run(['check', '--content', content]);
    expect(out).toMatch(/warning \[photo\] The photo of the .* is not used: .*\(wardrobes\/ada\/shirt\.md:3\)/);
  });
});
