import type { Point } from '../drawing.ts';
import {
  corner,
  curvePath,
  type Garment,
  group,
  lerp,
  linesBetween,
  type Node,
  type Painted,
  shape,
  turned,
} from '../kit/index.ts';

/** What makes one kind of tights different from another. */
export interface TightsDesign {
  /** Thickness added to every width. */
  readonly thick: number;
  readonly ribs: boolean;
  /** Seen through: a deeper panty and toe, and a darker place where the legs cross. */
  readonly sheer: boolean;
  readonly band: number;
}

/** From the waist to the fork, centimetres. */
export const RISE = 26;

/** One leg as it lies: turned about the hip and about the knee, degrees. */
interface Leg {
  readonly side: 1 | -1;
  readonly hip: number;
  readonly knee: number;
}

/** Sheer legs lie crossed from the hip; thick ones side by side, one shin folded over the other. */
const legsOf = (garment: Garment, { sheer }: TightsDesign): readonly [under: Leg, over: Leg] => {
  const swing = sheer ? 11 + garment.jitter(1.2) : 3 + garment.jitter(1);
  return sheer
    ? [
        { side: 1, hip: 1.2, knee: 0 },
        { side: -1, hip: -swing, knee: 0 },
      ]
    : [
        { side: 1, hip: -swing * 0.4, knee: 0 },
        { side: -1, hip: swing * 0.4, knee: -22 - swing },
      ];
};

/** Share of the way from one height to another, held at both ends. */
const reached = (y: number, from: number, to: number): number => Math.max(0, Math.min(1, (y - from) / (to - from)));

/** Turns a leg; the panty stays where it is. */
const swung = (nodes: readonly Node[], { side, hip, knee }: Leg, length: number): Node[] => {
  const bend = kneeAt(length);
  return nodes.map(([x, y, c]) => {
    const shin: Point = knee === 0 ? [x, y] : turned([x, y], knee * reached(y, bend - 4, bend + 4), [side * 9, bend]);
    const [a, b]: Point = turned(shin, hip * reached(y, 20, 42), [side * 7, 22]);
    return [a, b, c];
  });
};

const edges = (
  length: number,
  thick: number,
): {
  readonly outer: (share: number) => number;
  readonly inner: (share: number) => number;
  readonly y: (share: number) => number;
} => ({
  // share 0 is the fork, 1 the ankle
  y: (share) => lerp(RISE + 2, length - 15, share),
  outer: (share) => lerp(16.6, 12, share) + thick + (share > 0.45 && share < 0.85 ? 0.5 : 0),
  inner: (share) => lerp(0.7, 4.4, Math.min(1, share * 1.5)) - thick * 0.4 - (share > 0.5 && share < 0.8 ? 0.5 : 0),
});

/** Height of the knee; share 0.42 of the way from the fork to the ankle. */
const kneeAt = (length: number): number => lerp(RISE + 2, length - 15, 0.42);

const legOutline = (leg: Leg, length: number, { thick }: TightsDesign): Node[] => {
  const { side } = leg;
  const { outer, inner, y } = edges(length, thick);
  const steps = [0.18, 0.4, 0.62, 0.82, 1];
  const foot: Node[] = [
    [13 + thick, length - 9],
    [13.2 + thick, length - 4],
    [11.4, length - 0.6],
    [8.6, length],
    [6, length - 2.6],
    [4.6 - thick * 0.4, length - 8],
  ];
  const nodes: Node[] = [
    corner(13.4 + thick, 2),
    [15.8 + thick, 10],
    [17.2 + thick, 20],
    ...steps.map((share): Node => [outer(share), y(share)]),
    ...foot,
    ...[...steps].reverse().map((share): Node => [inner(share), y(share)]),
    [0.2, RISE + 1],
    corner(-0.9, RISE - 1),
    corner(-0.3, 2),
  ];
  return swung(
    nodes.map(([a, b, c]): Node => [side * a, b, c]),
    leg,
    length,
  );
};

const legTone = (
  garment: Garment,
  side: 1 | -1,
  length: number,
  bent: (nodes: readonly Node[]) => Node[],
  design: TightsDesign,
): Painted[] => {
  const { bright, ink, sheen, depth } = garment.cloth;
  const { outer, inner, y } = edges(length, design.thick);
  const shares = [0, 0.3, 0.6, 0.9, 1.08];
  const run = (across: number): Node[] =>
    bent(
      shares.map(
        (share): Node => [side * lerp(inner(Math.min(1, share)), outer(Math.min(1, share)), across), y(share)],
      ),
    );
  const knee = kneeAt(length);
  const marks: Painted[] = [
    garment.plane(run(side === 1 ? 0.4 : 0.6), design.sheer ? 2 : 1.7, bright, (design.sheer ? 0.6 : 0.4) * sheen),
    garment.plane(run(0.95), 1.5, ink, 0.42 * depth),
    garment.plane(run(0.05), 1.3, ink, 0.4 * depth),
    garment.fold(
      bent([
        [side * outer(0.42), knee - 2],
        [side * 9, knee],
        [side * 6, knee - 0.6],
      ]),
      -side * 1.2,
      0.6,
    ),
    garment.fold(
      bent([
        [side * inner(0.5), knee + 4],
        [side * 7.4, knee + 5.4],
        [side * 10, knee + 4.4],
      ]),
      side * 1.1,
      0.5,
    ),
    garment.fold(
      bent([
        [side * outer(1), length - 15],
        [side * 9, length - 14],
        [side * 6, length - 15],
      ]),
      -side * 1,
      0.7,
    ),
    garment.fold(
      bent([
        [side * 1, RISE + 3],
        [side * 6, RISE + 7],
        [side * 11, RISE + 7],
      ]),
      side * 1.3,
      0.5,
    ),
    shape(
      bent([
        [side * 2, length - 4.4],
        [side * 9, length - 5.6],
        [side * 16, length - 4],
        [side * 14, length + 3],
        [side * 4, length + 3],
      ]),
      ink,
      design.sheer ? 0.4 : 0.12,
    ),
  ];
  if (design.ribs) {
    const edge = (across: number): Node[] => [
      [side * lerp(0, 13.4, across), 4],
      [side * lerp(0.2, 17, across), 20],
      ...run(across),
    ];
    const count = garment.small ? 4 : 11;
    marks.push(linesBetween(edge(0.02), edge(0.98), count, 0.22, ink, 0.26));
    if (!garment.small) marks.push(linesBetween(edge(0.02), edge(0.98), count, 0.2, bright, 0.42, 0.03, 1.03));
  }
  return marks;
};

/** Both legs, the under one first. */
export const drawLegs = (garment: Garment, length: number, design: TightsDesign): void => {
  const legs = legsOf(garment, design);
  const outlines = legs.map((leg) => legOutline(leg, length, design));
  legs.forEach((leg, index) => {
    const [outline = [], below = []] = [outlines[index], outlines[index - 1]];
    const bent = (nodes: readonly Node[]): Node[] => swung(nodes, leg, length);
    const crossing =
      index > 0 && design.sheer ? [group([shape(below, garment.cloth.ink, 0.24)], { clip: curvePath(below) })] : [];
    garment.panel(outline, {
      cast: index > 0 ? (design.sheer ? 0.4 : 0.8) : 0,
      wobble: 0.06,
      edge: 1,
      weave: !design.sheer,
      inner: [...legTone(garment, leg.side, length, bent, design), ...crossing],
    });
  });
};
