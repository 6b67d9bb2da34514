import { lerp, type Node } from './geometry.ts';
import { sampleCurve } from './paths.ts';

/** An edge that runs down the cloth: where it stands at a height. Beyond its ends it keeps its last place. */
export type Edge = (y: number) => number;

/** The edge through nodes given from top to bottom. */
export const edgeThrough = (nodes: readonly Node[]): Edge => {
  const points = sampleCurve(nodes);
  const first = points[0] ?? [0, 0];
  const last = points[points.length - 1] ?? first;
  return (y) => {
    if (y <= first[1]) return first[0];
    for (let i = 1; i < points.length; i++) {
      const [a, b] = [points[i - 1] ?? first, points[i] ?? last];
      if (y <= b[1]) return lerp(a[0], b[0], b[1] > a[1] ? (y - a[1]) / (b[1] - a[1]) : 0);
    }
    return last[0];
  };
};

/** Nodes along an edge from one height to another, `aside` centimetres to the right of it. */
export const alongEdge = (edge: Edge, from: number, to: number, aside = 0, steps = 4): Node[] =>
  Array.from({ length: steps + 1 }, (_, i) => {
    const y = lerp(from, to, i / steps);
    return [edge(y) + aside, y];
  });

/** The edge a share of the way from one edge to another. */
export const edgeBetween =
  (one: Edge, other: Edge, share: number): Edge =>
  (y) =>
    lerp(one(y), other(y), share);
