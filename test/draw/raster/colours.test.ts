import { converter, differenceCiede2000, parse } from 'culori';
import { describe, expect, it } from 'vitest';
import type { DrawnPiece } from '../../../lib/draw/drawing.ts';
import { drawPiece } from '../../../lib/draw/garment.ts';
import { createRasteriser, type Pixels, piecePicture } from '../../../lib/draw/raster/index.ts';
import type { PieceColour } from '../../../lib/model/index.ts';
import {
  FABRICS,
  type FabricId,
  KIND_IDS,
  KINDS,
  type KindGroup,
  type KindId,
  type Surface,
} from '../../../lib/vocabulary/index.ts';
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

/** Most of what is seen of these is something else: an insole, a sole of straw or cork, a stone, a lens, the inner side. */
const MOSTLY_OTHER: ReadonlySet<KindId> = new Set([
  'ballet flats',
  'wedge sandals',
  'sandals',
  'drop earrings',
  'bangle',
  'sunglasses',
  'spectacles',
] as const);

const rasteriser = createRasteriser();
const toOklch = converter('oklch');

const shown = (kind: KindId, changes: Partial<DrawnPiece> = {}, width = 260): Promise<Pixels> => {
  const item = { id: kind, slot: 'top' as const, picture: drawPiece(samplePiece(kind, changes)) };
  return rasteriser.laid(piecePicture(item, { width }), { ground: 'clear' });
};

const hexOf = (channels: readonly number[]): string =>
  `#${channels.map((value) => value.toString(16).padStart(2, '0')).join('')}`;

/** Median of each channel over what is quite opaque: shade below the piece is not. */
const medianColour = ({ data }: Pixels): string => {
  const channels: number[][] = [[], [], []];
  for (let at = 0; at < data.length; at += 4) {
    if (data[at + 3] !== 255) continue;
    for (const [offset, values] of channels.entries()) values.push(data[at + offset] ?? 0);
  }
  return hexOf(channels.map((values) => values.sort((a, b) => a - b)[values.length >> 1] ?? 0));
};

const ciede2000 = differenceCiede2000();
const apart = (one: string, other: string): number => {
  const [a, b] = [parse(one), parse(other)];
  return a === undefined || b === undefined ? Number.POSITIVE_INFINITY : ciede2000(a, b);
};

/** Share of what is opaque that lies within `far` of a colour. */
const shareWithin = ({ data }: Pixels, colour: string, far: number): number => {
  const known = new Map<string, boolean>();
  let [all, near] = [0, 0];
  for (let at = 0; at < data.length; at += 4) {
    if (data[at + 3] !== 255) continue;
    all++;
    const hex = hexOf([...data.subarray(at, at + 3)]);
    let within = known.get(hex);
    if (within === undefined) {
      within = apart(hex, colour) <= far;
      known.set(hex, within);
    }
    if (within) near++;
  }
  return near / all;
};

const groundOf = (kind: KindId): string => samplePiece(kind).colours[0]?.hex ?? '';

/** Kinds whose median colour strays, with what was wanted and what is shown. */
const straying = async (kinds: readonly KindId[]): Promise<readonly string[]> => {
  const far: string[] = [];
  for (const kind of kinds) {
    const median = medianColour(await shown(kind));
    if (apart(median, groundOf(kind)) > 6) far.push(`${kind}: ${groundOf(kind)} is shown as ${median}`);
  }
  return far;
};

/** From white to black, pale and strong. */
const COLOURS = [
  '#ffffff',
  '#f4efe2',
  '#e7c94a',
  '#d9a7a0',
  '#b6c3a4',
  '#c8352c',
  '#2456a6',
  '#5a3a26',
  '#2d3a57',
  '#141416',
];
/** One kind for each way clothes are built. */
const BUILT: readonly KindId[] = ['blouse', 'wide trousers', 'wool coat'];

/** Surfaces no clothes are made of. */
const NOT_CLOTH: ReadonlySet<Surface> = new Set<Surface>(['straw', 'rubber', 'metal', 'pearl', 'tortoiseshell']);
/** One cloth for each surface. */
const CLOTHS: readonly FabricId[] = [
  ...new Map(
    (Object.keys(FABRICS) as FabricId[])
      .filter((id) => !NOT_CLOTH.has(FABRICS[id].surface))
      .map((id) => [FABRICS[id].surface, id]),
  ).values(),
];

const colourOf = (hex: string): PieceColour => {
  const { l, c, h = 0 } = toOklch(hex) ?? { l: 0, c: 0 };
  return { name: hex, hex, oklch: { l, c, h }, share: 1 };
};

describe('colours of what is drawn', () => {
  it('shows every cloth within CIEDE2000 6 of its colour, from white to black, on clothes of every build', async () => {
    const far: string[] = [];
    for (const kind of BUILT) {
      for (const fabric of CLOTHS) {
        for (const hex of COLOURS) {
          const median = medianColour(await shown(kind, { fabric, colours: [colourOf(hex)] }, 120));
          if (apart(median, hex) > 6)
            far.push(`${kind} of ${fabric}: ${hex} is shown as ${median}, ${apart(median, hex).toFixed(1)} off`);
        }
      }
    }
    expect(far).toEqual([]);
  });

  it('shows every garment within CIEDE2000 6 of its colour, folds, weave and grain included', async () => {
    expect(await straying(KIND_IDS.filter((id) => CLOTHES.has(KINDS[id].group)))).toEqual([]);
  });

  it('shows shoes, bags, jewellery and accessories within CIEDE2000 6 of their colour', async () => {
    expect(await straying(KIND_IDS.filter((id) => !CLOTHES.has(KINDS[id].group) && !MOSTLY_OTHER.has(id)))).toEqual([]);
  });

  it('shows the colour of what is mostly sole, stone or lens on a tenth of it at least', async () => {
    for (const kind of MOSTLY_OTHER) {
      expect(shareWithin(await shown(kind), groundOf(kind), 8), kind).toBeGreaterThan(0.1);
    }
  });
});
