import { UNDERTHINGS_CLO } from '../../comfort/clo.ts';
import type { CoreForm, Level } from '../grammar/forms.ts';
import type { Seat } from '../grammar/seats.ts';
import { CLO_UNITS, type Ground } from '../ground.ts';
import type { Restriction } from '../restriction.ts';
import { type Candidates, candidatesFor, type SeatDemand } from './candidates.ts';
import { popcount } from './popcount.ts';
import { clearBit, type LookSpace, NO_NODE, NOTHING, type SpaceClo, type SpaceDemand, setBit, WORD } from './space.ts';

interface Layout {
  readonly words: number;
  readonly wordOf: Int32Array;
  readonly seatOf: Int32Array;
  readonly nodeOf: ReadonlyMap<Seat, number>;
  /** Nodes of each slot in order; "nothing" first. */
  readonly nodes: readonly (readonly number[])[];
}

const layOut = ({ slots, seats, mayBeEmpty }: Candidates): Layout => {
  const nodeOf = new Map<Seat, number>();
  const wordOf = new Int32Array(slots.length + 1);
  const bySlot = slots.map((slot): readonly (Seat | undefined)[] => [
    ...(mayBeEmpty.has(slot) ? [undefined] : []),
    ...(seats.get(slot) ?? []),
  ]);
  bySlot.forEach((list, depth) => {
    wordOf[depth + 1] = (wordOf[depth] ?? 0) + Math.ceil(list.length / WORD);
  });
  const words = wordOf[slots.length] ?? 0;
  const seatOf = new Int32Array(words * WORD).fill(NO_NODE);
  const nodes = bySlot.map((list, depth) =>
    list.map((seat, index) => {
      const node = (wordOf[depth] ?? 0) * WORD + index;
      seatOf[node] = seat?.index ?? NOTHING;
      if (seat !== undefined) nodeOf.set(seat, node);
      return node;
    }),
  );
  return { words, wordOf, seatOf, nodeOf, nodes };
};

const connect = (ground: Ground, { slots, only }: Candidates, layout: Layout): Int32Array => {
  const { words, seatOf, nodes, nodeOf } = layout;
  const n = ground.seats.length;
  const adjacency = new Int32Array(words * WORD * words);
  const forbidsEmpty = slots.map((slot) => ground.empty.get(slot)?.forbids);
  nodes.forEach((list, depth) => {
    for (let other = depth + 1; other < nodes.length; other += 1) {
      const withoutThis = forbidsEmpty[depth];
      const withoutOther = forbidsEmpty[other];
      for (const a of list) {
        const one = seatOf[a] ?? NOTHING;
        for (const b of nodes[other] ?? []) {
          const two = seatOf[b] ?? NOTHING;
          const fits =
            one < 0
              ? two < 0 || withoutThis?.[two] !== 1
              : two < 0
                ? withoutOther?.[one] !== 1
                : ground.goes[one * n + two] === 1;
          if (!fits) continue;
          setBit(adjacency, b, a * words);
          setBit(adjacency, a, b * words);
        }
      }
    }
  });
  for (const { seat, slot, partners } of only) {
    const a = nodeOf.get(seat);
    const place = slots.indexOf(slot);
    if (a === undefined || place < 0) continue;
    for (const b of nodes[place] ?? []) {
      const partner = ground.seats[seatOf[b] ?? NOTHING];
      if (partner !== undefined && partners.has(partner)) continue;
      clearBit(adjacency, b, a * words);
      clearBit(adjacency, a, b * words);
    }
  }
  return adjacency;
};

/** A look's marks are one bit each in a signed word; more demands than bits are refused, which no real capsule meets. */
const MOST_DEMANDS = 31;

