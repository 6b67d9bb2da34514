import { Resvg } from '@resvg/resvg-js';
import { converter, differenceCiede2000 } from 'culori';
import { expect } from 'vitest';
import type { Drawing, DrawnPiece, Mark, MarkGroup } from '../../../lib/draw/drawing.ts';
import { drawingMarkup, drawingSvg } from '../../../lib/draw/svg.ts';
import { KINDS, type KindId } from '../../../lib/vocabulary/index.ts';

/** A piece of a kind with the kind's own fabric and heel. */
export const pieceOf = (kind: KindId, hexes: readonly string[], more: Partial<DrawnPiece> = {}): DrawnPiece => ({
  id: kind,
  wardrobe: 'test',
  name: kind,
  kind,
  colours: hexes.map((hex) => ({ name: hex, hex, oklch: { l: 0.5, c: 0, h: 0 }, share: 1 / hexes.length })),
  pattern: { type: 'plain', scale: 'medium' },
  cut: KINDS[kind].cut,
  length: KINDS[kind].length,
  heelCm: KINDS[kind].heelCm,
  fabric: KINDS[kind].fabric,
  ...more,
});

const flat = (marks: readonly (Mark | MarkGroup)[]): Mark[] =>
  marks.flatMap((mark) => ('marks' in mark ? flat(mark.marks) : [mark]));
const clips = (marks: readonly (Mark | MarkGroup)[]): string[] =>
  marks.flatMap((mark) =>
    'marks' in mark ? [...(mark.clip === undefined ? [] : [mark.clip]), ...clips(mark.marks)] : [],
  );

export const marksOf = (drawing: Drawing): readonly Mark[] => flat(drawing.marks);
export const bytesOf = (drawing: Drawing): number => drawingMarkup(drawing, 'a').length;

/** The contract of `drawing.ts`: path grammar, finite numbers, known tiles, an outline inside the box. */
export const expectSound = (drawing: Drawing): void => {
  const marks = marksOf(drawing);
  expect(marks.length).toBeGreaterThan(2);
  for (const path of [...marks.map((mark) => mark.path), ...clips(drawing.marks)])
    expect(path).toMatch(/^(?:[MLCQ](?:-?\d+(?:\.\d+)?[ ,]?)+|Z)+$/);
  const tiles = new Set(drawing.tiles.map((tile) => tile.name));
  for (const { fill, opacity, stroke, width } of marks) {
    if (typeof fill === 'object') expect(tiles).toContain(fill.tile);
    else if (fill !== undefined) expect(fill).toMatch(/^#[0-9a-f]{6}$/);
    if (stroke !== undefined) expect(stroke).toMatch(/^#[0-9a-f]{6}$/);
    if (stroke !== undefined) expect(width).toBeGreaterThan(0);
    if (opacity !== undefined) expect(opacity).toBeGreaterThanOrEqual(0);
  }
  const { x, y, width, height } = drawing.box;
  expect(drawing.outline.length).toBeGreaterThan(0);
  for (const [px, py] of drawing.outline.flat()) {
    expect(px).toBeGreaterThanOrEqual(x - 1e-6);
    expect(px).toBeLessThanOrEqual(x + width + 1e-6);
    expect(py).toBeGreaterThanOrEqual(y - 1e-6);
    expect(py).toBeLessThanOrEqual(y + height + 1e-6);
  }
};

/** Pixels of a drawing, `side` pixels on its longer side, on a transparent ground. */
export const pixelsOf = (
  drawing: Drawing,
  side: number,
): { readonly width: number; readonly height: number; readonly data: Buffer } => {
  const { width, height } = drawing.box;
  const image = new Resvg(
    drawingSvg(drawing, { prefix: 'a', width: Math.round((side * width) / Math.max(width, height)) }),
  ).render();
  return { width: image.width, height: image.height, data: image.pixels };
};

const toLab = converter('lab65');
const difference = differenceCiede2000();
const middle = (values: number[], share = 0.5): number =>
  values.sort((a, b) => a - b)[Math.floor((values.length - 1) * share)] ?? 0;

const labOf = (drawing: Drawing, side: number): { readonly l: number; readonly a: number; readonly b: number }[] => {
  const { data } = pixelsOf(drawing, side);
  const result: { l: number; a: number; b: number }[] = [];
  for (let i = 0; i < data.length; i += 4) {
    if ((data[i + 3] ?? 0) < 250) continue;
    const colour = toLab({
      mode: 'rgb',
      r: (data[i] ?? 0) / 255,
      g: (data[i + 1] ?? 0) / 255,
      b: (data[i + 2] ?? 0) / 255,
    });
    result.push({ l: colour.l, a: colour.a, b: colour.b });
  }
  return result;
};

/** CIEDE2000 between the median colour of the drawing and a colour. */
export const medianDifference = (drawing: Drawing, hex: string): number => {
  const pixels = labOf(drawing, 220);
  const median = {
    mode: 'lab65' as const,
    l: middle(pixels.map((p) => p.l)),
    a: middle(pixels.map((p) => p.a)),
    b: middle(pixels.map((p) => p.b)),
  };
  return difference(median, hex);
};

/** Share of the drawing within a CIEDE2000 of a colour. */
export const shareNear = (drawing: Drawing, hex: string, within: number): number => {
  const pixels = labOf(drawing, 120);
  return pixels.filter(({ l, a, b }) => difference({ mode: 'lab65', l, a, b }, hex) <= within).length / pixels.length;
};

/** Span of CIELAB lightness between the darkest tenth and the lightest twentieth. */
export const lightnessSpan = (drawing: Drawing, side: number): number => {
  const lights = labOf(drawing, side).map((p) => p.l);
  return middle([...lights], 0.95) - middle([...lights], 0.1);
};

/** Drawings laid on one square of `side` pixels of paper, centred, as luminance from 0 to 255. */
const luminance = (drawing: Drawing, side: number): Float64Array => {
  const { width, height, data } = pixelsOf(drawing, side);
  const field = new Float64Array(side * side).fill(236);
  const [left, top] = [(side - width) >> 1, (side - height) >> 1];
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const i = (y * width + x) * 4;
      const alpha = (data[i + 3] ?? 0) / 255;
      const light = 0.3 * (data[i] ?? 0) + 0.6 * (data[i + 1] ?? 0) + 0.1 * (data[i + 2] ?? 0);
      const at = (y + top) * side + x + left;
      if (at >= 0 && at < field.length) field[at] = light * alpha + 236 * (1 - alpha);
    }
  return field;
};

/** For every two kinds, the share of an 80 px square on which their drawings plainly differ; the least of them. */
export const leastDifference = (
  drawings: Readonly<Record<string, Drawing>>,
): { readonly pair: string; readonly share: number } => {
  const fields = Object.entries(drawings).map(([kind, drawing]) => [kind, luminance(drawing, 80)] as const);
  let least = { pair: '', share: 1 };
  fields.forEach(([a, one], i) => {
    for (const [b, other] of fields.slice(i + 1)) {
      let differing = 0;
      one.forEach((light, k) => {
        if (Math.abs(light - (other[k] ?? 0)) > 24) differing += 1;
      });
      const share = differing / one.length;
      if (share < least.share) least = { pair: `${a} / ${b}`, share };
    }
  });
  return least;
};
