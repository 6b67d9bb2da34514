import type { Box, Mark, Point, Tile } from '../../draw/drawing.ts';
import { pathBox, pathRings, readPath, type Segment } from './path.ts';

/** Rounding of coordinates, centimetres. */
const HAIR = 1e-6;

/** Paths of one mark from one M to the next. */
const subpathsOf = (segments: readonly Segment[]): readonly (readonly Segment[])[] => {
  const found: Segment[][] = [];
  for (const segment of segments) {
    if (segment.command === 'M') found.push([segment]);
    else found.at(-1)?.push(segment);
  }
  return found;
};

const centreOf = ({ x, y, width, height }: Box): Point => [x + width / 2, y + height / 2];

const holds = (outer: Box, inner: Box): boolean =>
  outer.x <= inner.x + HAIR &&
  outer.y <= inner.y + HAIR &&
  outer.x + outer.width >= inner.x + inner.width - HAIR &&
  outer.y + outer.height >= inner.y + inner.height - HAIR;

const area = ({ width, height }: Box): number => width * height;

/** The part of a line inside the tile (Liang and Barsky 1984); undefined when there is none, or on the far edge. */
export const lineInside = (
  [[x1, y1], [x2, y2]]: readonly [Point, Point],
  { width, height }: Pick<Tile, 'width' | 'height'>,
): readonly [Point, Point] | undefined => {
  const [dx, dy] = [x2 - x1, y2 - y1];
  let from = 0;
  let to = 1;
  for (const [step, room] of [
    [-dx, x1],
    [dx, width - x1],
    [-dy, y1],
    [dy, height - y1],
  ] as const) {
    if (Math.abs(step) < HAIR) {
      if (room < -HAIR) return undefined;
      continue;
    }
    const at = room / step;
    if (step < 0) from = Math.max(from, at);
    else to = Math.min(to, at);
  }
  const onFarEdge = (Math.abs(dx) < HAIR && x1 > width - HAIR) || (Math.abs(dy) < HAIR && y1 > height - HAIR);
  if (to - from < HAIR || onFarEdge) return undefined;
  return [
    [x1 + from * dx, y1 + from * dy],
    [x1 + to * dx, y1 + to * dy],
  ];
};

/** The part of a ring inside the tile (Sutherland and Hodgman 1974). */
export const ringInside = (
  ring: readonly Point[],
  { width, height }: Pick<Tile, 'width' | 'height'>,
): readonly Point[] => {
  const edges: readonly ((point: Point) => number)[] = [
    ([x]) => x,
    ([x]) => width - x,
    ([, y]) => y,
    ([, y]) => height - y,
  ];
  return edges.reduce<readonly Point[]>((points, inside) => {
    const kept: Point[] = [];
    points.forEach((to, index) => {
      const from = points.at(index - 1) ?? to;
      const [a, b] = [inside(from), inside(to)];
      if (a >= 0 !== b >= 0) {
        const t = a / (a - b);
        kept.push([from[0] + t * (to[0] - from[0]), from[1] + t * (to[1] - from[1])]);
      }
      if (b >= 0) kept.push(to);
    });
    return kept;
  }, ring);
};

const line = (points: readonly Point[], closed: boolean): string =>
  `M${points.map(([x, y]) => `${x.toFixed(4)} ${y.toFixed(4)}`).join('L')}${closed ? 'Z' : ''}`;

/** Of a shape larger than the tile, what lies inside it: as lines when it is drawn, as an area when it is filled. */
const cutToTile = (subpath: readonly Segment[], tile: Tile, filled: boolean): string => {
  const closed = subpath.some(({ command }) => command === 'Z');
  return pathRings(subpath)
    .map((ring) => {
      if (filled) {
        const inside = ringInside(ring, tile);
        return inside.length < 3 ? '' : line(inside, true);
      }
      const points = closed && ring[0] !== undefined ? [...ring, ring[0]] : ring;
      return points
        .slice(1)
        .map((to, index) => lineInside([points[index] ?? to, to], tile))
        .map((part) => (part === undefined ? '' : line(part, false)))
        .join('');
    })
    .join('');
};

const written = (segments: readonly Segment[]): string =>
  segments
    .map((segment) => {
      if (segment.command === 'Z') return 'Z';
      const points = segment.command === 'C' ? [segment.first, segment.second, segment.to] : [segment.to];
      return `${segment.command}${points.map(([x, y]) => `${x} ${y}`).join(' ')}`;
    })
    .join('');

const seamlessPath = (mark: Mark, tile: Tile, filled: boolean): string => {
  const { width, height } = tile;
  const parts = subpathsOf(readPath(mark.path)).map((subpath) => ({ subpath, box: pathBox(subpath) }));
  return parts
    .map(({ subpath, box }) => {
      if (box.width > width + HAIR || box.height > height + HAIR) return cutToTile(subpath, tile, filled);
      // a hole goes with the shape around it
      const around = parts
        .filter((other) => filled && area(other.box) > area(box) && holds(other.box, box))
        .toSorted((a, b) => area(b.box) - area(a.box))[0];
      const [x, y] = centreOf(around?.box ?? box);
      const isIn = x >= -HAIR && x < width - HAIR && y >= -HAIR && y < height - HAIR;
      return isIn ? written(subpath) : '';
    })
    .join('');
};

/**
 * The marks of a tile so that copies side by side, painted whole and not cut, neither overlap nor leave a gap: what crosses
 * an edge is kept in one copy alone, and what is larger than the tile ends exactly at its edges. A viewer then has no seam
 * to show. Tiles with groups are left as they are: undefined.
 */
export const seamlessMarks = (tile: Tile): readonly Mark[] | undefined => {
  const marks: Mark[] = [];
  for (const mark of tile.marks) {
    if ('marks' in mark) return undefined;
    const { stroke, fill, ...rest } = mark;
    const filled = fill === undefined ? '' : seamlessPath(mark, tile, true);
    const stroked = stroke === undefined ? '' : seamlessPath(mark, tile, false);
    if (filled !== '' && fill !== undefined) marks.push({ ...rest, fill, path: filled });
    if (stroked !== '' && stroke !== undefined) marks.push({ ...rest, stroke, path: stroked });
  }
  return marks;
};

/** How far marks reach over the edges of their tile, as a share of it; at least nothing. */
export const overhang = (marks: readonly Mark[], { width, height }: Tile): number =>
  Math.max(
    0,
    ...marks.map(({ path, width: line = 0.1, stroke }) => {
      const { x, y, width: wide, height: high } = pathBox(readPath(path));
      const edge = stroke === undefined ? 0 : line;
      return Math.max(
        (edge - x) / width,
        (x + wide + edge) / width - 1,
        (edge - y) / height,
        (y + high + edge) / height - 1,
      );
    }),
  );
