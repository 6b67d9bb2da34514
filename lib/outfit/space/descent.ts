import { popcount } from './compile.ts';
import type { LookSpace, SpaceDemand } from './space.ts';

/**
 * The state of a search through one space: for each depth the candidate words that are left and the small state of the
 * whole-look rules. Enumerating, counting and ranking all move by `descend`, so a look is in all of them or in none.
 */
export interface Descent {
  readonly space: LookSpace;
  readonly depth: number;
  /** `rows[depth * words + word]`: candidates left before the slot at `depth` is chosen. */
  readonly rows: Int32Array;
  /** False when the space has no look at the root. */
  readonly open: boolean;
  /** Chooses a node of the slot at `depth`, which must be a candidate. False when no look can follow. */
  readonly descend: (depth: number, node: number) => boolean;
  /** Whether some look follows from a depth that was reached. */
  readonly canFinish: (depth: number) => boolean;
  /** Writes what tells this state from others of the same depth; returns how many entries. Same key, same looks below. */
  readonly keyInto: (depth: number, key: Int32Array) => number;
  readonly keyLength: number;
}

/** Rows of nodes whose value in a slot is at least, or at most, a bound, found by bisection. */
interface Ladder {
  readonly values: Float64Array;
  /** `rows[rung]`: words of the slot with every node whose value is `values[rung]` or beyond. */
  readonly rows: readonly Int32Array[];
}

const ladder = (space: LookSpace, depth: number, amounts: Int32Array, rising: boolean): Ladder => {
  const from = space.wordOf[depth] ?? 0;
  const to = space.wordOf[depth + 1] ?? 0;
  const nodes: number[] = [];
  for (let node = from * 32; node < to * 32; node += 1) if ((space.seatOf[node] ?? -2) !== -2) nodes.push(node);
  const sign = rising ? 1 : -1;
  const values = [...new Set(nodes.map((node) => sign * (amounts[node] ?? 0)))].sort((a, b) => a - b);
  const rows = values.map((value) => {
    const row = new Int32Array(to - from);
    for (const node of nodes) {
      if (sign * (amounts[node] ?? 0) >= value)
        row[(node >> 5) - from] = (row[(node >> 5) - from] ?? 0) | (1 << (node & 31));
    }
    return row;
  });
  return { values: Float64Array.from(values), rows };
};

/** Row of the nodes whose (signed) value is at least `bound`; undefined when there is none. */
const rung = ({ values, rows }: Ladder, bound: number): Int32Array | undefined => {
  for (let index = 0; index < values.length; index += 1) if ((values[index] as number) >= bound) return rows[index];
  return undefined;
};

