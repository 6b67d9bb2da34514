import { type Garment, type Node, type Painted, pen } from '../kit/index.ts';

/** How much broader the lines that tell a kind from its neighbours are in a drawing under 100 px. */
const SMALL = 2.3;

/** A pen stroke in the cloth's ink for a seam or edge that must still be seen in a small drawing. */
export const seamPen = (garment: Garment, nodes: readonly Node[], width: number, opacity = 0.8, peak = 0.5): Painted =>
  pen(nodes, garment.small ? width * SMALL : width, garment.cloth.ink, opacity, peak);
