import { type Garment, line, type Node, offsetLine, resample, reversed, sampleCurve, stitch } from '../kit/index.ts';

/** Straps up to this width are cords, centimetres. */
export const CORD = 1.4;

/** A strap along a line; thin ones are cords, wide ones cloth with stitched edges. */
export const strap = (garment: Garment, nodes: readonly Node[], width: number, behind = false): void => {
  const { cloth } = garment;
  const thin = width <= CORD;
  const points = resample(sampleCurve(nodes), 8);
  const side = (by: number): Node[] =>
    offsetLine(points, by).map(
      ([x, y], i, all): Node => (i === 0 || (thin && i === all.length - 1) ? [x, y, 'corner'] : [x, y]),
    );
  const ring = [...side(width / 2), ...reversed(side(-width / 2))];
  if (!thin) {
    garment.panel(ring, {
      edge: 0.35,
      wobble: 0.04,
      rim: !behind,
      ...(behind && { fill: cloth.shade, weave: false }),
      inner:
        garment.small || behind
          ? []
          : [side(width / 2 - 0.4), side(-width / 2 + 0.4)].map((edge) => stitch(edge, cloth.ink, 0.5)),
    });
    return;
  }
  garment.cover(ring);
  garment.add(
    line(
      nodes.map(([x, y, c]): Node => [x + 0.1, y + 0.14, c]),
      width + 0.24,
      cloth.ink,
    ),
    line(nodes, width, behind ? cloth.shade : cloth.ground),
  );
  if (!behind && !garment.small) garment.add(line(side(width * 0.2), width * 0.28, cloth.bright, 0.6));
};
