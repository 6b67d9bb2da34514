import type { Detail, Drawing, DrawnPiece } from '../drawing.ts';
import {
  curvePath,
  ellipsePath,
  Garment,
  group,
  line,
  mirrored,
  type Node,
  offsetLine,
  pen,
  resample,
  sampleCurve,
  shape,
  tone,
} from '../kit/index.ts';
import { points } from '../kit/points.ts';

/** Right-hand rim, seen from the front; the left one mirrors it. */
const SQUARE = points(
  '0.72 -1.2, 1.05 -2.2, 2.4 -2.62, 5.2 -2.65, 7.2 -2.5!, 7.35 -1.5, 6.95 0.4, 5.9 1.9, 4.1 2.4, 2.3 1.9, 1.15 0.4',
);
const ROUND = points(
  '1 -0.5, 1.45 -1.75, 2.7 -2.5, 4.1 -2.55, 5.5 -2, 6.25 -0.7, 6.2 0.6, 5.4 1.9, 4 2.45, 2.5 2.2, 1.4 1.1',
);

const shrink = (nodes: readonly Node[], by: number): Node[] => {
  const run = sampleCurve(nodes, true, 4).slice(0, -1);
  const ring = [...run, ...run.slice(0, 2)];
  return offsetLine(ring, by)
    .slice(1, -1)
    .filter((_, i) => i % 2 === 0)
    .map((p): Node => [p[0], p[1]]);
};

/** An arm from the hinge back over the ear, seen from the front and above. */
const arm = (garment: Garment, side: -1 | 1, hinge: number, rise: number, width: number): void => {
  const { cloth } = garment;
  const nodes = points(
    `${hinge} ${rise}, ${hinge + 0.12} -4, ${hinge - 0.25} -6.2, ${hinge - 1} -7.8, ${hinge - 1.9} -8.7`,
  );
  const run = resample(sampleCurve(side < 0 ? mirrored(nodes) : nodes), 12);
  const body = [
    ...offsetLine(run, (t) => width * (0.5 + 0.12 * t)),
    ...offsetLine(run, (t) => -width * (0.5 + 0.12 * t)).reverse(),
  ].map((p): Node => [p[0], p[1]]);
  garment.cover(body);
  const path = curvePath(body);
  garment.add({ path, fill: cloth.ground, stroke: cloth.ink, width: 0.14, round: true });
  for (const tile of cloth.tiles) garment.add(shape(path, garment.tilePaint(tile)));
  garment.add(
    pen(
      offsetLine(run, -width * 0.2 * side)
        .filter((_, i) => i % 3 === 0)
        .map((p): Node => [p[0], p[1]]),
      width * 0.34,
      cloth.bright,
      0.7,
      0.4,
    ),
  );
};

interface Frames {
  readonly rim: readonly Node[];
  readonly thickness: number;
  /** Where the arms are hinged, from the middle of the bridge. */
  readonly hinge: number;
  readonly rise: number;
  readonly bridge: string;
  /** Breadth of the bridge, times the thickness of the rims. */
  readonly bridgeBreadth: number;
  readonly lens: string;
  readonly clear: boolean;
}

const frames = (garment: Garment, style: Frames): void => {
  const { cloth, small } = garment;
  const { rim, thickness, hinge, lens } = style;
  arm(garment, -1, hinge, style.rise, Math.max(0.34, thickness * 0.8));
  arm(garment, 1, hinge, style.rise, Math.max(0.34, thickness * 0.8));
  const bridge = points(style.bridge);
  garment.add(
    line(bridge, thickness * style.bridgeBreadth + 0.2, cloth.ink),
    line(bridge, thickness * style.bridgeBreadth, cloth.ground),
    pen(
      bridge.map(([x, y]): Node => [x, y - 0.12]),
      thickness * 0.4,
      cloth.bright,
      0.8,
      0.5,
    ),
  );
  for (const side of [-1, 1] as const) {
    const outer = side < 0 ? mirrored(rim) : [...rim];
    const inner = shrink(rim, thickness).map(([x, y]): Node => [x * side, y]);
    const lensPath = curvePath(inner);
    garment.panel(outer, { edge: 0.16, wobble: 0.02, rim: false });
    garment.add(
      { path: lensPath, fill: style.clear ? '#ece6d8' : lens, stroke: cloth.ink, width: 0.16 },
      group(
        style.clear
          ? [
              shape(lensPath, lens, 0.2),
              pen(
                [
                  [side * 3.8 - 1.6, 1.2],
                  [side * 3.8 - 0.2, -0.4],
                  [side * 3.8 + 1.2, -2.1],
                ],
                0.9,
                '#ffffff',
                0.75,
                0.5,
              ),
              pen(
                [
                  [side * 3.8 - 0.4, 1.7],
                  [side * 3.8 + 0.8, 0.3],
                  [side * 3.8 + 1.8, -1],
                ],
                0.34,
                '#ffffff',
                0.6,
                0.5,
              ),
              line(lensPath, 0.7, '#8b8478', 0.22),
            ]
          : [
              ...(small
                ? []
                : [
                    garment.plane(
                      [
                        [side * 4 - 3.2, 1.6],
                        [side * 4, 1.9],
                        [side * 4 + 3.2, 1.4],
                      ],
                      1.3,
                      tone(lens, 0.2),
                      0.7,
                    ),
                  ]),
              garment.plane(
                [
                  [side * 4 - 3, -2.2],
                  [side * 4, -2.4],
                  [side * 4 + 3, -2.2],
                ],
                1,
                tone(lens, -0.16),
                0.8,
              ),
              pen(
                [
                  [side * 4 - 1.9, 0.2],
                  [side * 4 - 1, -1.1],
                  [side * 4 + 0.5, -1.7],
                ],
                0.5,
                '#ffffff',
                0.4,
                0.5,
              ),
            ],
        { clip: lensPath },
      ),
      pen(
        outer.slice(1, 5).map(([x, y]): Node => [x, y + 0.2]),
        Math.min(0.3, thickness * 0.5),
        cloth.bright,
        0.85,
        0.5,
      ),
    );
    if (!small && thickness > 0.4) garment.add(shape(ellipsePath([side * (hinge - 0.5), -2.02], 0.16, 0.1), '#d9cda9'));
  }
};

