import type { Point } from '../drawing.ts';
import type { Cloth } from '../fabric/index.ts';
import {
  cornerAt,
  direction,
  type Garment,
  lerp,
  line,
  move,
  type Node,
  nodeAt,
  type Painted,
  pen,
  reversed,
  ribsBetween,
  stitch,
  towards,
} from '../kit/index.ts';
import { sleeveBaffles } from './baffles.ts';
import type { UpperShape } from './shape.ts';
import { sleeveStripes } from './stripes.ts';

export type Side = 1 | -1;
export type Cuff = 'none' | 'hem' | 'rib' | 'shirt' | 'barrel' | 'band' | 'turned' | 'elastic' | 'tab';

export interface SleeveOptions {
  readonly cloth?: Cloth;
  readonly cuff?: Cuff;
  /** Height of the cuff, centimetres. */
  readonly cuffHeight?: number;
  /** Laid over the body: drawn last, with its own shade, forearm turned in. */
  readonly over?: boolean;
  /** Vertical ribs down the sleeve. */
  readonly ribs?: number;
  /** Fullness at the head (puff) and above the cuff (bishop), centimetres. */
  readonly puff?: number;
  readonly bishop?: number;
  readonly cuffCloth?: Cloth;
  readonly inner?: (frame: SleeveFrame) => readonly Painted[];
  /** Strength of the folds, 1 being usual. */
  readonly folds?: number;
  /** Height of the baffles of a down-filled sleeve, centimetres. */
  readonly baffles?: number;
}

/** The skeleton of a sleeve: shoulder, underarm, outer and inner points at elbow and wrist, and their directions. */
export interface SleeveFrame {
  readonly shoulder: Point;
  readonly underarm: Point;
  readonly elbowOut: Point;
  readonly elbowIn: Point;
  readonly wristOut: Point;
  readonly wristIn: Point;
  readonly upper: Point;
  readonly fore: Point;
  /** Unit vectors across the sleeve, from the outer to the inner edge. */
  readonly acrossUpper: Point;
  readonly acrossFore: Point;
  /** Degrees the grain is turned. */
  readonly turnUpper: number;
  readonly turnFore: number;
}

export const sleeveFrame = (shape: UpperShape, side: Side, bent = false): SleeveFrame => {
  const sleeve = shape.sleeve ?? { length: 1, elbow: 1, cuff: 1, upper: 30, fore: 20 };
  const upperAngle = bent ? 25 : sleeve.upper + (side === 1 ? 3 : 0);
  const foreAngle = bent ? -16 : sleeve.fore + (side === 1 ? 4 : 0);
  const upper = direction(upperAngle);
  const fore = direction(foreAngle);
  const acrossUpper: Point = [-upper[1], upper[0]];
  const acrossFore: Point = [-fore[1], fore[0]];
  const shoulder: Point = [shape.shoulder / 2, shape.slope];
  const elbowOut = move(shoulder, upper, sleeve.length * 0.52);
  const free = move(elbowOut, fore, sleeve.length * 0.48);
  // a short sleeve on a wide body must still clear the underarm
  const clear = sleeve.length < 30 ? (shape.chest / 2 + 2.2 - (free[0] + acrossFore[0] * sleeve.cuff)) / fore[0] : 0;
  const wristOut = move(free, fore, Math.max(0, Math.min(12, clear)));
  const m = (p: Point): Point => (side === 1 ? p : [-p[0], p[1]]);
  return {
    shoulder: m(shoulder),
    underarm: m([shape.chest / 2, shape.armhole]),
    elbowOut: m(elbowOut),
    elbowIn: m(move(elbowOut, acrossUpper, sleeve.elbow)),
    wristOut: m(wristOut),
    wristIn: m(move(wristOut, acrossFore, sleeve.cuff)),
    upper: m(upper),
    fore: m(fore),
    acrossUpper: m(acrossUpper),
    acrossFore: m(acrossFore),
    turnUpper: -side * ((upperAngle + foreAngle) / 2),
    turnFore: -side * foreAngle,
  };
};

