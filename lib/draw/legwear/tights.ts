import type { Detail, Drawing, DrawnPiece, Point } from '../drawing.ts';
import {
  clampLength,
  corner,
  curvePath,
  type DrawnLength,
  Garment,
  group,
  lerp,
  linesBetween,
  type Node,
  type Painted,
  pen,
  shape,
  turned,
} from '../kit/index.ts';

const SHORTEST = 70;
const LONGEST = 118;
const USUAL = 104;

/** Length of tights from the waist to the toe. */
export const tightsLength = (piece: Pick<DrawnPiece, 'lengthCm'>): DrawnLength =>
  clampLength(piece.lengthCm, USUAL, SHORTEST, LONGEST);

/** What makes one kind of tights different from another. */
export interface TightsDesign {
  /** Thickness added to every width. */
  readonly thick: number;
  readonly ribs: boolean;
  /** Seen through: a deeper panty and toe, and a darker place where the legs cross. */
  readonly sheer: boolean;
  readonly band: number;
}

const RISE = 26;

/** Tights laid out, one foot over the other. */
export const drawTights = (piece: DrawnPiece, detail: Detail, design: TightsDesign): Drawing => {
  const garment = new Garment(piece, detail);
  const length = tightsLength(piece).cm;
  const swing = design.sheer ? 11 + garment.jitter(1.2) : 3 + garment.jitter(1);
  const legs = [
    { side: 1, turn: design.sheer ? 1.2 : -swing * 0.4 },
    { side: -1, turn: design.sheer ? -swing : swing * 0.4 },
  ] as const;
  const half = 13.4 + design.thick;
  garment.inside([corner(-half + 0.4, 0.6), [0, -0.8], corner(half - 0.4, 0.6), corner(0, 3)], {
    fill: garment.cloth.deep,
  });
  const outlines = legs.map(({ side, turn }) => legOutline(side, turn, length, design));
  legs.forEach(({ side, turn }, i) => {
    const bent = (nodes: readonly Node[]): Node[] => swung(nodes, side, turn);
    const outline = outlines[i] ?? [];
    const crossing =
      i === 1 && design.sheer
        ? [group([shape(outlines[0] ?? [], garment.cloth.ink, 0.24)], { clip: curvePath(outlines[0] ?? []) })]
        : [];
    garment.panel(outline, {
      cast: i === 1 ? 0.4 : 0,
      wobble: 0.06,
      edge: 1,
      weave: !design.sheer,
      inner: [...legTone(garment, side, length, bent, design), ...crossing],
    });
  });
  panty(garment, design, half);
  return garment
    .anchor('waist', [0, 1])
    .anchor('left waist', [-half, 0])
    .anchor('right waist', [half, 0])
    .anchor('hem', [0, length])
    .finish();
};

/** Turns a leg about its hip; the panty stays where it is. */
const swung = (nodes: readonly Node[], side: 1 | -1, degrees: number): Node[] =>
  nodes.map(([x, y, c]) => {
    const share = Math.max(0, Math.min(1, (y - 20) / 22));
    const [a, b]: Point = turned([x, y], degrees * share, [side * 7, 22]);
    return [a, b, c];
  });

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

const legOutline = (side: 1 | -1, turn: number, length: number, { thick }: TightsDesign): Node[] => {
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
    side,
    turn,
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
  const knee = y(0.42);
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

/** Deeper knit over the hips, centre seam, gusset, and the elastic band. */
const panty = (garment: Garment, design: TightsDesign, half: number): void => {
  const { ink, bright } = garment.cloth;
  if (design.sheer)
    garment.add(
      shape(
        [
          corner(-half, 2),
          corner(half, 2),
          [half + 2.4, 10],
          [half + 3.7, 19],
          [9, 26],
          corner(0.4, RISE + 2),
          [-9, 26],
          [-half - 3.7, 19],
          [-half - 2.4, 10],
        ],
        ink,
        0.22,
      ),
      pen(
        [
          [-half - 3.6, 19],
          [-9, 26],
          [0, RISE + 2],
          [9, 26],
          [half + 3.6, 19],
        ],
        0.24,
        ink,
        0.6,
        0.5,
      ),
    );
  garment.add(
    pen(
      [
        [0, design.band],
        [0.2, 15],
        [0, RISE + 1],
      ],
      0.3,
      ink,
      0.8,
      0.5,
    ),
  );
  if (!garment.small)
    garment.add(
      pen(
        [
          [0.5, design.band],
          [0.7, 15],
          [0.5, RISE],
        ],
        0.16,
        bright,
        0.5,
        0.5,
      ),
    );
  const edge = (y: number): Node[] => [corner(-half - 0.1, y), [0, y + 0.9], corner(half + 0.1, y)];
  const column = (side: number): Node[] => [
    [side * half, -0.4],
    [side * (half + 0.1), design.band + 1],
  ];
  garment.panel([...edge(0), ...[...edge(design.band)].reverse()], {
    edge: 0.5,
    cast: 0.4,
    wobble: 0.05,
    weave: false,
    inner: [
      linesBetween(column(-1), column(1), garment.small ? 10 : 34, 0.2, ink, 0.36),
      ...(garment.small ? [] : [linesBetween(column(-1), column(1), 34, 0.16, bright, 0.5, 0.01, 1.01)]),
    ],
  });
};