export const sunglasses = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  frames(garment, {
    rim: SQUARE,
    thickness: 0.56,
    bridgeBreadth: 1.8,
    hinge: 7,
    rise: -1.9,
    bridge: '-1.2 -1.45, 0 -1.85, 1.2 -1.45',
    lens: garment.cloth.accents[0] ?? '#45443c',
    clear: false,
  });
  return garment.finish();
};

/** Round, thin, clear: a metal frame unless the piece says otherwise. */
export const spectacles = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  const thin = piece.fabric === 'metal';
  frames(garment, {
    rim: ROUND,
    thickness: thin ? 0.22 : 0.36,
    bridgeBreadth: 1.25,
    hinge: 6,
    rise: -0.9,
    bridge: '-1.15 -0.9, 0 -1.45, 1.15 -0.9',
    lens: '#b9c4c6',
    clear: true,
  });
  return garment.finish();
};

/** A band padded all round, with a knot on top. */
export const hairBand = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  const { cloth } = garment;
  const run = resample(
    sampleCurve(points('-5.4 6.4, -7 2.4, -6.4 -2.6, -3.4 -5.8, 0 -6.7, 3.4 -5.8, 6.4 -2.6, 7 2.4, 5.4 6.4')),
    32,
  );
  const half = (t: number): number => 0.4 + 1.5 * Math.sin(Math.PI * t) ** 1.3;
  const every = (line_: readonly (readonly [number, number])[]): Node[] =>
    line_.filter((_, i) => i % 2 === 0).map((p): Node => [p[0], p[1]]);
  const band: Node[] = [...every(offsetLine(run, half)), ...every(offsetLine(run, (t) => -half(t))).reverse()];
  const along = (share: number, from: number, to: number): Node[] =>
    offsetLine(run, (t) => half(t) * share)
      .slice(from, to)
      .filter((_, i) => i % 3 === 0)
      .map((p): Node => [p[0], p[1]]);
  garment.panel(band, {
    edge: 0.6,
    wobble: 0.04,
    inner: [
      garment.plane(along(-0.35, 3, 18), 0.7, cloth.bright, 0.8 * cloth.sheen),
      garment.plane(along(0.55, 4, 29), 0.7, cloth.ink, 0.6),
      garment.fold(along(-0.1, 11, 16), 0.6, 0.8),
      garment.fold(along(0.2, 17, 24).reverse(), 0.6, 0.8),
    ],
  });
  garment.panel(points('-1.3 -8.6, 0.2 -9.2, 1.5 -8.5, 1.9 -6.6, 1.4 -4.6, 0 -4.1, -1.5 -4.7, -1.9 -6.7'), {
    edge: 0.5,
    cast: 0.4,
    wobble: 0.05,
    inner: [
      garment.fold(points('-1 -8.6, -0.6 -6.6, -1 -4.6'), 0.6, 1),
      garment.fold(points('0.7 -8.6, 0.9 -6.6, 0.5 -4.5'), 0.6, 1),
      garment.plane(points('-0.4 -8, -0.1 -6.6, -0.3 -5'), 0.5, cloth.bright, 0.7),
    ],
  });
  return garment.finish();
};