/** Sets in one sleeve. Draw both before the body, or the bent one after it. */
export const drawSleeve = (garment: Garment, shape: UpperShape, side: Side, options: SleeveOptions = {}): void => {
  if (shape.sleeve === undefined) return;
  const f = sleeveFrame(shape, side, options.over);
  const cloth = options.cloth ?? garment.cloth;
  const cuff = options.cuff ?? 'hem';
  const gathered = cuff === 'rib' || cuff === 'shirt' || cuff === 'barrel' || cuff === 'band' || cuff === 'elastic';
  const height = gathered || cuff === 'turned' ? (options.cuffHeight ?? 5) : 0;
  const bulge = (gathered ? 0.7 : 0) + (options.bishop ?? 0);
  const puff = options.puff ?? 0;
  const short = shape.sleeve.length < 30;
  const outEnd = move(f.wristOut, f.fore, gathered ? -height : 0);
  const inEnd = move(f.wristIn, f.fore, gathered ? -height : 0);
  const spread = options.bishop ? options.bishop * 0.5 : 0;
  const outHem = move(outEnd, f.acrossFore, -spread);
  const inHem = move(inEnd, f.acrossFore, spread);
  const head = move(f.shoulder, [-side * (options.over ? 0.9 : 2), options.over ? -0.15 : -0.2 - puff * 0.3]);
  const cap = move(move(f.shoulder, f.upper, Math.min(5, shape.sleeve.length * 0.2)), f.acrossUpper, -0.7 - puff);
  const outer: Node[] = [
    options.over ? cornerAt(head) : nodeAt(head),
    nodeAt(move(move(f.shoulder, f.upper, 1), f.acrossUpper, -0.3 - puff * 0.6)),
    nodeAt(cap),
    ...(short ? [] : [nodeAt(move(towards(cap, f.elbowOut, 0.55), f.acrossUpper, -0.2)), nodeAt(f.elbowOut)]),
    nodeAt(move(towards(f.elbowOut, outEnd, short ? 0.4 : 0.7), f.acrossFore, -bulge)),
    cornerAt(outHem),
  ];
  const inner: Node[] = [
    cornerAt(f.underarm),
    nodeAt(move(towards(f.underarm, f.elbowIn, 0.5), f.acrossUpper, short ? 0 : -0.3)),
    ...(short ? [] : [nodeAt(f.elbowIn)]),
    nodeAt(move(towards(f.elbowIn, inEnd, 0.7), f.acrossFore, bulge * 0.8)),
    cornerAt(inHem),
  ];
  const sx = f.shoulder[0];
  const down = (k: number) => lerp(f.shoulder[1], f.underarm[1], k);
  const join: Node[] = options.over
    ? [
        [sx - side * 0.8, down(0.78)],
        [sx - side * 1.6, down(0.42)],
      ]
    : [
        [f.underarm[0] - side * 7, f.underarm[1] + 1.5],
        [sx - side * 6, down(0.25)],
      ];
  const hemEdge = move(towards(outHem, inHem, 0.5), f.fore, 0.4);
  if (options.over) garment.add(armShade(garment, f, shape, side));
  garment.panel([...outer, nodeAt(hemEdge), ...reversed(inner), ...join], {
    cloth,
    turn: f.turnUpper,
    shift: [0, 0.4 * side],
    round:
      side === 1
        ? { from: towards(f.elbowIn, f.elbowOut, -0.2), to: f.elbowOut, strength: 0.75 }
        : { from: f.elbowOut, to: towards(f.elbowIn, f.elbowOut, -0.2), strength: 0.75 },
    cast: options.over ? 0.6 : 0,
    knit: options.baffles === undefined && options.ribs === undefined,
    print: cloth.stripes === undefined,
    inner: [
      ...(options.inner?.(f) ?? []),
      ...(options.baffles ? sleeveBaffles(garment, f, shape.sleeve.length, options.baffles) : []),
      ...sleeveStripes(garment, cloth, f),
      ...(options.ribs ? ribMarks(garment, cloth, outer, inner, options.ribs) : []),
      ...sleeveFolds(garment, f, side, cloth, {
        short,
        gathered,
        strength: options.folds ?? 1,
        outEnd: outHem,
        inEnd: inHem,
      }),
      garment.plane(
        [nodeAt(f.shoulder), nodeAt(towards(f.shoulder, f.underarm, 0.5)), nodeAt(f.underarm)],
        1.5,
        cloth.ink,
        options.over ? 0.12 : 0.26 * cloth.depth,
      ),
    ],
  });
  drawCuff(garment, f, side, cuff, height, options.cuffCloth ?? cloth);
};

