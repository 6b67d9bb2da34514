import type { ListLine, Piece } from '../../model/index.ts';
import type { Position } from '../fill.ts';

/**
 * Which sets of pieces the list can seat. Pieces that fit the same lines are one class, so that a set is known by how
 * many it has of each class; by Hall's theorem the places that no line asks for must take what overflows.
 */
export interface Seating {
  readonly classes: number;
  /** By piece number: its class. */
  readonly classOf: Int16Array;
  /** Places that any piece may take. */
  readonly free: number;
  /** By class: the group of lines it competes in; groups do not touch one another. */
  readonly groupOf: readonly number[];
  /** Places without a line that a group needs for so many pieces of each class. */
  readonly overflow: (group: number, counts: Int32Array) => number;
  /** The same for all groups. */
  readonly needed: (counts: Int32Array) => number;
  /** Classes that have lines for themselves, and how many of the class any filling has there at least. */
  readonly own: readonly { readonly kind: number; readonly least: number }[];
}

/** How many pieces of these classes, tried in turn, sit beside what sits: without a free place, and in all. */
export const roomBeside = (
  seated: Int32Array,
  kinds: readonly number[],
  { needed, free }: Pick<Seating, 'needed' | 'free'>,
): { readonly listed: number; readonly most: number } => {
  const counts = new Int32Array(seated.length);
  const sitting = (room: number): number => {
    counts.set(seated);
    let sit = 0;
    for (const kind of kinds) {
      counts[kind] = (counts[kind] as number) + 1;
      if (needed(counts) <= room) sit += 1;
      else counts[kind] = (counts[kind] as number) - 1;
    }
    return sit;
  };
  return { listed: sitting(needed(seated)), most: sitting(free) };
};

/** Lines that are told apart; any beyond stand together as one, which only lets more sets sit. */
const MOST_LINES = 31;
/** Lines that compete with one another beyond which only single lines and all together are held against a set. */
const MOST_LINES_TOGETHER = 10;

interface Test {
  readonly room: number;
  readonly members: readonly number[];
}

/** Joins masks that share a line, again and again, until none does. */
const joined = (masks: readonly number[]): readonly number[] => {
  const groups: number[] = [];
  for (const mask of masks) {
    let union = mask;
    for (let at = groups.length - 1; at >= 0; at -= 1) {
      const group = groups[at] ?? 0;
      if ((group & union) === 0) continue;
      union |= group;
      groups.splice(at, 1);
      at = groups.length;
    }
    groups.push(union);
  }
  return groups;
};

const bitsOf = (mask: number): readonly number[] =>
  Array.from({ length: MOST_LINES }, (_, bit) => bit).filter((bit) => (mask & (1 << bit)) !== 0);

/** Every set of lines of a group with the classes that fit nowhere else: those are what the set of lines must hold. */
const testsOf = (group: number, masks: readonly number[], capacity: readonly number[]): readonly Test[] => {
  const lines = bitsOf(group);
  const roomOf = (set: number): number => bitsOf(set).reduce((sum, line) => sum + (capacity[line] ?? 0), 0);
  const sets =
    lines.length > MOST_LINES_TOGETHER
      ? [...lines.map((line) => 1 << line), group]
      : Array.from({ length: 2 ** lines.length - 1 }, (_, code) =>
          lines.reduce((set, line, bit) => (((code + 1) & (1 << bit)) === 0 ? set : set | (1 << line)), 0),
        );
  return sets
    .map((set) => ({
      room: roomOf(set),
      members: masks.flatMap((mask, index) => (mask !== 0 && (mask & ~set) === 0 ? [index] : [])),
    }))
    .filter(({ members }) => members.length > 0);
};

export const createSeating = (
  pieces: readonly Piece[],
  positions: readonly Position[],
  lines: readonly ListLine[],
): Seating => {
  const bitOf = (line: number): number => Math.min(line, MOST_LINES - 1);
  const maskOf = ({ kind }: Piece): number =>
    lines.reduce((mask, { kinds }, line) => (kinds.includes(kind) ? mask | (1 << bitOf(line)) : mask), 0);
  const linesOf = [...new Set(pieces.map(maskOf))].sort((a, b) => a - b);
  const capacity = Array.from(
    { length: Math.min(lines.length, MOST_LINES) },
    (_, bit) => positions.filter(({ line }) => line !== undefined && bitOf(line) === bit).length,
  );
  const groups = joined(linesOf.filter((mask) => mask !== 0));
  const tests = groups.map((group) => testsOf(group, linesOf, capacity));
  const classOf = Int16Array.from(pieces, (piece) => linesOf.indexOf(maskOf(piece)));
  const own = linesOf.flatMap((mask, kind) => {
    const shared = linesOf.some((other, index) => index !== kind && (other & mask) !== 0);
    const room = bitsOf(mask).reduce((sum, line) => sum + (capacity[line] ?? 0), 0);
    const there = classOf.filter((other) => other === kind).length;
    return mask === 0 || shared ? [] : [{ kind, least: Math.min(room, there) }];
  });
  const nowhere = linesOf.indexOf(0);
  const groupOf = linesOf.map((mask) => groups.findIndex((group) => (group & mask) !== 0));
  const overflow = (group: number, counts: Int32Array): number => {
    if (group < 0) return nowhere < 0 ? 0 : (counts[nowhere] as number);
    let most = 0;
    for (const { room, members } of tests[group] ?? []) {
      let over = -room;
      for (const member of members) over += counts[member] as number;
      if (over > most) most = over;
    }
    return most;
  };
  return {
    classes: linesOf.length,
    classOf,
    free: positions.filter(({ line }) => line === undefined).length,
    groupOf,
    overflow,
    needed: (counts) => {
      let sum = overflow(-1, counts);
      for (let group = 0; group < tests.length; group += 1) sum += overflow(group, counts);
      return sum;
    },
    own,
  };
};
