import { type Garment, group, type Node, type Painted, pen } from '../kit/index.ts';

/** How much broader the lines that tell a kind from its neighbours are in a drawing under 100 px. */
const SMALL = 2.3;
/** Cloth this weak in shade is so dark that ink alone hardly shows on it. */
const DARK = 0.75;

/**
 * A pen stroke in the cloth's ink for a seam or edge that must still be seen in a small drawing; on dark cloth the
 * light beside the seam carries it.
 */
export const seamPen = (
  garment: Garment,
  nodes: readonly Node[],
  width: number,
  opacity = 0.8,
  peak = 0.5,
): Painted => {
  const { ink, bright, depth } = garment.cloth;
  const broad = garment.small ? width * SMALL : width;
  const stroke = pen(nodes, broad, ink, opacity, peak);
  if (depth !== DARK) return stroke;
  const beside = nodes.map(([x, y, c]): Node => [x - broad * 0.85, y - broad * 0.3, c]);
  return group([stroke, pen(beside, broad * 0.7, bright, opacity * 0.6, peak)]);
};
