import type { Detail, Drawing, DrawnPiece } from '../drawing.ts';
import { plainCloth } from '../fabric/index.ts';
import { clamp, curvePath, group, line, type Node, oklch, pen, tone } from '../kit/index.ts';
import type { ShoeArtist } from './artist.ts';
import { legSections, onLeg, paintBoot } from './boot-body.ts';
import { METAL, paintBuckle, paintElastic, paintLaces, paintStrap } from './fastenings.ts';
import { flatLast, heelOf, townLast } from './lasts.ts';
import { BOOTS, pair } from './pair.ts';
import { paintSole } from './soles.ts';
import type { Leg } from './solids.ts';
import { leatherSole, stackedSole } from './town.ts';

/** Height of the shaft above the seat: what the stylist measured, within what a leg can wear. */
const shaftOf = (piece: DrawnPiece, usual: number): number =>
  piece.lengthCm === undefined || !Number.isFinite(piece.lengthCm) ? usual : clamp(piece.lengthCm, 9, 60);

const seamUp = (artist: ShoeArtist, of: Leg, around: number, from = 0.05, to = 0.98): void => {
  const nodes = onLeg(of, [
    [to, around],
    [(from + to) / 2, around],
    [from, around],
  ]);
  artist.garment.add(pen(nodes, 0.2, artist.cloth.ink, 0.75, 0.5));
};

const pullTab = (artist: ShoeArtist, of: Leg, around: number): void => {
  artist.garment.panel(
    onLeg(
      of,
      [
        [0.8, around - 0.035, 'corner'],
        [1.06, around - 0.03],
        [1.1, around],
        [1.06, around + 0.03],
        [0.8, around + 0.035, 'corner'],
      ],
      0.1,
    ),
    { edge: 0.2, wobble: 0.02, rim: false },
  );
};

export const chelsea = (piece: DrawnPiece, detail: Detail): Drawing =>
  pair(piece, detail, () => ({
    shape: townLast(piece.heelCm, 'round'),
    stance: BOOTS,
    paint: (artist) => {
      const shaft = shaftOf(piece, 13.5);
      paintSole(artist, stackedSole(artist));
      const of = paintBoot(artist, { sections: legSections(artist, shaft), creases: 2 });
      const gore = onLeg(of, [
        [0.985, 0.13, 'corner'],
        [0.6, 0.17],
        [0.3, 0.235],
        [0.6, 0.3],
        [0.985, 0.345, 'corner'],
        [0.985, 0.24],
      ]);
      const ribs = Array.from({ length: artist.small ? 5 : 9 }, (_, i) => {
        const around = 0.14 + (i / (artist.small ? 4 : 8)) * 0.2;
        return curvePath(
          onLeg(of, [
            [1, around],
            [0.3, 0.235 + (around - 0.235) * 0.3],
          ]),
          false,
        );
      }).join('');
      paintElastic(artist, gore, ribs);
      if (!artist.small)
        artist.garment.add(
          line(
            onLeg(of, [
              [0.98, 0.11],
              [0.58, 0.145],
              [0.24, 0.235],
              [0.58, 0.325],
              [0.98, 0.365],
            ]),
            0.12,
            artist.cloth.bright,
            0.5,
            [0.4, 0.3],
          ),
        );
      artist.seam([
        [0.33, 0.2],
        [0.32, 0.1],
        [0.33, 0.02],
      ]);
      pullTab(artist, of, 0.46);
    },
  }));

export const ankleBoots = (piece: DrawnPiece, detail: Detail): Drawing =>
  pair(piece, detail, () => ({
    shape: { ...townLast(piece.heelCm, 'almond', 0.45), length: 27.4 },
    stance: BOOTS,
    paint: (artist) => {
      const shaft = shaftOf(piece, 12);
      const colour = leatherSole(artist.cloth.ground);
      const high = heelOf(piece.heelCm) > 5;
      paintSole(artist, {
        kind: 'plain',
        colour,
        welt: 0.16,
        heel: {
          breast: 0.22,
          taper: high
            ? [
                [0, 0.5],
                [0.5, 0.62],
                [1, 1],
              ]
            : [
                [0, 0.78],
                [0.5, 0.84],
                [1, 1],
              ],
          over: 0.1,
          colour,
          lifts: 4,
        },
      });
      const of = paintBoot(artist, { sections: legSections(artist, shaft, { front: 12.2, half: 4.1 }), creases: 3 });
      if (artist.behind) {
        const zip = onLeg(of, [
          [0.97, 0.2],
          [0.5, 0.22],
          [0.1, 0.22],
        ]);
        artist.garment.add(line(zip, 0.62, artist.cloth.ink, 0.9), line(zip, 0.34, METAL, 1, [0.22, 0.16]));
        return;
      }
      artist.seam([
        [0.5, 0.44],
        [0.46, 0.28],
        [0.4, 0.14],
        [0.37, 0.02],
      ]);
      artist.stitches([
        [0.515, 0.42],
        [0.475, 0.27],
        [0.415, 0.13],
        [0.385, 0.02],
      ]);
      seamUp(artist, of, 0.44);
    },
  }));

