import type { Ground } from '../ground.ts';
import { Descent } from './descent.ts';
import { popcount } from './popcount.ts';
import { type LookSpace, nodesOf } from './space.ts';

/** A look as seats in slot order, empty slots left out, with its points. */
export interface Scored {
  readonly seats: readonly number[];
  readonly points: number;
}

const inOrder = (a: readonly number[], b: readonly number[]): number => {
  for (let index = 0; index < Math.min(a.length, b.length); index += 1) {
    const difference = (a[index] as number) - (b[index] as number);
    if (difference !== 0) return difference;
  }
  return a.length - b.length;
};

/**
 * The best k looks of a space, exactly: depth first, children with the best promise first, and nothing below a bound is
 * opened. Bound: points so far, and for each open slot the best of a node's own points, its points with what is chosen
 * and at most with what can still follow. `bonus` adds points to seats (to cover pieces not shown yet).
 */
export const rankSpace = (ground: Ground, space: LookSpace, k: number, bonus?: Int32Array): readonly Scored[] => {
  const descent = new Descent(space);
  if (!descent.open || k < 1 || space.counted !== descent.depth) return [];
  const { rows, depth } = descent;
  const { words, wordOf, seatOf, slots } = space;
  const size = words * 32;
  const n = ground.seats.length;

  const bySlot = slots.map((_, slot) => nodesOf(space, slot));
  const pair = new Int32Array(size * size);
  const own = new Int32Array(size);
  bySlot.forEach((nodes, at) => {
    for (const a of nodes) {
      const one = seatOf[a] as number;
      if (one >= 0) own[a] = (ground.own[one] as number) + (bonus?.[one] ?? 0);
      bySlot.forEach((others, other) => {
        if (other === at) return;
        const empty = ground.empty.get(slots[other] as (typeof slots)[number])?.points;
        for (const b of others) {
          const two = seatOf[b] as number;
          if (one < 0) continue;
          const earned = two >= 0 ? (ground.points[one * n + two] as number) : (empty?.[one] ?? 0);
          pair[a * size + b] = earned;
          if (two < 0) pair[b * size + a] = earned;
        }
      });
    }
  });
  /** At most what a node can earn with nodes of later slots. */
  const ahead = new Int32Array(size);
  for (let at = 0; at < depth; at += 1) {
    for (const a of bySlot[at] as readonly number[]) {
      let most = 0;
      for (let other = at + 1; other < depth; other += 1) {
        let best = Number.NEGATIVE_INFINITY;
        for (const b of bySlot[other] as readonly number[]) {
          const fits = ((space.adjacency[a * words + (b >> 5)] as number) & (1 << (b & 31))) !== 0;
          if (fits) best = Math.max(best, pair[a * size + b] as number);
        }
        if (best !== Number.NEGATIVE_INFINITY) most += best;
      }
      ahead[a] = most;
    }
  }

  const earnedAt = new Int32Array((depth + 1) * size);
  earnedAt.set(own, 0);
  const pointsAt = new Int32Array(depth + 1);
  const chosen = new Int32Array(depth);
  const soft = createPenalties(ground, depth);
  const best: { nodes: number[]; points: number }[] = [];
  const worse = (points: number, nodes: ArrayLike<number>, length: number): boolean => {
    const last = best[best.length - 1];
    if (best.length < k || last === undefined) return false;
    if (points !== last.points) return points < last.points;
    for (let at = 0; at < length; at += 1) {
      const difference = (nodes[at] as number) - (last.nodes[at] as number);
      if (difference !== 0) return difference > 0;
    }
    return false;
  };
  const offer = (points: number): void => {
    if (worse(points, chosen, depth)) return;
    const nodes = [...chosen];
    let place = best.findIndex(
      (entry) => entry.points < points || (entry.points === points && inOrder(nodes, entry.nodes) < 0),
    );
    if (place < 0) place = best.length;
    best.splice(place, 0, { nodes, points });
    if (best.length > k) best.pop();
  };

  /** Points that can still come from the slots from `at` on, at most. */
  const promise = (at: number): number => {
    let total = 0;
    const base = at * words;
    for (let slot = at; slot < depth; slot += 1) {
      let most = Number.NEGATIVE_INFINITY;
      for (let word = wordOf[slot] as number; word < (wordOf[slot + 1] as number); word += 1) {
        let bits = rows[base + word] as number;
        while (bits !== 0) {
          const low = bits & -bits;
          bits ^= low;
          const node = (word << 5) + 31 - Math.clz32(low);
          const value = (earnedAt[at * size + node] as number) + (ahead[node] as number);
          if (value > most) most = value;
        }
      }
      total += most;
    }
    return total;
  };

  const enter = (at: number, node: number): boolean => {
    if (!descent.descend(at, node)) return false;
    const seat = seatOf[node] as number;
    pointsAt[at + 1] = (pointsAt[at] as number) + (earnedAt[at * size + node] as number) - soft.take(at, seat);
    const from = at * size;
    const to = from + size;
    const base = (at + 1) * words;
    const row = node * size;
    for (let word = wordOf[at + 1] as number; word < words; word += 1) {
      let bits = rows[base + word] as number;
      while (bits !== 0) {
        const low = bits & -bits;
        bits ^= low;
        const other = (word << 5) + 31 - Math.clz32(low);
        earnedAt[to + other] = (earnedAt[from + other] as number) + (pair[row + other] as number);
      }
    }
    return true;
  };

  const search = (at: number): void => {
    if (at === depth) {
      offer((pointsAt[depth] as number) - soft.unaccompanied(chosen, seatOf));
      return;
    }
    const children: { node: number; bound: number }[] = [];
    for (let word = wordOf[at] as number; word < (wordOf[at + 1] as number); word += 1) {
      let bits = rows[at * words + word] as number;
      while (bits !== 0) {
        const low = bits & -bits;
        bits ^= low;
        const node = (word << 5) + 31 - Math.clz32(low);
        if (enter(at, node)) children.push({ node, bound: (pointsAt[at + 1] as number) + promise(at + 1) });
      }
    }
    children.sort((a, b) => b.bound - a.bound || a.node - b.node);
    for (const { node, bound } of children) {
      chosen[at] = node;
      if (worse(bound, chosen, at + 1)) continue;
      if (enter(at, node)) search(at + 1);
    }
  };
  search(0);
  return best.map(({ nodes, points }) => ({
    seats: nodes.map((node) => seatOf[node] as number).filter((seat) => seat >= 0),
    points,
  }));
};

