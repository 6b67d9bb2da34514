import { type Garment, type line, type Node, pen, stitch, tone } from '../kit/index.ts';

/** A stitched line with its shadow: yokes, panels, princess seams. */
export const seamLine = (garment: Garment, nodes: readonly Node[], strength = 0.5): ReturnType<typeof pen> =>
  pen(nodes, garment.small ? 0.36 : 0.26, garment.cloth.ink, strength, 0.5);

export const topStitch = (garment: Garment, nodes: readonly Node[]): ReturnType<typeof line>[] =>
  garment.small ? [] : [stitch(nodes, tone(garment.cloth.ground, garment.cloth.depth < 0.6 ? -0.25 : 0.12), 0.8)];
