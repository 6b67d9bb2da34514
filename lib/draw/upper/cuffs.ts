import type { Point } from '../drawing.ts';
import type { Cloth } from '../fabric/index.ts';
import {
  cornerAt,
  type Garment,
  move,
  type Node,
  nodeAt,
  type Painted,
  pen,
  ribsBetween,
  stitch,
  towards,
} from '../kit/index.ts';
import type { Side, SleeveFrame } from './sleeve-frame.ts';
export type Cuff = 'none' | 'hem' | 'rib' | 'shirt' | 'barrel' | 'band' | 'turned' | 'elastic' | 'tab';

export const drawCuff = (
  garment: Garment,
  f: SleeveFrame,
  side: Side,
  cuff: Cuff,
  height: number,
  cloth: Cloth,
): void => {
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
