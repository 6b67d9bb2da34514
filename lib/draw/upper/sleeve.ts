import type { DrawnPiece } from '../drawing.ts';
import type { Cloth } from '../fabric/index.ts';
import {
  cornerAt,
  type Garment,
  group,
  lerp,
  move,
  type Node,
  nodeAt,
  type Painted,
  reversed,
  towards,
} from '../kit/index.ts';
import { sleeveBaffles } from './baffles.ts';
import { type Cuff, drawCuff } from './cuffs.ts';
import type { UpperShape } from './shape.ts';
import { type Side, type SleeveFrame, sleeveFrame } from './sleeve-frame.ts';
import { armShade, ribMarks, sleeveFolds } from './sleeve-shade.ts';
import { sleeveStripes } from './stripes.ts';
export interface SleeveOptions {
  readonly cloth?: Cloth;
  readonly cuff?: Cuff;
  /** Height of the cuff, centimetres. */
  readonly cuffHeight?: number;
  /** Laid over the body: drawn last, with its own shade, forearm turned in. */
  readonly over?: boolean;
  /** The body it is laid over, as a path: its shade falls nowhere else. */
  readonly castOn?: string;
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

/** Only a sleeve longer than this can be laid bent over the front, centimetres. */
const ELBOW = 40;

/** Whether this piece has one arm laid over its body; a waistband would cut off the hand of one that is tucked in. */
export const isBent = ({ tuck }: DrawnPiece, garment: Garment, { sleeve }: UpperShape): boolean =>
  (sleeve?.length ?? 0) > ELBOW && garment.random() > 0.45 && tuck !== 'in';

/** Sets in one sleeve. Draw both before the body, or the bent one after it. */
export const drawSleeve = (garment: Garment, shape: UpperShape, side: Side, options: SleeveOptions = {}): void => {
  if (shape.sleeve === undefined) return;
  const f = sleeveFrame(shape, side, options.over);
  const cloth = options.cloth ?? garment.cloth;
  const long = options.cuff ?? 'hem';
  // a buttoned cuff ends a long sleeve only
  const cuff = shape.sleeve.length < 30 && (long === 'shirt' || long === 'barrel') ? 'hem' : long;
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
  if (options.over) {
    garment.add(
      group([armShade(garment, f, shape, side)], options.castOn === undefined ? {} : { clip: options.castOn }),
    );
  }
  garment.panel([...outer, nodeAt(hemEdge), ...reversed(inner), ...join], {
    cloth,
    turn: f.turnUpper,
    shift: [0, 0.4 * side],
    round:
      side === 1
        ? { from: towards(f.elbowIn, f.elbowOut, -0.2), to: f.elbowOut, strength: 0.75 }
        : { from: f.elbowOut, to: towards(f.elbowIn, f.elbowOut, -0.2), strength: 0.75 },
    cast: options.over ? 0.6 : 0,
    castOn: options.castOn,
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