export const kneeBoots = (piece: DrawnPiece, detail: Detail): Drawing =>
  pair(piece, detail, () => ({
    shape: { ...townLast(piece.heelCm, 'almond', 0.45), length: 27 },
    stance: { ...BOOTS, far: [7.4, -4.6], spread: 16 },
    paint: (artist) => {
      const shaft = shaftOf(piece, 36);
      const colour = leatherSole(artist.cloth.ground);
      paintSole(artist, {
        kind: 'plain',
        colour,
        welt: 0.16,
        heel: {
          breast: 0.22,
          taper: [
            [0, 0.8],
            [1, 1],
          ],
          over: 0.1,
          colour,
          lifts: 4,
        },
      });
      const of = paintBoot(artist, {
        sections: legSections(artist, shaft, { front: 13, half: 5.6, calf: 1.4 }),
        creases: 3,
      });
      seamUp(artist, of, 0.28, 0.06);
      if (!artist.small)
        artist.garment.add(
          line(
            onLeg(of, [
              [0.965, 0],
              [0.965, 0.12],
              [0.965, 0.25],
              [0.965, 0.4],
              [0.965, 0.49],
            ]),
            0.12,
            artist.cloth.bright,
            0.6,
            [0.42, 0.34],
          ),
          artist.garment.fold(
            onLeg(of, [
              [0.5, 0.4],
              [0.46, 0.3],
              [0.48, 0.18],
            ]),
            0.9,
            0.6,
          ),
        );
    },
  }));

/** Facings up the front with a tongue between them; returns where the laces run on the leg. */
const facings = (artist: ShoeArtist, of: Leg, colour: string | undefined, tall: number): void => {
  const { garment, cloth } = artist;
  const fill = colour === undefined ? {} : { cloth: plainCloth(colour, 'leather', garment.detail), weave: false };
  garment.panel(
    [
      ...artist.mapped(
        [
          [0.6, 0.6, 'corner'],
          [0.62, 0.5],
          [0.6, 0.38, 'corner'],
        ],
        false,
        0.05,
      ),
      ...onLeg(
        of,
        [
          [0.35, 0.04],
          [0.7, 0.035],
          [1, 0.03, 'corner'],
          [1.05, 0],
          [1.03, -0.05],
          [1, -0.08, 'corner'],
          [0.6, -0.07],
          [0.35, -0.05],
        ],
        0.05,
      ),
    ],
    { edge: 0.4, wobble: 0.02, rim: false, fill: tone(colour ?? cloth.ground, -0.07) },
  );
  const top = tall;
  garment.panel(
    [
      ...artist.mapped(
        [
          [0.66, 0.34, 'corner'],
          [0.6, 0.39],
          [0.54, 0.42],
        ],
        false,
        0.1,
      ),
      ...onLeg(
        of,
        [
          [0.38, 0.035],
          [0.7, 0.03],
          [top, 0.028, 'corner'],
          [top, 0.1, 'corner'],
          [0.6, 0.105],
          [0.34, 0.11],
        ],
        0.08,
      ),
      ...artist
        .mapped(
          [
            [0.5, 0.24],
            [0.58, 0.2],
            [0.66, 0.24],
          ],
          false,
          0.1,
        )
        .slice(1),
    ],
    { covers: false, edge: 0.3, wobble: 0.02, rim: false, cast: 0.2, ...fill },
  );
};