export const createDescent = (space: LookSpace): Descent => {
  const { words, wordOf, adjacency, root, marks, caps, demands, clo } = space;
  const depth = space.slots.length;
  const rows = new Int32Array((depth + 1) * words);
  rows.set(root);
  const markAt = new Int32Array(depth + 1);
  const capAt = new Int32Array((depth + 1) * Math.max(1, caps.length));
  const answeredAt = new Int32Array(depth + 1);
  const askedAt = new Int32Array(depth + 1);
  const offAt = new Float64Array(depth + 1);
  const onAt = new Float64Array(depth + 1);
  /** Whether anything beside the graph and the marks narrows candidates. */
  const closing = caps.length > 0 || demands.length > 0 || clo !== undefined;
  const onLadders = clo === undefined ? [] : space.slots.map((_, at) => ladder(space, at, clo.on, true));
  const offLadders = clo === undefined ? [] : space.slots.map((_, at) => ladder(space, at, clo.off, false));
  demands.forEach(({ asks }, index) => {
    if (asks === undefined) askedAt[0] = (askedAt[0] as number) | (1 << index);
  });

  const markRows: (Int32Array | undefined)[] = [];
  const markRow = (mask: number): Int32Array => {
    const known = markRows[mask];
    if (known !== undefined) return known;
    const row = new Int32Array(words);
    if (marks !== undefined) {
      for (let node = 0; node < words * 32; node += 1) {
        if (popcount(mask | (marks.ofNode[node] as number)) <= marks.most)
          row[node >> 5] = (row[node >> 5] as number) | (1 << (node & 31));
      }
    }
    markRows[mask] = row;
    return row;
  };

  const and = (base: number, from: number, row: Int32Array): void => {
    for (let word = from; word < words; word += 1)
      rows[base + word] = (rows[base + word] as number) & (row[word] as number);
  };

  /** Narrows the slot at `at` to what the demands that end there and the insulation allow. */
  const close = (at: number): void => {
    const base = at * words;
    const from = wordOf[at] as number;
    const to = wordOf[at + 1] as number;
    for (let index = 0; index < demands.length; index += 1) {
      const demand = demands[index];
      if (demand === undefined || demand.last !== at) continue;
      const bit = 1 << index;
      if (((answeredAt[at] as number) & bit) !== 0) continue;
      const asked = ((askedAt[at] as number) & bit) !== 0;
      for (let word = from; word < to; word += 1) {
        const answers = demand.answers[word] as number;
        const keep = asked ? answers : answers | ~(demand.asks?.[word] ?? 0);
        rows[base + word] = (rows[base + word] as number) & keep;
      }
    }
    if (clo === undefined) return;
    const needed = clo.min - (onAt[at] as number) - (clo.mostOn[at + 1] as number);
    const spare = clo.max - (offAt[at] as number) - (clo.leastOff[at + 1] as number);
    // nothing to take away when the least warm node is warm enough and the warmest is not too warm
    if (
      needed <= ((onLadders[at] as Ladder).values[0] as number) &&
      -spare <= ((offLadders[at] as Ladder).values[0] as number)
    )
      return;
    const warm = rung(onLadders[at] as Ladder, needed);
    const cool = rung(offLadders[at] as Ladder, -spare);
    for (let word = from; word < to; word += 1) {
      const keep =
        warm === undefined || cool === undefined ? 0 : (warm[word - from] as number) & (cool[word - from] as number);
      rows[base + word] = (rows[base + word] as number) & keep;
    }
  };

  /** True when a demand that stands has a node left that answers it. */
  const answerable = (at: number): boolean => {
    const base = at * words;
    for (let index = 0; index < demands.length; index += 1) {
      if (((askedAt[at] as number) & ~(answeredAt[at] as number) & (1 << index)) === 0) continue;
      const answers = (demands[index] as SpaceDemand).answers;
      let any = 0;
      for (let word = wordOf[at] as number; word < words; word += 1) {
        any |= (rows[base + word] as number) & (answers[word] as number);
      }
      if (any === 0) return false;
    }
    return true;
  };

  const hasCandidate = (at: number, slot: number): boolean => {
    const base = at * words;
    let any = 0;
    for (let word = wordOf[slot] as number; word < (wordOf[slot + 1] as number); word += 1) {
      any |= rows[base + word] as number;
    }
    return any !== 0;
  };

  /** Row that a node leaves of the slots after it by the whole-look rules; undefined when it takes nothing away. */
  const leftByMarks = (at: number, node: number): Int32Array | undefined => {
    if (marks === undefined) return undefined;
    const before = markAt[at] as number;
    const mask = before | (marks.ofNode[node] as number);
    markAt[at + 1] = mask;
    return mask === before ? undefined : markRow(mask);
  };

  const carryCaps = (at: number, node: number): void => {
    const next = at + 1;
    for (let index = 0; index < caps.length; index += 1) {
      const cap = caps[index] as LookSpace['caps'][number];
      const before = capAt[at * caps.length + index] as number;
      const counted = before + (cap.ofNode[node] as number);
      capAt[next * caps.length + index] = counted;
      if (counted !== before && counted >= cap.most) and(next * words, wordOf[next] as number, cap.others);
    }
  };

  const carryDemands = (at: number, node: number): void => {
    let answered = answeredAt[at] as number;
    let asked = askedAt[at] as number;
    const word = node >> 5;
    const mask = 1 << (node & 31);
    for (let index = 0; index < demands.length; index += 1) {
      const { answers, asks } = demands[index] as SpaceDemand;
      if (((answers[word] as number) & mask) !== 0) answered |= 1 << index;
      if (asks !== undefined && ((asks[word] as number) & mask) !== 0) asked |= 1 << index;
    }
    answeredAt[at + 1] = answered;
    askedAt[at + 1] = asked;
  };

  const descend = (at: number, node: number): boolean => {
    const next = at + 1;
    const base = at * words;
    const to = base + words;
    const row = node * words;
    const left = leftByMarks(at, node);
    for (let slot = next; slot < depth; slot += 1) {
      const end = wordOf[slot + 1] as number;
      let any = 0;
      for (let word = wordOf[slot] as number; word < end; word += 1) {
        let bits = (rows[base + word] as number) & (adjacency[row + word] as number);
        if (left !== undefined) bits &= left[word] as number;
        rows[to + word] = bits;
        any |= bits;
      }
      if (any === 0) return false;
    }
    if (caps.length > 0) carryCaps(at, node);
    if (demands.length > 0) carryDemands(at, node);
    if (clo !== undefined) {
      offAt[next] = (offAt[at] as number) + (clo.off[node] as number);
      onAt[next] = (onAt[at] as number) + (clo.on[node] as number);
    }
    if (!closing || next === depth) return true;
    close(next);
    if (caps.length > 0) {
      for (let slot = next; slot < depth; slot += 1) if (!hasCandidate(next, slot)) return false;
    } else if (!hasCandidate(next, next)) return false;
    return demands.length === 0 || answerable(next);
  };

  const canFinish = (at: number): boolean => {
    // the rows of the last slot hold only nodes that finish a look
    if (at >= depth - 1) return true;
    const base = at * words;
    for (let word = wordOf[at] as number; word < (wordOf[at + 1] as number); word += 1) {
      let bits = rows[base + word] as number;
      while (bits !== 0) {
        const low = bits & -bits;
        bits ^= low;
        if (descend(at, (word << 5) + 31 - Math.clz32(low)) && canFinish(at + 1)) return true;
      }
    }
    return false;
  };

  const later = laterOf(space);
  const keyInto = (at: number, key: Int32Array): number => {
    const base = at * words;
    let length = 0;
    for (let word = wordOf[at] as number; word < words; word += 1) key[length++] = rows[base + word] as number;
    if (marks !== undefined) {
      const mask = markAt[at] as number;
      // only marks that can still come up, and how many are used, tell two states apart
      key[length++] = mask & (later.marks[at] as number);
      key[length++] = popcount(mask);
    }
    for (let index = 0; index < caps.length; index += 1) {
      const left = (caps[index] as LookSpace['caps'][number]).most - (capAt[at * caps.length + index] as number);
      key[length++] = Math.min(left, later.caps[index * (depth + 1) + at] as number);
    }
    if (demands.length > 0) {
      const standing = later.demands[at] as number;
      key[length++] = (answeredAt[at] as number) & standing;
      key[length++] = (askedAt[at] as number) & ~(answeredAt[at] as number) & standing;
    }
    if (clo !== undefined) {
      const enough = (onAt[at] as number) >= clo.min;
      const cool = (offAt[at] as number) + (later.mostOff[at] as number) <= clo.max;
      key[length++] = enough ? -1 : (onAt[at] as number);
      key[length++] = cool ? -1 : (offAt[at] as number);
    }
    return length;
  };

  close(0);
  const open = depth > 0 && space.slots.every((_, slot) => hasCandidate(0, slot)) && answerable(0);
  const keyLength = words + 2 + caps.length + 2 + 2;
  return { space, depth, rows, open, descend, canFinish, keyInto, keyLength };
};

