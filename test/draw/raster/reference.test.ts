import { readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import pixelmatch from 'pixelmatch';
import { PNG } from 'pngjs';
import { describe, expect, it } from 'vitest';
import type { DrawnPiece } from '../../../lib/draw/drawing.ts';
import type { Placed } from '../../../lib/draw/flat-lay/index.ts';
import { drawPiece } from '../../../lib/draw/garment.ts';
import { createRasteriser, piecePicture } from '../../../lib/draw/raster/index.ts';
import type { KindId } from '../../../lib/vocabulary/index.ts';
import { samplePiece } from '../../specimen/sample.ts';

/** Two or more of every family, with the patterns and cloths that show most. */
const SHEET: readonly (readonly [KindId, Partial<DrawnPiece>?])[] = [
  ['boat-neck top', { pattern: { type: 'stripe', scale: 'medium' } }],
  ['dress shirt'],
  ['roll-neck'],
  ['wool coat', { pattern: { type: 'herringbone', scale: 'medium' } }],
  ['shawl'],
  ['wide trousers'],
  ['pleated skirt', { pattern: { type: 'tartan', scale: 'medium' } }],
  ['slip dress'],
  ['jumpsuit'],
  ['swimsuit'],
  ['swim shorts'],
  ['socks'],
  ['lace-up boots'],
  ['pumps'],
  ['flap bag'],
  ['sun hat'],
  ['neckerchief', { pattern: { type: 'floral', scale: 'small' } }],
  ['sunglasses'],
];
const COLUMNS = 6;
const CELL = { width: 100, height: 126 } as const;
const WIDTH = COLUMNS * CELL.width;
const HEIGHT = Math.ceil(SHEET.length / COLUMNS) * CELL.height;

const REFERENCE = path.join(import.meta.dirname, 'reference.png');

const placed = (index: number): readonly Placed[] => {
  const [kind, changes] = SHEET[index] ?? ['t-shirt'];
  const item = { id: kind, slot: 'top' as const, picture: drawPiece(samplePiece(kind, changes)) };
  const [x, y] = [(index % COLUMNS) * CELL.width, Math.floor(index / COLUMNS) * CELL.height];
  return piecePicture(item, CELL).lay.placed.map(({ transform: [a, b, c, d, e, f], extent, ...rest }) => ({
    ...rest,
    transform: [a, b, c, d, e + x, f + y],
    extent: { ...extent, x: extent.x + x, y: extent.y + y },
  }));
};

const sheet = async (): Promise<Buffer> => {
  const rasteriser = createRasteriser();
  const lay = {
    scale: 1.6,
    frame: { x: 0, y: 0, width: WIDTH, height: HEIGHT },
    placed: SHEET.flatMap((_, index) => placed(index)),
  };
  const paper = `<svg xmlns="http://www.w3.org/2000/svg" width="${WIDTH}" height="${HEIGHT}"><rect width="100%" height="100%" fill="#f2eadc"/></svg>`;
  return rasteriser.png(
    await rasteriser.laid({ lay, width: WIDTH, height: HEIGHT }, { ground: 'paper', sheet: paper }),
  );
};

describe('reference sheet', () => {
  it('is drawn as it was when it was last looked at (DRAW_REFERENCE=1 draws it anew; look at it)', async () => {
    const file = await sheet();
    if (process.env.DRAW_REFERENCE === '1') writeFileSync(REFERENCE, file);
    const [wanted, drawn] = [PNG.sync.read(readFileSync(REFERENCE)), PNG.sync.read(file)];
    expect([drawn.width, drawn.height]).toEqual([wanted.width, wanted.height]);
    const difference = new PNG({ width: WIDTH, height: HEIGHT });
    const changed = pixelmatch(wanted.data, drawn.data, difference.data, WIDTH, HEIGHT, {
      threshold: 0.06,
      includeAA: true,
    });
    if (changed > 0) {
      const beside = REFERENCE.replace('.png', '.changed.png');
      writeFileSync(beside, PNG.sync.write(difference));
      throw new Error(`${changed} pixels of the reference sheet changed: look at ${path.relative('.', beside)}`);
    }
  });

  it('would be seen to change', async () => {
    const wanted = PNG.sync.read(readFileSync(REFERENCE));
    const moved = Buffer.from(wanted.data);
    // one row of one piece, moved by a pixel
    const row = (60 * WIDTH + 20) * 4;
    moved.copyWithin(row, row + 4, row + 4 * 60);
    expect(
      pixelmatch(wanted.data, moved, undefined, WIDTH, HEIGHT, { threshold: 0.06, includeAA: true }),
    ).toBeGreaterThan(0);
  });
});