const demandRows = (demands: readonly SeatDemand[], { words, nodeOf, wordOf }: Layout): readonly SpaceDemand[] => {
  if (demands.length > MOST_DEMANDS)
    throw new RangeError(`at most ${MOST_DEMANDS} sets of pieces can be asked for at once`);
  const rowOf = (seats: ReadonlySet<Seat>): Int32Array => {
    const row = new Int32Array(words);
    for (const seat of seats) {
      const node = nodeOf.get(seat);
      if (node !== undefined) setBit(row, node);
    }
    return row;
  };
  return demands.map(({ answers, asks }) => {
    const rows = { answers: rowOf(answers), asks: asks && rowOf(asks) };
    let last = 0;
    for (let depth = 0; depth + 1 < wordOf.length; depth += 1) {
      for (let word = wordOf[depth] ?? 0; word < (wordOf[depth + 1] ?? 0); word += 1) {
        if ((rows.answers[word] ?? 0) !== 0 || (rows.asks?.[word] ?? 0) !== 0) last = depth;
      }
    }
    return { ...rows, last };
  });
};

/** Half of the last digit that comfort rounds to, so that both agree on what is enough. */
const HALF_DIGIT = 0.0005 * CLO_UNITS;

const cloOf = (
  ground: Ground,
  { clo }: Restriction,
  form: CoreForm,
  { seatOf, nodes }: Layout,
): SpaceClo | undefined => {
  if (clo === undefined) return undefined;
  const base = form === 'swim' ? 0 : UNDERTHINGS_CLO;
  const amountsOf = (values: Int32Array): Int32Array =>
    Int32Array.from(seatOf, (seat) => (seat >= 0 ? (values[seat] ?? 0) : 0));
  const off = amountsOf(ground.cloOff);
  const on = amountsOf(ground.cloOn);
  const mostOn = new Float64Array(nodes.length + 1);
  const leastOff = new Float64Array(nodes.length + 1);
  for (let depth = nodes.length - 1; depth >= 0; depth -= 1) {
    const list = nodes[depth] ?? [];
    mostOn[depth] = (mostOn[depth + 1] ?? 0) + Math.max(...list.map((node) => on[node] ?? 0));
    leastOff[depth] = (leastOff[depth + 1] ?? 0) + Math.min(...list.map((node) => off[node] ?? 0));
  }
  return {
    min: (clo.min - base) * CLO_UNITS - HALF_DIGIT,
    max: (clo.max - base) * CLO_UNITS + HALF_DIGIT,
    off,
    on,
    mostOn,
    leastOff,
  };
};

/** Builds the searchable space of one form under one question; undefined when it holds no look for sure. */
export const compileSpace = (
  ground: Ground,
  form: CoreForm,
  level: Level,
  restriction: Restriction,
): LookSpace | undefined => {
  const candidates = candidatesFor(ground, form, level, restriction);
  if (candidates === undefined) return undefined;
  const layout = layOut(candidates);
  const { words, wordOf, seatOf, nodes } = layout;
  const root = new Int32Array(words);
  for (const list of nodes) for (const node of list) setBit(root, node);
  const caps = ground.hardCaps.flatMap(({ most, members }) => {
    const ofNode = Uint8Array.from(seatOf, (seat) => (seat >= 0 ? (members[seat] ?? 0) : 0));
    // a class that cannot be exceeded in these slots is no cap
    if (nodes.filter((list) => list.some((node) => ofNode[node] === 1)).length <= most) return [];
    const others = root.slice();
    for (const list of nodes) for (const node of list) if (ofNode[node] === 1) clearBit(others, node);
    return [{ most, ofNode, others }];
  });
  const ofNode = Int32Array.from(seatOf, (seat) => (seat >= 0 ? (ground.marks[seat] ?? 0) : 0));
  const allMarks = ofNode.reduce((union, mark) => union | mark, 0);
  const most = ground.hardMarks;
  if (most !== undefined) removeOvermarked(root, ofNode, most, nodes);
  return {
    form,
    slots: candidates.slots,
    counted: candidates.counted,
    words,
    wordOf,
    seatOf,
    adjacency: connect(ground, candidates, layout),
    root,
    marks: most === undefined || popcount(allMarks) <= most ? undefined : { most, ofNode },
    caps,
    demands: demandRows(candidates.demands, layout),
    clo: cloOf(ground, restriction, form, layout),
  };
};

const removeOvermarked = (
  root: Int32Array,
  ofNode: Int32Array,
  most: number,
  nodes: readonly (readonly number[])[],
): void => {
  for (const list of nodes) for (const node of list) if (popcount(ofNode[node] ?? 0) > most) clearBit(root, node);
};
