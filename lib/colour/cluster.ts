/** A point of a colour space with the place it came from kept by its index. */
export type Point3 = readonly [number, number, number];

/** Points that belong together. */
export interface Cluster {
  readonly centre: Point3;
  /** Indices into the points. */
  readonly members: readonly number[];
}

/** Side of the cells in which peaks are looked for. */
const CELL = 0.03;
/** Two peaks are at least this far apart. */
const PEAK_DISTANCE = 0.08;
const MOST_CLUSTERS = 8;
const MOST_ROUNDS = 20;

const distance = (a: Point3, b: Point3): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);

const meanOf = (points: readonly Point3[]): Point3 => {
  const sum = points.reduce<[number, number, number]>(
    (total, [x, y, z]) => [total[0] + x, total[1] + y, total[2] + z],
    [0, 0, 0],
  );
  const count = Math.max(1, points.length);
  return [sum[0] / count, sum[1] / count, sum[2] / count];
};

/** The middle value of each coordinate: shine, folds and noise do not pull it. */
export const medianOf = (points: readonly Point3[]): Point3 => {
  const middle = (axis: 0 | 1 | 2): number =>
    Float64Array.from(points, (point) => point[axis]).sort()[points.length >> 1] ?? 0;
  return [middle(0), middle(1), middle(2)];
};

/** Starting centres: the fullest cells of a grid, each far enough from those already taken. No randomness. */
const peaks = (points: readonly Point3[]): Point3[] => {
  const cells = new Map<string, Point3[]>();
  for (const point of points) {
    const key = point.map((value) => Math.round(value / CELL)).join(' ');
    const cell = cells.get(key);
    if (cell === undefined) cells.set(key, [point]);
    else cell.push(point);
  }
  const byFullness = [...cells.entries()].sort((a, b) => b[1].length - a[1].length || (a[0] < b[0] ? -1 : 1));
  const chosen: Point3[] = [];
  for (const [, members] of byFullness) {
    if (chosen.length === MOST_CLUSTERS) break;
    const centre = meanOf(members);
    if (chosen.every((other) => distance(other, centre) >= PEAK_DISTANCE)) chosen.push(centre);
  }
  return chosen;
};

/** Index of the centre nearest to a point. */
export const nearestOf = (point: Point3, centres: readonly Point3[]): number => {
  let best = 0;
  for (let index = 1; index < centres.length; index += 1) {
    const centre = centres[index];
    const leading = centres[best];
    if (centre !== undefined && leading !== undefined && distance(point, centre) < distance(point, leading))
      best = index;
  }
  return best;
};

const assigned = (points: readonly Point3[], centres: readonly Point3[]): number[][] => {
  const members: number[][] = centres.map(() => []);
  points.forEach((point, index) => {
    members[nearestOf(point, centres)]?.push(index);
  });
  return members;
};

/** The points at some indices. */
export const pick = (points: readonly Point3[], indices: readonly number[]): Point3[] =>
  indices.flatMap((index) => {
    const point = points[index];
    return point === undefined ? [] : [point];
  });

/**
 * Groups points by k-means from the peaks of their histogram, at most eight groups. The same points give the same groups.
 * Groups nearer than `mergeBelow` become one. Largest first.
 */
export const clustersOf = (points: readonly Point3[], mergeBelow: number): readonly Cluster[] => {
  if (points.length === 0) return [];
  let centres: readonly Point3[] = peaks(points);
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const members = assigned(points, centres).filter((indices) => indices.length > 0);
    const moved = members.map((indices) => meanOf(pick(points, indices)));
    const settled =
      moved.length === centres.length &&
      moved.every((centre, index) => distance(centre, centres[index] ?? centre) < 1e-4);
    centres = moved;
    if (settled) break;
  }
  let clusters: Cluster[] = assigned(points, centres).map((members) => ({
    centre: meanOf(pick(points, members)),
    members,
  }));
  for (let pair = closest(clusters, mergeBelow); pair !== undefined; pair = closest(clusters, mergeBelow)) {
    const [one, two] = pair;
    const members = [...one.members, ...two.members];
    clusters = [
      ...clusters.filter((other) => other !== one && other !== two),
      { centre: meanOf(pick(points, members)), members },
    ];
  }
  return clusters.sort((a, b) => b.members.length - a.members.length);
};

const closest = (clusters: readonly Cluster[], below: number): readonly [Cluster, Cluster] | undefined => {
  let found: readonly [Cluster, Cluster] | undefined;
  let least = below;
  clusters.forEach((one, index) => {
    for (const two of clusters.slice(index + 1)) {
      const apart = distance(one.centre, two.centre);
      if (apart < least) {
        least = apart;
        found = [one, two];
      }
    }
  });
  return found;
};
