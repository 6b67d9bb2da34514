import { corner, type Garment, linesBetween, type Node, pen, shape } from '../kit/index.ts';
import { RISE, type TightsDesign } from './tights-leg.ts';

/** Deeper knit over the hips, centre seam, gusset, and the elastic band. */
export const panty = (garment: Garment, design: TightsDesign, half: number): void => {
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