/** Shade an arm laid over the body throws on it. */
const armShade = (garment: Garment, f: SleeveFrame, shape: UpperShape, side: Side): Painted => {
  const from = towards(f.underarm, f.elbowIn, 0.35);
  const low = move(f.wristIn, f.fore, 1);
  const cuff = shape.sleeve?.cuff ?? 10;
  const run: Node[] = [nodeAt(from), nodeAt(f.elbowIn), nodeAt(low), nodeAt(move(low, f.acrossFore, -cuff * 0.8))];
  return {
    marks: (garment.small ? [2] : [3.2, 1.5]).map((width) =>
      line(
        run.map(([x, y]) => [x - side * 0.2, y + 0.3]),
        width,
        garment.cloth.ink,
        0.13,
      ),
    ),
  };
};

const ribMarks = (
  garment: Garment,
  cloth: Cloth,
  outer: readonly Node[],
  inner: readonly Node[],
  count: number,
): Painted[] => {
  // ribs run from the cap towards the cuff: the inner edge is followed from above the underarm so that they do not fan
  const start = outer[0] ?? [0, 0];
  const under = inner[0] ?? [0, 0];
  const across: Node[] = [[lerp(start[0], under[0], 0.9), lerp(start[1], under[1], 0.9)], ...inner.slice(1)];
  return [
    ribsBetween(outer, across, count, cloth, { width: 0.17, to: 1.2, small: garment.small, aside: [0.24, 0.06] }),
  ];
};

interface FoldFrame {
  readonly short: boolean;
  readonly gathered: boolean;
  readonly strength: number;
  readonly outEnd: Point;
  readonly inEnd: Point;
}

const sleeveFolds = (garment: Garment, f: SleeveFrame, side: Side, cloth: Cloth, frame: FoldFrame): Painted[] => {
  const k = frame.strength;
  const at = (t: number, along: number): Node => nodeAt(move(towards(f.elbowOut, f.elbowIn, t), f.upper, along));
  const fold = (width: number, strength: number, ...nodes: Node[]): Painted =>
    garment.fold(nodes, width * side, strength * k, 0.3, cloth);
  const underarm = [
    fold(
      1.9,
      0.8,
      nodeAt(move(f.underarm, f.upper, 1)),
      nodeAt(move(towards(f.underarm, f.shoulder, 0.3), f.upper, frame.short ? 2.4 : 4)),
      nodeAt(move(towards(f.underarm, f.shoulder, 0.62), f.upper, 3)),
    ),
  ];
  if (frame.short)
    return [
      ...underarm,
      fold(
        1.3,
        0.55,
        nodeAt(towards(f.wristOut, f.wristIn, 0.6)),
        nodeAt(move(towards(f.wristOut, f.wristIn, 0.55), f.fore, -4)),
        nodeAt(move(towards(f.wristOut, f.wristIn, 0.42), f.fore, -9)),
      ),
    ];
  const count = cloth.drape.folds;
  const folds: Painted[] = [
    garment.plane([at(0.62, -14), at(0.6, -2), at(0.55, 12)], 2.2, cloth.ink, 0.2 * cloth.depth),
    garment.plane([at(0.26, -16), at(0.25, 0), at(0.25, 14)], 1.5, cloth.bright, 0.3 * cloth.sheen),
    ...underarm,
    fold(1.7, 0.95, at(1.02, -2.5 + garment.jitter(0.8)), at(0.62, -0.6), at(0.22, -1.6)),
  ];
  if (count > 0.5) folds.push(fold(1.5, 0.75, at(1.02, 1.4), at(0.7, 2.4 + garment.jitter(0.6)), at(0.4, 2)));
  if (count > 0.75)
    folds.push(
      fold(
        1.4,
        0.55,
        nodeAt(move(f.underarm, f.upper, 5)),
        nodeAt(move(towards(f.underarm, f.elbowOut, 0.4), f.upper, -1)),
        nodeAt(towards(f.shoulder, f.elbowOut, 0.62)),
      ),
    );
  if (count > 0.95) folds.push(fold(1.3, 0.6, at(-0.02, 3.5), at(0.25, 4.6), at(0.6, 6.6)));
  if (frame.gathered && count > 0.4)
    for (const [t, reach, aside] of [
      [0.32, 9, 0.04],
      [0.66, 7, -0.06],
    ] as const)
      folds.push(
        fold(
          1.05,
          0.7,
          nodeAt(move(towards(frame.outEnd, frame.inEnd, t), f.fore, 0.4)),
          nodeAt(move(towards(frame.outEnd, frame.inEnd, t + aside), f.fore, -reach * 0.5)),
          nodeAt(move(towards(frame.outEnd, frame.inEnd, t - aside), f.fore, -reach)),
        ),
      );
  return folds;
};

