import { corner, type Garment, line, type Node, type Painted, pen, shape, stitch } from '../kit/index.ts';
import type { Leg } from './leg.ts';
import type { LegMeasures } from './leg-measures.ts';

/** The lower part of a colour-blocked piece in its second colour, from a seam at `y` down. */
export const blockBelow = (garment: Garment, y: number, half: number, bottom: number): Painted[] => {
  const colour = garment.blocked ? garment.cloth.accents[0] : undefined;
  if (colour === undefined) return [];
  const seam: Node[] = [corner(-half, y), [0, y + 1.6], corner(half, y)];
  return [
    shape([...seam, corner(half, bottom + 5), corner(-half, bottom + 5)], colour),
    ...weaveOver(garment, [...seam, corner(half, bottom + 5), corner(-half, bottom + 5)]),
    line(seam, 0.26, garment.cloth.ink, 0.7),
    ...(garment.small
      ? []
      : [
          stitch(
            seam.map(([x, v]): Node => [x, v - 0.6]),
            garment.cloth.ink,
            0.45,
          ),
        ]),
  ];
};

/** A panel down the side of a colour-blocked leg in the second colour. */
export const blockSide = (garment: Garment, leg: Leg, { band, length }: LegMeasures): Painted[] => {
  const colour = garment.blocked ? garment.cloth.accents[0] : undefined;
  if (colour === undefined) return [];
  const seam = leg.down(0.74, band - 1, length + 2, 5);
  const outside = [...leg.down(1.2, band - 1, length + 2, 5)].reverse();
  return [
    shape([...seam, ...outside], colour),
    ...weaveOver(garment, [...seam, ...outside]),
    pen(seam, 0.3, garment.cloth.ink, 0.75, 0.5),
  ];
};

const weaveOver = (garment: Garment, nodes: readonly Node[]): Painted[] =>
  garment.cloth.tiles.filter(({ name }) => name !== 'print').map((tile) => shape(nodes, garment.tilePaint(tile)));
