import type { Detail, Drawing, DrawnPiece } from '../drawing.ts';
import { plainCloth } from '../fabric/index.ts';
import { corner, ellipsePath, Garment, line, type Node, oklch, shape, stitch, tone } from '../kit/index.ts';
import { points } from '../kit/points.ts';
import { metalShape } from './metal.ts';

const STEEL = '#b4b3ae';

/** Laid straight: the buckle end above, the end with holes below. The strap is the piece's own cloth. */
export const watch = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  const { cloth, small } = garment;
  const linked = cloth.surface === 'metal';
  const metal = linked ? cloth.ground : (cloth.accents[0] ?? STEEL);
  const dial = (linked ? cloth.accents[0] : cloth.accents[1]) ?? '#f1eadb';
  const strapCloth = linked ? plainCloth(metal, 'metal', detail) : cloth;
  const half = (y: number): number => 1.05 - 0.16 * Math.min(1, Math.max(0, (Math.abs(y) - 2) / 7));
  const strap = (from: number, to: number, tip: boolean): void => {
    const side = Math.sign(to);
    const nodes: Node[] = tip
      ? [
          corner(-half(from), from),
          corner(half(from), from),
          [half(to), to - side * 1.2],
          [0, to],
          [-half(to), to - side * 1.2],
        ]
      : [corner(-half(from), from), corner(half(from), from), corner(half(to), to), corner(-half(to), to)];
    const edge = (x: number): Node[] => [
      [x * half(from), from + side * 0.3],
      [x * half(to), to - side * 1],
    ];
    garment.panel(nodes, {
      cloth: strapCloth,
      wobble: 0.02,
      edge: 0.25,
      inner: linked
        ? [
            line(
              Array.from({ length: small ? 7 : 12 }, (_, i) => {
                const y = from + ((to - from) * (i + 0.5)) / (small ? 7 : 12);
                return `M-1.2 ${y.toFixed(2)}L1.2 ${y.toFixed(2)}`;
              }).join(''),
              0.14,
              strapCloth.ink,
              0.8,
            ),
            line(`M-0.36 ${from}L-0.36 ${to}M0.36 ${from}L0.36 ${to}`, 0.12, strapCloth.ink, 0.6),
          ]
        : [
            garment.plane(
              [
                [-0.3, from],
                [-0.3, (from + to) / 2],
                [-0.3, to],
              ],
              0.4,
              cloth.bright,
              0.5,
            ),
            ...(small ? [] : [stitch(edge(-0.74), cloth.bright, 0.7), stitch(edge(0.74), cloth.bright, 0.7)]),
          ],
    });
  };
  strap(-1.7, -9.2, false);
  strap(1.7, 11.6, !linked);
  if (!linked) {
    garment.add(
      { path: 'M-1.35 -9.9L1.35 -9.9L1.35 -8.3L-1.35 -8.3Z', stroke: tone(metal, -0.3), width: 0.42, round: true },
      { path: 'M-1.35 -9.9L1.35 -9.9L1.35 -8.3L-1.35 -8.3Z', stroke: metal, width: 0.26, round: true },
      line(points('0 -9.8, 0 -8.2'), 0.2, tone(metal, -0.14)),
    );
    garment.panel(points('-1.15 -7.3!, 1.15 -7.3!, 1.15 -6.5!, -1.15 -6.5!'), {
      covers: false,
      wobble: 0.02,
      edge: 0.1,
      rim: false,
      weave: false,
    });
    garment.add(shape([5.6, 6.7, 7.8, 8.9].map((y) => ellipsePath([0, y], 0.17)).join(''), cloth.ink, 0.95));
  }
  for (const [x, y] of [
    [-1.35, -1.75],
    [1.35, -1.75],
    [-1.35, 1.75],
    [1.35, 1.75],
  ] as const)
    garment.add(metalShape(ellipsePath([x * 0.82, y], 0.27, 0.56, x * y > 0 ? -20 : 20), metal, 0.1));
  garment.add(metalShape('M1.9 -0.32L2.3 -0.32L2.3 0.32L1.9 0.32Z', metal, 0.12));
  garment.cover(points('0 -1.95, 1.4 -1.4, 1.95 0, 1.4 1.4, 0 1.95, -1.4 1.4, -1.95 0, -1.4 -1.4'));
  const marks = Array.from({ length: 12 }, (_, i) => {
    const a = (i * Math.PI) / 6;
    const [s, c] = [Math.sin(a), -Math.cos(a)];
    const inner = i % 3 === 0 ? 1.02 : 1.14;
    return `M${(s * inner).toFixed(3)} ${(c * inner).toFixed(3)}L${(s * 1.32).toFixed(3)} ${(c * 1.32).toFixed(3)}`;
  }).join('');
  const ink = oklch(dial).l > 0.55 ? '#2c2723' : '#efe8d8';
  garment.add(
    metalShape(ellipsePath([0, 0], 1.92), metal, 0.16),
    line(ellipsePath([0, 0], 1.72), 0.12, tone(metal, 0.2), 0.9),
    { path: ellipsePath([0, 0], 1.5), fill: dial, stroke: tone(metal, -0.3), width: 0.12 },
    line(marks, small ? 0.14 : 0.09, ink),
    line(points('0 0.25, -0.62 -0.62'), 0.17, ink),
    line(points('-0.1 0.3, 0.42 -1.06'), 0.12, ink),
    shape(ellipsePath([0, 0], 0.14), ink),
    shape('M-1.2 -0.5C-0.9 -1.1 -0.3 -1.35 0.3 -1.3L-0.5 0.1C-0.9 0.2 -1.2 -0.1 -1.2 -0.5Z', '#ffffff', 0.22),
  );
  return garment.finish();
};
