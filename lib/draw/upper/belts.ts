import { type Garment, line, type Node, pen, rectanglePath, stitch } from '../kit/index.ts';
import { halfWidthAt } from './body.ts';
import type { UpperShape } from './shape.ts';

/** A belt across the body at a height, held by loops; buckled, or tied with hanging ends. */
export const belt = (
  garment: Garment,
  shape: UpperShape,
  y: number,
  width: number,
  closed: 'buckle' | 'tied',
): void => {
  const { cloth } = garment;
  const half = halfWidthAt(shape, y) + 0.4;
  const h = width / 2;
  garment.add(
    garment.plane(
      [
        [-half, y + h + 0.6],
        [0, y + h + 1.1],
        [half, y + h + 0.6],
      ],
      1.3,
      cloth.ink,
      0.4,
    ),
  );
  garment.panel(
    [
      [-half, y - h, 'corner'],
      [0, y - h + 0.7],
      [half, y - h, 'corner'],
      [half + 0.2, y + h, 'corner'],
      [0, y + h + 0.8],
      [-half - 0.2, y + h, 'corner'],
    ],
    {
      turn: 90,
      edge: 0.4,
      wobble: 0.08,
      cast: 0.4,
      inner: garment.small
        ? []
        : [-1, 1].map((side) =>
            stitch(
              [
                [-half, y + side * (h - 0.5)],
                [0, y + 0.7 + side * (h - 0.5)],
                [half, y + side * (h - 0.5)],
              ],
              cloth.ink,
              0.5,
            ),
          ),
    },
  );
  for (const side of [-1, 1]) {
    const x = side * half * 0.7;
    garment.panel(
      [
        [x - 0.7, y - h - 0.9, 'corner'],
        [x + 0.7, y - h - 0.9, 'corner'],
        [x + 0.7, y + h + 1.3, 'corner'],
        [x - 0.7, y + h + 1.3, 'corner'],
      ],
      { covers: false, loose: true, edge: 0.3, wobble: 0.05, cast: 0.3 },
    );
  }
  if (closed === 'buckle') buckle(garment, -1, y + 0.6, width);
  else knot(garment, 0.6, y + 0.6, width);
};

const buckle = (garment: Garment, x: number, y: number, width: number): void => {
  const { cloth } = garment;
  const h = width / 2 + 0.9;
  const end = x + 15;
  garment.panel(
    [
      [x, y - width / 2 + 0.2, 'corner'],
      [end - 2, y - width / 2 + 1, 'corner'],
      [end, y + 1.4],
      [end - 2, y + width / 2 + 1.1, 'corner'],
      [x, y + width / 2, 'corner'],
    ],
    { covers: false, loose: true, turn: 90, edge: 0.4, wobble: 0.06, cast: 0.6 },
  );
  for (const [away, stroke, w] of [
    [0.2, cloth.ink, 1],
    [0, '#5b4632', 0.9],
  ] as const)
    garment.add({ path: rectanglePath(x - 2.6 + away, y - h + away, 5.2, h * 2), stroke, width: w, round: true });
  garment.add(
    line(
      [
        [x - 2.2, y],
        [x + 2.4, y + 0.2],
      ],
      0.5,
      '#8a6f52',
    ),
  );
};

const knot = (garment: Garment, x: number, y: number, width: number): void => {
  for (const [dx, long] of [
    [-4.4, 27],
    [3, 31],
  ] as const) {
    const w = width * 0.46;
    garment.panel(
      [
        [x - w * 0.5, y, 'corner'],
        [x + dx * 0.5 - w, y + long * 0.45],
        [x + dx - w * 0.9, y + long, 'corner'],
        [x + dx + w * 0.9, y + long + 0.6, 'corner'],
        [x + dx * 0.6 + w, y + long * 0.45],
        [x + w * 0.6, y, 'corner'],
      ],
      {
        edge: 0.5,
        cast: 0.7,
        turn: -dx * 2,
        wobble: 0.08,
        inner: [
          garment.fold(
            [
              [x, y + 1],
              [x + dx * 0.5, y + long * 0.4],
              [x + dx, y + long - 2],
            ],
            0.9,
            0.6,
          ),
        ],
      },
    );
  }
  garment.panel(
    [
      [x - width * 0.5, y - width * 0.62],
      [x + width * 0.4, y - width * 0.7],
      [x + width * 0.56, y + width * 0.5],
      [x - width * 0.4, y + width * 0.66],
    ],
    {
      edge: 0.6,
      cast: 0.6,
      wobble: 0.06,
      turn: 40,
      inner: [
        garment.fold(
          [
            [x - 0.6, y - width * 0.5],
            [x, y],
            [x - 0.8, y + width * 0.5],
          ],
          1,
          0.9,
        ),
      ],
    },
  );
};

/** A strap on the shoulder with a button near the neck. */
export const epaulette = (garment: Garment, shape: UpperShape, side: 1 | -1): void => {
  const s = (x: number, y: number, c?: 'corner'): Node => [side * x, y, c];
  const inner = shape.neck / 2 + 3.6;
  const outer = shape.shoulder / 2;
  const at = (x: number) => 0.2 + ((x - shape.neck / 2) / (outer - shape.neck / 2)) * shape.slope;
  garment.panel(
    [
      s(inner + 1, at(inner) + 0.3, 'corner'),
      s(inner, at(inner) + 1.8),
      s(inner + 1.4, at(inner) + 3.2, 'corner'),
      s(outer - 0.2, at(outer) + 3.8, 'corner'),
      s(outer + 0.2, at(outer), 'corner'),
    ],
    {
      covers: false,
      loose: true,
      edge: 0.4,
      wobble: 0.05,
      cast: 0.4,
      turn: side * 70,
    },
  );
  garment.button(side * (inner + 2), at(inner) + 1.9, 0.6, garment.cloth.deep);
};

/** A cord drawn through a casing at a height: parkas, windbreakers. */
export const drawcord = (garment: Garment, shape: UpperShape, y: number): void => {
  const { cloth } = garment;
  const half = halfWidthAt(shape, y);
  garment.add(
    ...[-1.1, 1.1].map((away) =>
      pen(
        [
          [-half, y + away],
          [0, y + away + 0.7],
          [half, y + away],
        ],
        0.28,
        cloth.ink,
        0.6,
        0.5,
      ),
    ),
  );
  const count = garment.small ? 4 : 11;
  // gathers end with the cloth
  const lowest = shape.length - 0.5;
  for (let i = 0; i < count; i++) {
    const x = -half + (half * 2 * (i + 0.5)) / count;
    garment.add(
      garment.fold(
        [
          [x, y + 1],
          [x + garment.jitter(0.5), Math.min(y + 4, lowest - 1.2)],
          [x + garment.jitter(1), Math.min(y + 7 + garment.jitter(2), lowest)],
        ],
        0.8,
        0.6,
      ),
    );
  }
  for (const side of [-1, 1]) {
    const run: Node[] = [
      [side * 2.4, y + 0.6],
      [side * 2.9, y + 5],
      [side * (2.4 + garment.jitter(0.6)), y + 10.5],
    ];
    garment.add(
      line(run, 0.6, cloth.ink),
      line(run, 0.4, cloth.bright),
      pen(
        [
          [side * 2.4, y + 9.6],
          [side * 2.4, y + 11.6],
        ],
        1,
        cloth.ink,
        1,
        0.5,
      ),
    );
  }
};
