import type { Detail, Drawing, DrawnPiece } from '../drawing.ts';
import { type Node, tone } from '../kit/index.ts';
import { paintBody } from './body.ts';
import { paintFootbed } from './footbed.ts';
import { coveredHeel } from './heel-shapes.ts';
import { courtLast, heelOf } from './lasts.ts';
import { FROM_ABOVE, IN_PROFILE, pair } from './pair.ts';
import { paintSole } from './soles.ts';
import { leatherSole } from './town.ts';

const LINING = '#c9ac84';
const INSOLE = '#e0cba6';

/** Seen from above: a round low toe, a drawstring bow. */
export const balletFlats = (piece: DrawnPiece, detail: Detail): Drawing =>
  pair(piece, detail, () => ({
    shape: { ...courtLast(piece.heelCm, 'almond'), toe: 'round', length: 25.4, breadth: 0.86 },
    stance: { ...FROM_ABOVE, down: 46, tall: 0.78, far: [2.6, -7.4] },
    paint: (artist) => {
      const { cloth, last, garment } = artist;
      paintSole(artist, {
        kind: 'plain',
        colour: leatherSole(cloth.ground),
        welt: 0.04,
        heel: {
          breast: 0.18,
          taper: [
            [0, 0.96],
            [1, 1],
          ],
          over: 0.09,
          colour: leatherSole(cloth.ground),
        },
      });
      paintBody(artist, {
        topline: [
          [0, 4.6],
          [0.1, 3.9],
          [0.28, 2.7],
          [0.5, 2.1],
          [0.66, 2.2],
          [0.73, 2.9],
          [0.77, 3.5],
        ],
        creases: 0,
        lining: LINING,
        insole: INSOLE,
        collar: 0.42,
      });
      const [x, y] = last.on(0.785, 0.5, 0.15);
      const loop = (side: -1 | 1): Node[] => [
        [x, y, 'corner'],
        [x + side * 0.9, y - 0.75],
        [x + side * 1.7, y - 0.5],
        [x + side * 1.6, y + 0.45],
        [x + side * 0.7, y + 0.5],
      ];
      const tail = (side: -1 | 1): Node[] => [
        [x, y, 'corner'],
        [x + side * 0.9, y + 1.3, 'corner'],
        [x + side * 0.35, y + 1.5, 'corner'],
      ];
      for (const side of [-1, 1] as const)
        garment.panel(tail(side), { covers: false, edge: 0.1, wobble: 0.02, rim: false, weave: false });
      for (const side of [-1, 1] as const)
        garment.panel(loop(side), {
          covers: false,
          edge: 0.15,
          wobble: 0.02,
          rim: false,
          weave: false,
          cast: 0.15,
          inner: [
            garment.plane(
              [
                [x, y],
                [x + side * 1.3, y - 0.1],
              ],
              0.28,
              cloth.ink,
              0.6,
            ),
          ],
        });
      garment.panel(
        [
          [x - 0.34, y - 0.34],
          [x + 0.34, y - 0.34],
          [x + 0.34, y + 0.36],
          [x - 0.34, y + 0.36],
        ],
        { covers: false, edge: 0.1, wobble: 0.02, rim: false, weave: false, fill: tone(cloth.ground, 0.04) },
      );
    },
  }));

/** Backless: the upper ends behind the instep. */
export const mules = (piece: DrawnPiece, detail: Detail): Drawing =>
  pair(piece, detail, () => ({
    shape: { ...courtLast(piece.heelCm, 'almond'), length: 25.6 },
    stance: { ...IN_PROFILE, down: 32, far: [3.2, -5.8] },
    paint: (artist) => {
      const high = heelOf(piece.heelCm);
      paintSole(artist, { ...coveredHeel(artist, high > 5 ? 'slim' : 'block'), welt: 0.06 });
      paintFootbed(artist, INSOLE);
      paintBody(artist, {
        topline: [
          [0.4, 0.15],
          [0.44, 2.2],
          [0.48, 4.2],
          [0.5, 5.95],
        ],
        from: 0.4,
        creases: 1,
        lining: '#a9855c',
        insole: INSOLE,
        collar: 0.26,
      });
    },
  }));