const bootLaces = (artist: ShoeArtist, of: Leg, colour: string, count: number, hooks: boolean): void => {
  const { garment } = artist;
  const width = artist.small ? 0.55 : 0.42;
  const dark = tone(colour, -0.26);
  paintLaces(artist, {
    rows: [0.635, 0.602, 0.57, 0.538, 0.508],
    near: [0.36, 0.37, 0.385, 0.4, 0.41],
    colour,
    width,
    bow: false,
    eyelets: 'metal',
    crossed: hooks,
  });
  const rows = Array.from({ length: count }, (_, i) => 0.37 + (0.57 * i) / (count - 1));
  rows.forEach((up, i) => {
    const next = rows[i + 1] ?? up + 0.03;
    const near = of.on(up, 0.05, 0.12);
    const far = of.on(next, -0.05, 0.3);
    const back = of.on(up, -0.05, 0.3);
    const bar = (a: readonly [number, number], b: readonly [number, number]): void => {
      garment.add(
        line(
          [
            [a[0], a[1]],
            [b[0], b[1]],
          ],
          width + 0.2,
          dark,
          0.9,
        ),
        line(
          [
            [a[0], a[1]],
            [b[0], b[1]],
          ],
          width,
          colour,
        ),
      );
    };
    if (hooks && i + 1 < rows.length) bar(back, of.on(next, 0.05, 0.12));
    bar(near, hooks ? far : back);
    garment.add(
      line(
        [
          [near[0], near[1]],
          [near[0] + 0.5, near[1] - 0.1],
        ],
        hooks ? 0.5 : 0.42,
        '#8d7a55',
      ),
      line(
        [
          [near[0], near[1] - 0.1],
          [near[0] + 0.3, near[1] - 0.15],
        ],
        0.16,
        '#e8d9ad',
      ),
    );
  });
  const [x, y] = of.on(0.95, 0.02, 0.5);
  const cord = (nodes: readonly Node[]): void => {
    garment.add(line(nodes, width + 0.2, dark, 0.9), line(nodes, width, colour));
  };
  cord([
    [x, y],
    [x - 2.2, y + 0.4],
    [x - 2.9, y + 1.9],
    [x - 1.6, y + 2],
    [x, y + 0.2],
  ]);
  cord([
    [x, y],
    [x + 2, y + 0.7],
    [x + 2.4, y + 2.2],
    [x + 1.2, y + 2],
    [x, y + 0.2],
  ]);
  cord([
    [x, y],
    [x - 0.8, y + 1.6],
    [x - 0.9, y + 3.2],
  ]);
  cord([
    [x, y],
    [x + 0.7, y + 1.5],
    [x + 1.2, y + 2.9],
  ]);
};

export const laceUpBoots = (piece: DrawnPiece, detail: Detail): Drawing =>
  pair(piece, detail, () => ({
    shape: { ...townLast(piece.heelCm, 'round', 0.9), breadth: 1.03 },
    stance: BOOTS,
    paint: (artist) => {
      const shaft = shaftOf(piece, 16);
      paintSole(artist, { ...stackedSole(artist, 0.45), kind: 'welted' });
      const of = paintBoot(artist, { sections: legSections(artist, shaft), creases: 1, lining: '#6b5640' });
      artist
        .seam(
          [
            [0.79, 0.02],
            [0.805, 0.2],
            [0.81, 0.4],
            [0.81, 0.6],
          ],
          0.22,
        )
        .stitches([
          [0.78, 0.02],
          [0.795, 0.2],
          [0.798, 0.4],
        ]);
      artist.seam([
        [0.19, 0.02],
        [0.21, 0.2],
        [0.15, 0.42],
      ]);
      facings(artist, of, undefined, 0.985);
      bootLaces(
        artist,
        of,
        artist.cloth.accents[0] ?? tone(artist.cloth.ground, oklch(artist.cloth.ground).l < 0.4 ? 0.16 : -0.12),
        6,
        false,
      );
      pullTab(artist, of, 0.48);
    },
  }));

const LUG = '#2e2a27';

