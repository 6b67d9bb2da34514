import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import sharp, { type Sharp } from 'sharp';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type CardInput, drawCard } from '../../lib/draw/card/index.ts';
import { type Cutout, layFlat } from '../../lib/draw/flat-lay/index.ts';
import { drawPiece } from '../../lib/draw/index.ts';
import { createRasteriser, piecePicture } from '../../lib/draw/raster/index.ts';
import { cutOutPhoto } from '../../lib/photo/index.ts';
import { asCutout } from '../../lib/publish/items.ts';
import { loadFonts } from '../../lib/type/index.ts';
import { samplePiece } from '../specimen/sample.ts';
import { photograph, type Scene } from './synthetic.ts';

/** A red shirt with short sleeves on pale cloth. */
const SHIRT: Scene = {
  name: 'shirt',
  ground: '#e8e6e1',
  cloth: ['#a02c2c'],
  pattern: 'plain',
  light: 1.1,
  folds: 0.06,
  weave: 0,
  vignette: 0,
  shade: 0.1,
  noise: 2,
  orientation: 1,
  format: 'jpeg',
  quality: 90,
};

let folder = '';
let cutout: Cutout;

beforeAll(async () => {
  folder = await mkdtemp(path.join(tmpdir(), 'laid-'));
  await writeFile(path.join(folder, 'shirt.jpg'), await photograph(SHIRT, 5));
  const cut = await cutOutPhoto(folder, 'shirt.jpg', 900);
  if (!cut.ok) throw new Error(cut.trouble.wrong);
  cutout = asCutout(cut.value, drawPiece(samplePiece('shirt')));
});
afterAll(() => rm(folder, { recursive: true }));

const areaOf = (ring: readonly (readonly [number, number])[]): number =>
  Math.abs(
    ring.reduce((sum, [x, y], index) => {
      const [nextX, nextY] = ring[(index + 1) % ring.length] ?? [0, 0];
      return sum + (x * nextY - nextX * y) / 2;
    }, 0),
  );

describe('a photo laid flat', () => {
  test('has the outline of its garment, not of its picture', () => {
    const { box, outline } = cutout;
    const cloth = outline.reduce((sum, ring) => sum + areaOf(ring), 0) / (box.width * box.height);
    // the scene's own geometry: a body 0.44 × 0.73, two sleeves, less the neck, in a box of 0.8 × 0.73
    expect(cloth).toBeGreaterThan(0.55);
    expect(cloth).toBeLessThan(0.72);
    // at the hem the garment is as wide as its body, 0.44 of 0.8
    const low = outline.flat().filter(([, y]) => y > box.y + box.height * 0.9);
    const breadth = Math.max(...low.map(([x]) => x)) - Math.min(...low.map(([x]) => x));
    expect(breadth / box.width).toBeCloseTo(0.55, 1);
  });

  test('throws its shade beside the sleeve, not beside the rectangle, and its edge is soft', async () => {
    const item = { id: 'shirt', slot: 'top' as const, picture: cutout };
    const { data, width, height } = await createRasteriser().laid(piecePicture(item, { width: 400 }), {
      ground: 'clear',
    });
    const alpha = (x: number, y: number): number =>
      data[(Math.round(y * height) * width + Math.round(x * width)) * 4 + 3] ?? 0;
    expect(alpha(0.5, 0.5)).toBe(255);
    // below the sleeve, well inside the picture's rectangle
    expect(alpha(0.1, 0.8)).toBe(0);
    expect(alpha(0.93, 0.85)).toBe(0);
    const row = Array.from({ length: width }, (_, x) => alpha(x / width, 0.75));
    expect(row.some((value) => value > 10 && value < 245)).toBe(true);
  });

  test('lies on a card beside drawn pieces: shown, in its colour, nothing around it', async () => {
    const pieces = [
      { id: 'shirt', slot: 'top' as const, picture: cutout, name: 'Red shirt', colour: '#a02c2c' },
      {
        id: 'jeans',
        slot: 'bottom' as const,
        picture: drawPiece(samplePiece('jeans')),
        name: 'Jeans',
        colour: '#2f3e5c',
      },
      {
        id: 'coat',
        slot: 'outer layer' as const,
        picture: drawPiece(samplePiece('wool coat')),
        name: 'Coat',
        colour: '#58788e',
      },
    ];
    const input: CardInput = {
      format: 'portrait',
      number: '1',
      title: 'A photo among drawings',
      eyebrow: '',
      wear: '',
      studio: '',
      footer: '',
      note: '',
      pieces,
      accent: '#2c5745',
      tape: { unit: 'cm', label: 'cm' },
      grain: 'straight grain',
    };
    const card = await drawCard(input, loadFonts());
    const placed = card.lay.placed.find(({ item }) => item.id === 'shirt');
    if (placed === undefined) throw new Error('no shirt');
    expect(placed.visible).toBeGreaterThan(0.55);
    const { data, width, height } = await createRasteriser().laid(card, { ground: 'paper', sheet: card.sheet });
    const { extent } = placed;
    // `stats` reads the picture as it came: what is cut out of it must be written first
    const spotOf = async (picture: Sharp, left: number, top: number, side: number) =>
      sharp(
        await picture
          .extract({ left: Math.round(left), top: Math.round(top), width: Math.round(side), height: Math.round(side) })
          .png()
          .toBuffer(),
      ).stats();
    const shown = await spotOf(
      sharp(data, { raw: { width, height, channels: 4 } }),
      extent.x + extent.width * 0.42,
      extent.y + extent.height * 0.4,
      extent.width * 0.16,
    );
    const photo = await sharp(cutout.png).metadata();
    const taken = await spotOf(sharp(cutout.png), photo.width * 0.42, photo.height * 0.4, photo.width * 0.16);
    for (const channel of [0, 1, 2]) {
      const apart = (shown.channels[channel]?.mean ?? 0) - (taken.channels[channel]?.mean ?? 255);
      expect(Math.abs(apart), `channel ${channel}`).toBeLessThan(12);
    }
    // outline, not rectangle: the layout knows that the corner under the sleeve is free
    const rectangle = layFlat(
      pieces.map((piece) =>
        piece.id === 'shirt'
          ? {
              ...piece,
              picture: {
                ...cutout,
                outline: [
                  [
                    [cutout.box.x, cutout.box.y],
                    [cutout.box.x + cutout.box.width, cutout.box.y],
                    [cutout.box.x + cutout.box.width, cutout.box.y + cutout.box.height],
                    [cutout.box.x, cutout.box.y + cutout.box.height],
                  ] as const,
                ],
              },
            }
          : piece,
      ),
      card.lay.frame,
    );
    expect(rectangle.placed.map(({ extent: { x } }) => x)).not.toEqual(card.lay.placed.map(({ extent: { x } }) => x));
  });
});
