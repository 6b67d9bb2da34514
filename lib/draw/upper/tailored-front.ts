import { type Garment, lerp, mirrored, move, type Node, type Painted, pen, reversed, tone } from '../kit/index.ts';
import { blockBody } from './blocks.ts';
import { sideLine } from './body.ts';
import { breastWelt, flapPocket, weltPocket } from './cut-pockets.ts';
import { bodyShade } from './folds.ts';
import { openEdge } from './open-front.ts';
import { patchPocket } from './pockets.ts';
import { seamLine } from './seams.ts';
import type { UpperShape } from './shape.ts';
import { sleeveFrame } from './sleeve-frame.ts';
import type { TailoredDesign } from './tailored.ts';
export const rows = (garment: Garment, buttons: NonNullable<TailoredDesign['buttons']>, shape: UpperShape): void => {
  const { cloth } = garment;
  const colour = buttons.colour ?? tone(cloth.ground, cloth.depth === 0.75 ? 0.12 : -0.22, 0.7);
  for (let i = 0; i < buttons.count; i++) {
    const y = buttons.from + i * buttons.gap;
    if (y > shape.length - 5) break;
    for (const x of buttons.rows) {
      garment.button(x + garment.jitter(0.08), y, buttons.radius, colour);
      if (!garment.small && x === buttons.rows[0])
        garment.add(
          pen(
            [
              [x - buttons.radius * 1.9, y + 0.1],
              [x - buttons.radius * 0.4, y],
            ],
            0.24,
            cloth.ink,
            0.7,
          ),
        );
    }
  }
};

export const frontNodes = (
  garment: Garment,
  shape: UpperShape,
  side: 1 | -1,
  design: TailoredDesign,
  open = false,
): Node[] => {
  const half = shape.neck / 2;
  const { length, hem } = shape;
  const { breakY, cutaway } = design;
  const over = side === 1 ? design.overlap : Math.max(1.2, design.overlap * 0.9);
  const s = (x: number, y: number, c?: 'corner'): Node => [side * x, y, c];
  const meets = side === 1 ? -over : over * 0.2;
  const outer = reversed(side === 1 ? sideLine(shape, design.scoop) : mirrored(sideLine(shape, design.scoop))).slice(
    0,
    -1,
  );
  const corner: Node[] = cutaway
    ? [
        [-side * over, length - cutaway * 1.9],
        [-side * (over - cutaway * 0.16), length - cutaway * 0.9],
        [-side * (over - cutaway * 0.6), length - cutaway * 0.24],
        s(cutaway * 0.9 - over, length + 0.3),
      ]
    : [[-side * (over + 0.3), length + 0.3, 'corner']];
  if (open) {
    const edge = openEdge(breakY, side);
    // a front that is swung out lifts its corner
    const low = length + (side === 1 ? -0.9 : 0.3);
    const beyond = [0.24, 0.38].filter((share) => hem * share > side * edge(length) + 4);
    return [
      s(half, -0.4, 'corner'),
      s(lerp(half, side * edge(breakY), 0.42), breakY * 0.46),
      [edge(breakY), breakY, 'corner'],
      [edge(lerp(breakY, length, 0.5)) + side * 0.4, lerp(breakY, length, 0.5)],
      [edge(length), low, 'corner'],
      ...beyond.map((share): Node => s(hem * share, length + 0.2 + garment.jitter(0.3))),
      ...outer,
    ];
  }
  return [
    s(half, -0.4, 'corner'),
    s(half * 0.6, breakY * 0.46),
    [meets, breakY, 'corner'],
    ...(side === -1 ? ([[over, breakY + 6]] as Node[]) : []),
    [-side * over, lerp(breakY, length, 0.5)],
    ...corner,
    s(hem * 0.24, length + 0.7 + garment.jitter(0.3)),
    s(hem * 0.38, length + 0.1 + garment.jitter(0.3)),
    ...outer,
  ];
};

export const frontShade = (garment: Garment, shape: UpperShape, side: 1 | -1, design: TailoredDesign): Painted[] => {
  const { cloth } = garment;
  const k = design.folds ?? 0.55;
  const marks = [...blockBody(garment, shape), ...bodyShade(garment, shape, k)];
  if (design.darts !== false) {
    const end = Math.min(shape.length - 2, design.pocketY ?? 52);
    marks.push(
      pen(
        [
          [side * 9.5, shape.armhole + 4],
          [side * 10.8, 36],
          [side * 11.6, end],
        ],
        0.26,
        cloth.ink,
        0.5,
      ),
    );
    marks.push(
      seamLine(
        garment,
        [
          [side * (shape.chest / 2 - 3), shape.armhole + 1],
          [side * (shape.waist / 2 - 4.6), 42],
          [side * (shape.hem / 2 - 6), shape.length],
        ],
        0.28,
      ),
    );
  }
  return marks;
};

export const pockets = (garment: Garment, shape: UpperShape, side: 1 | -1, design: TailoredDesign): void => {
  const y = Math.min(design.pocketY ?? 50, shape.length - 13);
  const x = side * shape.hem * 0.29;
  if (design.pockets === 'flap') flapPocket(garment, x, y, 14.5, 5, side);
  if (design.pockets === 'patch') patchPocket(garment, x, y, { width: 15, height: Math.min(17, shape.length - y - 3) });
  if (design.pockets === 'jetted')
    garment.add(
      pen(
        [
          [x - 7.2, y + side * 0.3],
          [x, y],
          [x + 7.2, y - side * 0.3],
        ],
        0.5,
        garment.cloth.ink,
        0.85,
        0.5,
      ),
      pen(
        [
          [x - 7.2, y + 0.6 + side * 0.3],
          [x, y + 0.6],
          [x + 7.2, y + 0.6 - side * 0.3],
        ],
        0.4,
        garment.cloth.bright,
        0.6,
        0.5,
      ),
    );
  if (design.pockets === 'welt') weltPocket(garment, x, y + 6, 16, 3.4, side * 14);
  if (design.pockets === 'slant') weltPocket(garment, x, y, 13, 2.6, side * 52);
  if (design.breast && side === 1) {
    if (design.breast === 'welt') breastWelt(garment, shape.chest * 0.27, 23.5);
    else patchPocket(garment, shape.chest * 0.26, 22.5, { width: 10.5, height: 11.5 });
  }
};

export const cuffButtons = (garment: Garment, shape: UpperShape, side: 1 | -1, over: boolean, count: number): void => {
  const f = sleeveFrame(shape, side, over);
  const colour = tone(garment.cloth.ground, garment.cloth.depth === 0.75 ? 0.12 : -0.22, 0.7);
  for (let i = 0; i < count; i++) {
    const [x, y] = move(move(f.wristOut, f.fore, -2.6 - i * 2.1), f.acrossFore, 1.5);
    garment.button(x, y, 0.7, colour);
  }
};