export const hikingBoots = (piece: DrawnPiece, detail: Detail): Drawing =>
  pair(piece, detail, () => ({
    shape: { ...flatLast(3, 2.4, { toe: 'broad', breadth: 1.04, length: 28.5 }) },
    stance: BOOTS,
    paint: (artist) => {
      const { cloth } = artist;
      const accent = cloth.accents[0] ?? '#a9502f';
      paintSole(artist, { kind: 'lug', colour: LUG, welt: 0.35 });
      const of = paintBoot(artist, {
        sections: legSections(artist, shaftOf(piece, 14), { front: 13.2, half: 5, ankle: 0.4 }),
        creases: 0,
        collar: 1.15,
        lining: '#4b443c',
      });
      const rand = plainCloth(tone(cloth.ground, -0.16, 0.7), 'suede', detail);
      artist.patch(
        [
          [0.68, 0.005, 'corner'],
          [0.76, 0.14],
          [0.87, 0.26],
          [0.95, 0.5],
          [0.98, 0.5],
          [0.985, 0.2],
          [0.93, 0.005, 'corner'],
        ],
        { cloth: rand, weave: false, cast: 0.1 },
      );
      artist.patch(
        [
          [0.01, 0.005, 'corner'],
          [0.005, 0.2],
          [0.06, 0.26],
          [0.16, 0.2],
          [0.24, 0.005, 'corner'],
        ],
        { cloth: rand, weave: false },
      );
      artist
        .seam([
          [0.3, 0.02],
          [0.36, 0.16],
          [0.46, 0.2],
          [0.64, 0.2],
        ])
        .stitches([
          [0.31, 0.05],
          [0.37, 0.18],
          [0.46, 0.23],
          [0.63, 0.22],
        ]);
      artist.stitches([
        [0.7, 0.04],
        [0.77, 0.16],
        [0.86, 0.27],
      ]);
      facings(artist, of, tone(cloth.ground, -0.1), 0.9);
      bootLaces(artist, of, accent, 4, true);
      if (!artist.small)
        artist.garment.add(
          line(
            onLeg(of, [
              [0.86, 0.12],
              [0.84, 0.3],
              [0.86, 0.48],
            ]),
            0.14,
            cloth.ink,
            0.6,
          ),
        );
      pullTab(artist, of, 0.48);
    },
  }));

export const rainBoots = (piece: DrawnPiece, detail: Detail): Drawing =>
  pair(piece, detail, () => ({
    shape: { ...flatLast(2.4, 1.7, { toe: 'round', breadth: 1.04 }) },
    stance: { ...BOOTS, far: [7.2, -4.6], spread: 17 },
    paint: (artist) => {
      const { cloth, garment } = artist;
      paintSole(artist, { kind: 'cup', colour: cloth.accents[0] ?? tone(cloth.ground, -0.13), welt: 0.28 });
      const sections = legSections(artist, shaftOf(piece, 28), { front: 13.6, half: 5.6, calf: 0.6, ankle: 0.5 });
      const of = paintBoot(artist, {
        sections,
        creases: 1,
        lining: '#8d8375',
        inner: (leg) => [
          pen(
            onLeg(leg, [
              [0.9, 0.15],
              [0.65, 0.15],
              [0.42, 0.14],
            ]),
            0.62,
            '#ffffff',
            0.5,
            0.5,
          ),
          pen(
            artist.mapped([
              [0.72, 0.36],
              [0.82, 0.37],
              [0.92, 0.42],
            ]),
            0.5,
            '#ffffff',
            0.5,
            0.5,
          ),
        ],
      });
      const band = (up: number): Node[] =>
        onLeg(
          of,
          [
            [up, 0],
            [up, 0.12],
            [up, 0.25],
            [up, 0.38],
            [up, 0.5],
          ],
          0.05,
        );
      garment.add(line(band(0.9), 0.2, cloth.ink, 0.8), line(band(0.915), 0.16, cloth.bright, 0.7));
      artist
        .seam(
          [
            [0.88, 0.02],
            [0.86, 0.25],
            [0.85, 0.5],
          ],
          0.16,
        )
        .seam(
          [
            [0.13, 0.02],
            [0.16, 0.3],
            [0.1, 0.5],
          ],
          0.16,
        );
      const strap = [0.3, 0.36, 0.4, 0.44].map((around) => of.on(0.8, around, 0.1));
      paintStrap(artist, strap, 1.1);
      paintBuckle(artist, of.on(0.8, 0.3, 0.15), [1.5, 1.5], 4, '#b9b4a8');
    },
  }));

const RUBBER = '#37322d';