const drawCuff = (garment: Garment, f: SleeveFrame, side: Side, cuff: Cuff, height: number, cloth: Cloth): void => {
  const { ink } = cloth;
  if (cuff === 'none') return;
  if (cuff === 'hem' || cuff === 'tab') {
    if (!garment.small)
      garment.add(
        stitch(
          [
            nodeAt(move(move(f.wristOut, f.fore, -1.7), f.acrossFore, 0.3)),
            nodeAt(move(move(towards(f.wristOut, f.wristIn, 0.5), f.fore, -1.35), f.acrossFore, 0)),
            nodeAt(move(move(f.wristIn, f.fore, -1.7), f.acrossFore, -0.3)),
          ],
          ink,
          0.6,
        ),
      );
    garment.add(
      pen(
        [nodeAt(f.wristOut), nodeAt(move(towards(f.wristOut, f.wristIn, 0.5), f.fore, 0.4)), nodeAt(f.wristIn)],
        0.4,
        ink,
        0.5,
      ),
    );
    if (cuff === 'tab') cuffTab(garment, f, cloth);
    return;
  }
  const wider = cuff === 'turned' ? 0.5 : 0.1;
  const a = move(move(f.wristOut, f.fore, -height), f.acrossFore, -wider);
  const b = move(move(f.wristIn, f.fore, -height), f.acrossFore, wider);
  const c = move(move(f.wristIn, f.fore, 0.3), f.acrossFore, cuff === 'turned' ? wider : 0);
  const d = move(move(f.wristOut, f.fore, 0.3), f.acrossFore, cuff === 'turned' ? -wider : 0);
  const inside = (t: number, u: number): Node => nodeAt(towards(towards(a, b, t), towards(d, c, t), u));
  const marks: Painted[] = [];
  if (cuff === 'rib' || cuff === 'elastic') {
    const ends = [[nodeAt(a), nodeAt(d)] as Node[], [nodeAt(b), nodeAt(c)] as Node[]] as const;
    marks.push(
      ribsBetween(ends[0], ends[1], cuff === 'rib' ? 13 : 8, cloth, {
        dark: 0.34,
        small: garment.small,
        aside: [f.acrossFore[0] * 0.26, f.acrossFore[1] * 0.26],
      }),
    );
  } else if (!garment.small) {
    marks.push(
      stitch([inside(0.04, 0.12), inside(0.96, 0.12)], ink, 0.75),
      stitch([inside(0.04, 0.88), inside(0.96, 0.88)], ink, 0.75),
    );
  }
  garment.panel([cornerAt(a), cornerAt(b), cornerAt(c), nodeAt(move(towards(c, d, 0.5), f.fore, 0.35)), cornerAt(d)], {
    cloth,
    turn: f.turnFore + (cuff === 'shirt' || cuff === 'barrel' || cuff === 'band' ? 90 : 0),
    inner: marks,
    knit: cuff !== 'rib' && cuff !== 'elastic',
    print: cuff !== 'rib',
    round: side === 1 ? { from: b, to: a, strength: 0.8 } : { from: a, to: b, strength: 0.8 },
    edge: 0.5,
    wobble: 0.08,
    cast: cuff === 'turned' ? 0.4 : 0,
  });
};

/** A strap with a button near the wrist, as on a trench coat. */
const cuffTab = (garment: Garment, f: SleeveFrame, cloth: Cloth): void => {
  const at = (t: number, up: number): Point => move(towards(f.wristOut, f.wristIn, t), f.fore, -up);
  garment.panel([cornerAt(at(-0.03, 8)), cornerAt(at(1.03, 8)), cornerAt(at(1.03, 5)), cornerAt(at(-0.03, 5))], {
    cloth,
    edge: 0.4,
    wobble: 0.05,
    cast: 0.35,
    turn: f.turnFore + 90,
  });
  const [x, y] = at(0.5, 6.5);
  garment.button(x, y, 0.8, cloth.deep);
};
