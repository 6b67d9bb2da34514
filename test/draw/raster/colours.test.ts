import { differenceCiede2000, parse } from 'culori';
import { describe, expect, it } from 'vitest';
import { drawPiece } from '../../../lib/draw/garment.ts';
import { createRasteriser, type Pixels, piecePicture } from '../../../lib/draw/raster/index.ts';
import { KIND_IDS, KINDS, type KindGroup } from '../../../lib/vocabulary/index.ts';
import { samplePiece } from '../../specimen/sample.ts';

const CLOTHES: ReadonlySet<KindGroup> = new Set([
  'tops',
  'knits',
  'bottoms',
  'one-pieces',
  'swimwear',
  'layers',
  'coats',
  'legwear',
]);

/** Median of each channel over what is quite opaque: shade below the piece is not. */
const medianColour = ({ data }: Pixels): string => {
  const channels: number[][] = [[], [], []];
  for (let at = 0; at < data.length; at += 4) {
    if (data[at + 3] !== 255) continue;
    for (const [offset, values] of channels.entries()) values.push(data[at + offset] ?? 0);
  }
  const hex = channels.map((values) =>
    (values.sort((a, b) => a - b)[values.length >> 1] ?? 0).toString(16).padStart(2, '0'),
  );
  return `#${hex.join('')}`;
};

const difference = differenceCiede2000();

describe('colours of drawn clothes', () => {
  it('shows every garment within CIEDE2000 6 of its colour, folds, weave and grain included', async () => {
    const rasteriser = createRasteriser();
    const far: string[] = [];
    for (const kind of KIND_IDS.filter((id) => CLOTHES.has(KINDS[id].group))) {
      const piece = samplePiece(kind);
      const item = { id: kind, slot: 'top' as const, picture: drawPiece(piece) };
      const shown = medianColour(await rasteriser.laid(piecePicture(item, { width: 260 }), { ground: 'clear' }));
      const [one, other] = [parse(shown), parse(piece.colours[0]?.hex ?? '')];
      if (one === undefined || other === undefined || difference(one, other) > 6) {
        far.push(`${kind}: ${piece.colours[0]?.hex} is shown as ${shown}`);
      }
    }
    expect(far).toEqual([]);
  });
});
