import type { KindId } from '../../vocabulary/index.ts';
import type { Point } from '../drawing.ts';
import {
  curvePath,
  ellipsePath,
  type Garment,
  group,
  line,
  type Node,
  offsetLine,
  type Painted,
  resample,
  sampleCurve,
  shape,
  tone,
} from '../kit/index.ts';

/**
 * Earrings, rings and brooches are drawn this many times their true size, because true studs would be specks on a card;
 * everything else is drawn true. A card that shows one of them says so.
 */
export const SMALL_JEWELLERY_SCALE = 1.6;

const ENLARGED: ReadonlySet<KindId> = new Set(['stud earrings', 'hoop earrings', 'drop earrings', 'ring', 'brooch']);
export const drawnLarger = (kind: KindId): boolean => ENLARGED.has(kind);

/** A shape of polished metal: ground, contour, a light at the upper left. */
export const metalShape = (path: string, metal: string, outline = 0.14): Painted =>
  group([{ path, fill: metal, stroke: tone(metal, -0.3), width: outline, round: true }]);

/** Ring between an outer and an inner ellipse; both share a centre unless moved. */
export const hollow = (
  centre: Point,
  outer: readonly [number, number],
  inner: readonly [number, number],
  degrees = 0,
  shift: Point = [0, 0],
): string =>
  ellipsePath(centre, outer[0], outer[1], degrees) +
  ellipsePath([centre[0] + shift[0], centre[1] + shift[1]], inner[0], inner[1], degrees);

/** Counts a ring of metal as covered and leaves what shows through it free. */
export const coverRing = (
  garment: Garment,
  centre: Point,
  outer: readonly [number, number],
  inner: readonly [number, number],
): void => {
  const at = (radii: readonly [number, number], i: number): Node => {
    const angle = (i * Math.PI) / 12;
    return [centre[0] + radii[0] * Math.cos(angle), centre[1] + radii[1] * Math.sin(angle), 'corner'];
  };
  const round = Array.from({ length: 25 }, (_, i) => i);
  garment.cover([...round.map((i) => at(outer, i)), ...round.reverse().map((i) => at(inner, i))]);
};

/** A round bead or pearl with its shade and light. */
export const bead = (at: Point, radius: number, colour: string, small: boolean): Painted => {
  const [x, y] = at;
  return group([
    {
      path: ellipsePath(at, radius),
      fill: colour,
      stroke: tone(colour, -0.25, 0.9),
      width: Math.min(0.1, radius * 0.16),
    },
    ...(small
      ? []
      : [
          shape(
            ellipsePath([x + radius * 0.18, y + radius * 0.28], radius * 0.72, radius * 0.64),
            tone(colour, -0.12),
            0.4,
          ),
        ]),
    shape(ellipsePath([x - radius * 0.12, y - radius * 0.12], radius * 0.66), colour, 0.9),
    shape(ellipsePath([x - radius * 0.34, y - radius * 0.36], radius * 0.28, radius * 0.22), '#ffffff', 0.75),
  ]);
};

/** A faceted stone in its setting. */
export const stone = (at: Point, radius: number, colour: string): Painted => {
  const [x, y] = at;
  const facets = Array.from({ length: 8 }, (_, i): Point => {
    const angle = (i * Math.PI) / 4 + 0.39;
    return [x + Math.cos(angle) * radius, y + Math.sin(angle) * radius];
  });
  const table = facets.map(([u, v]): Point => [x + (u - x) * 0.55, y + (v - y) * 0.55]);
  const ring = (points: readonly Point[]): string =>
    `M${points.map(([u, v]) => `${u.toFixed(3)} ${v.toFixed(3)}`).join('L')}Z`;
  const rays = facets
    .map(
      (p, i) =>
        `M${p[0].toFixed(3)} ${p[1].toFixed(3)}L${(table[i]?.[0] ?? x).toFixed(3)} ${(table[i]?.[1] ?? y).toFixed(3)}`,
    )
    .join('');
  return group([
    { path: ring(facets), fill: colour, stroke: tone(colour, -0.25), width: 0.1 },
    shape(
      ring([facets[4], facets[5], facets[6], table[6], table[5], table[4]].map((p) => p ?? at)),
      tone(colour, 0.16),
      0.8,
    ),
    shape(
      ring([facets[0], facets[1], facets[2], table[2], table[1], table[0]].map((p) => p ?? at)),
      tone(colour, -0.12),
      0.7,
    ),
    line(rays + ring(table), 0.06, tone(colour, -0.2), 0.7),
  ]);
};

/** Centimetres from which the links of a chain are seen in a small drawing. */
const BROAD = 0.5;

const wire = (nodes: readonly Node[], width: number, metal: string): Painted[] => [
  line(nodes, width * 1.5, tone(metal, -0.22)),
  line(nodes, width * 0.8, metal),
];

const broadLinks = (nodes: readonly Node[], width: number, metal: string): Painted[] => {
  const path = curvePath(nodes, false);
  const links = { path, dash: [width * 1.1, width * 1.5], round: true };
  const dark = tone(metal, -0.26);
  return [
    line(path, width * 0.8, dark),
    { ...links, stroke: dark, width: width * 1.7 },
    { ...links, stroke: metal, width: width * 1.05 },
  ];
};

/** A chain along a line: links that follow it, with their lights. */
export const chain = (garment: Garment, nodes: readonly Node[], width: number, metal: string): void => {
  const run = resample(sampleCurve(nodes), 60);
  garment.cover(
    [...offsetLine(run, width * 0.6), ...offsetLine(run, -width * 0.6).reverse()]
      .filter((_, i) => i % 2 === 0)
      .map((p): Node => [p[0], p[1], 'corner']),
  );
  if (garment.small) {
    garment.add(...(width < BROAD ? wire(nodes, width, metal) : broadLinks(nodes, width, metal)));
    return;
  }
  const length = run
    .slice(1)
    .reduce((sum, p, i) => sum + Math.hypot(p[0] - (run[i]?.[0] ?? 0), p[1] - (run[i]?.[1] ?? 0)), 0);
  const count = Math.max(8, Math.round(length / (width * 1.55)));
  const links = resample(sampleCurve(nodes), count);
  const path = links
    .slice(0, -1)
    .map((p, i) => {
      const next = links[i + 1] ?? p;
      const degrees = (Math.atan2(next[1] - p[1], next[0] - p[0]) * 180) / Math.PI;
      return ellipsePath(
        [(p[0] + next[0]) / 2, (p[1] + next[1]) / 2],
        width * 1.02,
        width * (i % 2 === 0 ? 0.56 : 0.3),
        degrees,
      );
    })
    .join('');
  garment.add(
    { path, stroke: tone(metal, -0.3), width: width * 0.52 },
    { path, stroke: metal, width: width * 0.34 },
    group([{ path, stroke: tone(metal, 0.2), width: width * 0.12, opacity: 0.8 }], {
      move: [-width * 0.08, -width * 0.1],
    }),
  );
};