/** By depth: what slots from there on can still bring. */
const laterOf = ({ slots, wordOf, seatOf, marks, caps, demands, clo }: LookSpace) => {
  const depth = slots.length;
  const union = new Int32Array(depth + 1);
  const capacity = new Int32Array(Math.max(1, caps.length) * (depth + 1));
  const standing = new Int32Array(depth + 1);
  const mostOff = new Float64Array(depth + 1);
  for (let at = depth - 1; at >= 0; at -= 1) {
    let bits = union[at + 1] ?? 0;
    let off = 0;
    const holds = caps.map(() => 0);
    for (let node = (wordOf[at] ?? 0) * 32; node < (wordOf[at + 1] ?? 0) * 32; node += 1) {
      if ((seatOf[node] ?? -2) === -2) continue;
      bits |= marks?.ofNode[node] ?? 0;
      off = Math.max(off, clo?.off[node] ?? 0);
      caps.forEach(({ ofNode }, index) => {
        if (ofNode[node] === 1) holds[index] = 1;
      });
    }
    union[at] = bits;
    mostOff[at] = (mostOff[at + 1] ?? 0) + off;
    holds.forEach((hold, index) => {
      capacity[index * (depth + 1) + at] = (capacity[index * (depth + 1) + at + 1] ?? 0) + hold;
    });
    demands.forEach(({ last }, index) => {
      if (last >= at) standing[at] = (standing[at] ?? 0) | (1 << index);
    });
  }
  return { marks: union, caps: capacity, demands: standing, mostOff };
};
