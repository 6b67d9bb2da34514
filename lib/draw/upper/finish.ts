import type { Point } from '../drawing.ts';
import type { Cloth } from '../fabric/index.ts';
import {
  curvePath,
  type Garment,
  group,
  line,
  type Node,
  nodeAt,
  offsetLine,
  type Painted,
  pen,
  resample,
  reversed,
  ribsBetween,
  sampleCurve,
  shape,
  stitch,
} from '../kit/index.ts';
import { armholeSeam } from './body.ts';
import type { UpperShape } from './shape.ts';

/** A line moved aside, as nodes. Positive is to the left of its run. */
export const beside = (nodes: readonly Node[], by: number, count = 10): Node[] =>
  offsetLine(resample(sampleCurve(nodes), count), by).map(nodeAt);

/** A closed band along a line, from `inner` to `outer` centimetres to the left of its run. */
export const bandNodes = (nodes: readonly Node[], inner: number, outer: number, count = 10): Node[] => {
  const a = beside(nodes, inner, count);
  const b = reversed(beside(nodes, outer, count));
  const sharp = (list: Node[]): Node[] =>
    list.map(([x, y], i) => (i === 0 || i === list.length - 1 ? [x, y, 'corner'] : [x, y]));
  return [...sharp(a), ...sharp(b)];
};

/** Short ribs across a band. */
export const bandRibs = (
  garment: Garment,
  nodes: readonly Node[],
  inner: number,
  outer: number,
  count: number,
  cloth: Cloth,
): Painted[] => {
  const n = garment.small ? Math.round(count / 3) : count;
  const a = beside(nodes, inner, n);
  const b = beside(nodes, outer, n);
  const path = a
    .map((p, i) => {
      const q = b[i] ?? p;
      return `M${round(p[0])} ${round(p[1])}L${round(q[0])} ${round(q[1])}`;
    })
    .join('');
  const dark = line(path, garment.small ? 0.35 : 0.2, cloth.ink, garment.small ? 0.2 : 0.32);
  if (garment.small) return [dark];
  return [dark, group([{ ...dark, stroke: cloth.bright, opacity: 0.5 }], { move: [0.24, 0] })];
};

const round = (v: number) => Math.round(v * 100) / 100;

/** A band of ribbing sewn along a neckline or an opening. */
export const ribBand = (
  garment: Garment,
  nodes: readonly Node[],
  inner: number,
  outer: number,
  pitch = 0.62,
  cloth = garment.cloth,
): void => {
  const length = resample(sampleCurve(nodes), 20).reduce(
    (sum: number, p: Point, i, all) =>
      sum + (i === 0 ? 0 : Math.hypot(p[0] - (all[i - 1]?.[0] ?? 0), p[1] - (all[i - 1]?.[1] ?? 0))),
    0,
  );
  garment.panel(bandNodes(nodes, inner, outer), {
    cloth,
    covers: false,
    loose: true,
    edge: 0.3,
    wobble: 0,
    print: false,
    weave: false,
    inner: bandRibs(garment, nodes, inner, outer, Math.round(length / pitch), cloth),
  });
};

/** A narrow binding along an edge, with a row of stitches beside it. */
export const binding = (garment: Garment, nodes: readonly Node[], width: number, cloth = garment.cloth): void => {
  const path = curvePath(bandNodes(nodes, 0, width));
  garment.add({ path, fill: cloth.ground, stroke: cloth.ink, width: garment.small ? 0.2 : 0.14, opacity: 1 });
  if (!garment.small) garment.add(stitch(beside(nodes, -0.5), garment.cloth.ink, 0.4));
};

/** A ribbed hem: its upper seam and the ribs, painted inside the body's panel. */
export const ribHem = (
  garment: Garment,
  halfWidth: number,
  top: number,
  bottom: number,
  cloth = garment.cloth,
): Painted[] => {
  const count = Math.round((halfWidth * 2) / 1.3);
  const seam: Node[] = [
    [-halfWidth - 3, top - 0.3],
    [0, top + 0.7],
    [halfWidth + 3, top - 0.3],
  ];
  const left: Node[] = [
    [-halfWidth - 0.6, top],
    [-halfWidth, bottom + 1],
  ];
  const right: Node[] = [
    [halfWidth + 0.6, top],
    [halfWidth, bottom + 1],
  ];
  const marks: Painted[] = [
    // ribbing is plain, whatever the body's print or stitch
    shape([...seam, [halfWidth + 3, bottom + 3, 'corner'], [-halfWidth - 3, bottom + 3, 'corner']], cloth.ground),
    garment.plane(
      [
        [-halfWidth - 1, top - 0.8],
        [0, top - 0.2],
        [halfWidth + 1, top - 0.8],
      ],
      1.3,
      cloth.ink,
      0.22,
    ),
    line(seam, 0.26, cloth.ink, 0.55),
    ribsBetween(left, right, count, cloth, { dark: 0.22, light: 0.42, width: 0.22, small: garment.small }),
  ];
  if (!garment.small) marks.push(line(beside(seam, 0.4), 0.22, cloth.bright, 0.55));
  return marks;
};

/** The narrow edge round an armhole without a sleeve. */
export const armBinding = (garment: Garment, shape: UpperShape, scoop: number, width = 1.2): void => {
  if (shape.sleeve !== undefined) return;
  for (const side of [-1, 1] as const) {
    const seam = armholeSeam(shape, side, scoop);
    garment.add(pen(seam, 0.3, garment.cloth.ink, 0.7, 0.5));
    if (!garment.small) garment.add(line(beside(seam, side * width), 0.14, garment.cloth.ink, 0.55));
  }
};
