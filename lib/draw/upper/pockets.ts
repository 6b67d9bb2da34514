import type { Cloth } from '../fabric/index.ts';
import { corner, type Garment, type Node, pen, stitch } from '../kit/index.ts';

export type Side = 1 | -1;

export interface PatchOptions {
  readonly width: number;
  readonly height: number;
  /** Degrees the pocket leans. */
  readonly lean?: number;
  readonly pointed?: boolean;
  readonly flap?: number;
  readonly pointedFlap?: boolean;
  readonly button?: string | undefined;
  readonly turn?: number;
  readonly cloth?: Cloth;
}

/** A pocket laid on the cloth, its top middle at `x`, `y`; with a flap if it has one. */
export const patchPocket = (garment: Garment, x: number, y: number, options: PatchOptions): void => {
  const cloth = options.cloth ?? garment.cloth;
  const w = options.width / 2;
  const h = options.height;
  const tip = options.pointed ? Math.min(2.6, h * 0.18) : 0;
  const round = (nodes: readonly Node[]): Node[] => nodes.map(([a, b, c]) => [a + x, b + y, c]);
  garment.panel(
    round([
      corner(-w, 0),
      corner(w, 0),
      corner(w - 0.2, h - tip),
      tip ? corner(0, h) : [0, h + 0.15],
      corner(-w + 0.2, h - tip),
    ]),
    {
      cloth,
      covers: false,
      loose: true,
      edge: 0.4,
      wobble: 0.08,
      cast: 0.4,
      turn: options.turn ?? 0,
      shift: [0.5, 0.3],
      inner: garment.small
        ? []
        : [
            stitch(
              round([
                corner(-w + 0.5, 0),
                corner(-w + 0.6, h - tip - 0.4),
                corner(0, h - 0.6),
                corner(w - 0.6, h - tip - 0.4),
                corner(w - 0.5, 0),
              ]),
              cloth.ink,
              0.7,
            ),
            ...(options.flap
              ? []
              : [
                  stitch(
                    round([
                      [-w, 1.5],
                      [w, 1.5],
                    ]),
                    cloth.ink,
                    0.6,
                  ),
                ]),
            garment.plane(
              round([
                [-w * 0.3, h * 0.3],
                [-w * 0.34, h * 0.9],
              ]),
              w * 0.24,
              cloth.bright,
              0.28,
            ),
          ],
    },
  );
  if (!options.flap) {
    garment.add(
      pen(
        round([
          [-w - 0.2, 0],
          [0, 0.3],
          [w + 0.2, 0],
        ]),
        0.3,
        cloth.ink,
        0.7,
        0.5,
      ),
    );
    return;
  }
  const f = options.flap;
  const point = options.pointedFlap ? f * 0.36 : 0.3;
  garment.panel(
    round([
      corner(-w - 0.3, -0.6),
      corner(w + 0.3, -0.6),
      corner(w + 0.2, f - point),
      options.pointedFlap ? corner(0, f) : [0, f],
      corner(-w - 0.2, f - point),
    ]),
    {
      cloth,
      covers: false,
      loose: true,
      edge: 0.4,
      wobble: 0.08,
      cast: 0.55,
      turn: options.turn ?? 0,
      inner: garment.small
        ? []
        : [
            stitch(
              round([corner(-w + 0.3, f - point - 0.5), corner(0, f - 0.6), corner(w - 0.3, f - point - 0.5)]),
              cloth.ink,
              0.7,
            ),
          ],
    },
  );
  if (options.button) garment.button(x, y + f - 1.5, 0.68, options.button);
};

/** The wide pocket in front of a hoodie. */
export const pouchPocket = (garment: Garment, y: number, width: number, height: number): void => {
  const { cloth } = garment;
  const w = width / 2;
  garment.panel(
    [
      corner(-w * 0.62, y),
      corner(w * 0.62, y),
      corner(w * 0.66, y + 1.5),
      [w * 0.84, y + height * 0.45],
      corner(w, y + height * 0.8),
      corner(w, y + height),
      corner(-w, y + height),
      corner(-w, y + height * 0.8),
      [-w * 0.84, y + height * 0.45],
      corner(-w * 0.66, y + 1.5),
    ],
    {
      covers: false,
      loose: true,
      edge: 0.5,
      cast: 0.45,
      inner: [
        ...(garment.small
          ? []
          : [-1, 1].map((s) =>
              stitch(
                [
                  [s * (w * 0.62 - 0.5), y + 1],
                  [s * (w * 0.8 - 0.4), y + height * 0.45],
                  [s * (w - 0.9), y + height * 0.82],
                ],
                cloth.ink,
                0.6,
              ),
            )),
        garment.fold(
          [
            [-w * 0.3, y + height],
            [-w * 0.24, y + height * 0.5],
            [-w * 0.34, y + 2],
          ],
          1.4,
          0.5,
        ),
      ],
    },
  );
};