export const snowBoots = (piece: DrawnPiece, detail: Detail): Drawing =>
  pair(piece, detail, () => ({
    shape: { ...flatLast(3.2, 2.6, { toe: 'broad', breadth: 1.1 }) },
    stance: { ...BOOTS, far: [6.4, -5] },
    paint: (artist) => {
      const { cloth, garment } = artist;
      const shell = plainCloth(oklch(cloth.ground).l < 0.4 ? '#6a5f53' : RUBBER, 'rubber', detail);
      paintSole(artist, { kind: 'lug', colour: LUG, welt: 0.35 });
      const sections = legSections(artist, shaftOf(piece, 20), { front: 13.8, half: 5.9, ankle: 0, calf: 0.3 });
      const of = paintBoot(artist, { sections, creases: 0, collar: 0.4, lining: '#e7dcc8' });
      for (const up of [0.34, 0.52, 0.7]) {
        const seam = (bow: number): Node[] =>
          onLeg(of, [
            [up - 0.02, -0.04],
            [up - bow, 0.1],
            [up - bow * 1.3, 0.25],
            [up - bow, 0.4],
            [up, 0.5],
          ]);
        garment.add(
          garment.plane(
            onLeg(of, [
              [up - 0.06, 0.02],
              [up - 0.07, 0.2],
              [up - 0.05, 0.46],
            ]),
            0.8,
            cloth.ink,
            0.4,
          ),
          pen(seam(0.02), 0.26, cloth.ink, 0.85, 0.5),
          garment.plane(
            onLeg(of, [
              [up + 0.05, 0.06],
              [up + 0.05, 0.2],
              [up + 0.06, 0.36],
            ]),
            0.7,
            cloth.bright,
            0.7,
          ),
        );
      }
      // The waterproof foot.
      artist.patch(
        [
          [0.004, 0.005, 'corner'],
          [0.004, 0.24],
          [0.1, 0.3],
          [0.3, 0.2],
          [0.48, 0.2],
          [0.6, 0.34],
          [0.66, 0.5],
          [0.7, 0.72],
          [0.85, 0.76],
          [0.95, 0.74],
          [0.994, 0.5],
          [0.994, 0.2],
          [0.95, 0.005, 'corner'],
          [0.5, 0.003],
        ],
        {
          cloth: shell,
          weave: false,
          puff: 0.14,
          cast: 0.25,
          inner: [
            artist.plane(
              [
                [0.62, 0.3],
                [0.76, 0.34],
                [0.92, 0.42],
              ],
              0.9,
              shell.bright,
              0.8,
            ),
            artist.plane(
              [
                [0.05, 0.05],
                [0.5, 0.05],
                [0.95, 0.1],
              ],
              1,
              shell.ink,
              0.7,
            ),
          ],
        },
      );
      artist.line(
        [
          [0.02, 0.14],
          [0.3, 0.13],
          [0.6, 0.13],
          [0.93, 0.16],
        ],
        0.16,
        shell.ink,
        0.8,
        0.14,
      );
      fur(artist, of);
      const cord = onLeg(
        of,
        [
          [0.84, 0],
          [0.82, 0.12],
          [0.82, 0.24],
          [0.84, 0.36],
        ],
        0.2,
      );
      garment.add(line(cord, 0.5, cloth.ink, 0.9), line(cord, 0.3, cloth.accents[0] ?? '#d8c8a8'));
      const [x, y] = of.on(0.82, 0.14, 0.3);
      garment.panel(
        [
          [x - 0.5, y - 0.7],
          [x + 0.5, y - 0.7],
          [x + 0.5, y + 0.7],
          [x - 0.5, y + 0.7],
        ],
        { covers: false, edge: 0.15, wobble: 0.02, rim: false, cloth: shell, weave: false },
      );
    },
  }));

/** A cuff of pile round the mouth: a scalloped band and short strokes. */
const fur = (artist: ShoeArtist, of: Leg): void => {
  const { garment } = artist;
  const pile = plainCloth('#eadfca', 'fleece', garment.detail);
  const count = artist.small ? 12 : 22;
  const edge = (from: number, to: number, up: number, out: number, wave: number): Node[] =>
    Array.from({ length: count + 1 }, (_, i) => {
      const [x, y] = of.on(up, from + ((to - from) * i) / count, out + garment.jitter(0.08));
      return [x, y + (i % 2 === 0 ? wave : -wave)];
    });
  const below = edge(-0.02, 0.52, 0.87, 0.5, 0.22);
  const back = edge(0.52, 0.98, 1.02, 0.5, 0.16);
  garment.panel([...below, ...back], { edge: 0.35, wobble: 0, cloth: pile, rim: false, cast: 0.22 });
  const mouth = curvePath(edge(0, 1, 1.01, -0.9, 0.12).slice(0, -1));
  garment.add(
    { path: mouth, fill: tone(pile.ground, -0.22) },
    group([line(mouth, 1.2, pile.ink, 0.35)], { clip: mouth }),
  );
  if (artist.small) return;
  const strokes = Array.from({ length: 34 }, () => {
    const [x, y] = of.on(0.9 + garment.random() * 0.09, -0.01 + garment.random() * 0.5, 0.4);
    const swing = garment.jitter(0.3);
    return curvePath(
      [
        [x, y],
        [x + swing, y + 0.45],
        [x + swing * 0.4, y + 0.8],
      ],
      false,
    );
  });
  garment.add(line(strokes.join(''), 0.12, pile.ink, 0.45));
};