/** What whole-look rules that only lower the score take, carried down the search. */
const createPenalties = (ground: Ground, depth: number) => {
  const { softCaps, softMarks, softCompanions, marks, seats } = ground;
  const counts = new Int32Array((depth + 1) * Math.max(1, softCaps.length));
  const masks = new Int32Array(depth + 1);
  return {
    /** Takes a seat (or nothing) at a depth and returns the points it costs. */
    take: (at: number, seat: number): number => {
      let cost = 0;
      for (let index = 0; index < softCaps.length; index += 1) {
        const cap = softCaps[index] as Ground['softCaps'][number];
        const counted =
          (counts[at * softCaps.length + index] as number) + (seat >= 0 ? (cap.members[seat] as number) : 0);
        if (counted > cap.most && counted !== counts[at * softCaps.length + index]) cost += cap.points;
        counts[(at + 1) * softCaps.length + index] = counted;
      }
      if (softMarks !== undefined) {
        const before = masks[at] as number;
        const mask = before | (seat >= 0 ? (marks[seat] as number) : 0);
        const over = (bits: number): number => Math.max(0, popcount(bits) - softMarks.most);
        cost += (over(mask) - over(before)) * softMarks.points;
        masks[at + 1] = mask;
      }
      return cost;
    },
    unaccompanied: (chosen: Int32Array, seatOf: Int32Array): number => {
      if (softCompanions.length === 0) return 0;
      const worn = new Set([...chosen].map((node) => seats[seatOf[node] as number]?.piece.id));
      return softCompanions.reduce(
        (cost, { piece, partner, points }) => cost + (worn.has(piece) && !worn.has(partner) ? points : 0),
        0,
      );
    },
  };
};
