import { isRemovable, wornClo } from '../comfort/clo.ts';
import type { Piece } from '../model/piece.ts';
import { SLOTS, type Slot } from '../vocabulary/places.ts';
import { type Seat, seatsOf } from './grammar/seats.ts';
import { pairPoints, seatPoints } from './judge/score.ts';
import { type LoneLayers, loneLayers } from './lone-layers.ts';
import { type Companion, createRulebook, type Rulebook, type WardrobeRules } from './rules/rulebook.ts';

/** A cap over seats: `members[seat]` is 1 for a seat that counts. */
export interface GroundCap {
  readonly most: number;
  readonly members: Uint8Array;
  readonly points: number;
}

/** Everything about a wardrobe under its rules that no question changes: the compatibility graph, points, small state. */
export interface Ground {
  readonly pieces: readonly Piece[];
  readonly pieceById: ReadonlyMap<string, Piece>;
  readonly seats: readonly Seat[];
  readonly seatsBySlot: ReadonlyMap<Slot, readonly Seat[]>;
  readonly rulebook: Rulebook;
  /** `goes[a * n + b]` is 1 when no rule that rules out stands between seats a and b. */
  readonly goes: Uint8Array;
  /** `points[a * n + b]`, symmetric: what the pair earns, less what rules that lower the score take. */
  readonly points: Int32Array;
  readonly own: Int32Array;
  /** 0 for seats that a cap of nothing forbids. */
  readonly allowed: Uint8Array;
  /** By slot: seats that may not stand beside that slot left empty, and points lost by it. */
  readonly empty: ReadonlyMap<Slot, { readonly forbids: Uint8Array; readonly points: Int32Array }>;
  /** Caps of two and more that rule out; caps of one are in `goes`, caps of none in `allowed`. */
  readonly hardCaps: readonly GroundCap[];
  readonly softCaps: readonly GroundCap[];
  /** One bit a mark (hue family) on each seat, and how many a look may have. */
  readonly marks: Int32Array;
  readonly hardMarks: number | undefined;
  readonly softMarks: { readonly most: number; readonly points: number } | undefined;
  readonly hardCompanions: readonly Companion[];
  readonly softCompanions: readonly Companion[];
  /** Layers out of their place that have exceptions; those without are in `empty`. */
  readonly loneLayers: readonly LoneLayers[];
  /** Insulation of each seat in millionths of a clo: with layers off, and with everything on. */
  readonly cloOff: Int32Array;
  readonly cloOn: Int32Array;
}

export const CLO_UNITS = 1_000_000;
const HARD = 'rules out';

const membersOf = (seats: readonly Seat[], counts: (seat: Seat) => boolean): Uint8Array =>
  Uint8Array.from(seats, (seat) => (counts(seat) ? 1 : 0));

const judgePairs = (seats: readonly Seat[], rulebook: Rulebook, goes: Uint8Array, points: Int32Array): void => {
  const n = seats.length;
  const hard = rulebook.pairs.filter(({ severity }) => severity === HARD);
  const soft = rulebook.pairs.filter(({ severity }) => severity !== HARD);
  for (const a of seats) {
    for (let j = a.index + 1; j < n; j += 1) {
      const b = seats[j];
      if (b === undefined || a.slot === b.slot || a.piece.id === b.piece.id) continue;
      if (hard.some(({ rule, threshold }) => rule.between(a, b, threshold) !== undefined)) continue;
      let earned = pairPoints(a, b);
      for (const { rule, threshold } of soft) if (rule.between(a, b, threshold) !== undefined) earned -= rule.points;
      goes[a.index * n + j] = 1;
      goes[j * n + a.index] = 1;
      points[a.index * n + j] = earned;
      points[j * n + a.index] = earned;
    }
  }
};

type Empties = Map<Slot, { readonly forbids: Uint8Array; readonly points: Int32Array }>;

const emptyAt = (empty: Empties, slot: Slot, seats: number) => {
  const entry = empty.get(slot) ?? { forbids: new Uint8Array(seats), points: new Int32Array(seats) };
  empty.set(slot, entry);
  return entry;
};

const judgeEmpties = (seats: readonly Seat[], rulebook: Rulebook): Empties => {
  const empty: Empties = new Map();
  for (const { rule, severity, threshold } of rulebook.empties) {
    const entry = emptyAt(empty, rule.slot, seats.length);
    for (const seat of seats) {
      if (rule.without(seat, threshold) === undefined) continue;
      if (severity === HARD) entry.forbids[seat.index] = 1;
      else entry.points[seat.index] = (entry.points[seat.index] ?? 0) - rule.points;
    }
  }
  return empty;
};

const foldSmallCaps = (caps: readonly GroundCap[], goes: Uint8Array, allowed: Uint8Array): void => {
  const n = allowed.length;
  for (const { most, members } of caps) {
    if (most > 1) continue;
    for (let a = 0; a < n; a += 1) {
      if (members[a] === 0) continue;
      if (most < 1) allowed[a] = 0;
      for (let b = 0; b < n; b += 1) if (members[b] === 1) goes[a * n + b] = 0;
    }
  }
};

const marksOf = (seats: readonly Seat[], rulebook: Rulebook): Int32Array => {
  const marks = new Int32Array(seats.length);
  const bits = new Map<string, number>();
  for (const { rule } of rulebook.marks) {
    for (const seat of seats) {
      for (const mark of rule.marks(seat)) {
        const bit = bits.get(mark) ?? bits.size;
        bits.set(mark, bit);
        marks[seat.index] = (marks[seat.index] ?? 0) | (1 << bit);
      }
    }
  }
  return marks;
};

/** Judges every seat and pair of seats once. Throws RangeError on two pieces with one id or an unknown rule. */
export const createGround = ({ pieces, rules, never, always }: WardrobeRules): Ground => {
  const pieceById = new Map(pieces.map((piece) => [piece.id, piece]));
  if (pieceById.size !== pieces.length) throw new RangeError('two pieces of the wardrobe have the same id');
  const rulebook = createRulebook(rules, { never, always });
  const seats = seatsOf(pieces);
  const n = seats.length;
  const goes = new Uint8Array(n * n);
  const points = new Int32Array(n * n);
  const allowed = new Uint8Array(n).fill(1);
  judgePairs(seats, rulebook, goes, points);
  const capsOf = (hard: boolean): readonly GroundCap[] =>
    rulebook.caps
      .filter(({ severity }) => (severity === HARD) === hard)
      .map((cap) => ({ most: cap.most, points: cap.points, members: membersOf(seats, cap.counts) }))
      .filter(({ members }) => members.some((member) => member === 1));
  const hardCaps = capsOf(true);
  foldSmallCaps(hardCaps, goes, allowed);
  const empty = judgeEmpties(seats, rulebook);
  const lone = loneLayers({ seats, goes, allowed, empty, hardCaps });
  for (const { home, seats: layers, unless } of lone) {
    if (unless.length > 0) continue;
    const { forbids } = emptyAt(empty, home, n);
    for (const { index } of layers) forbids[index] = 1;
  }
  const marking = rulebook.marks[0];
  const clo = (removable: boolean): Int32Array =>
    Int32Array.from(seats, ({ piece, slot }) =>
      removable || !isRemovable(slot) ? Math.round(wornClo(piece, slot) * CLO_UNITS) : 0,
    );
  return {
    pieces,
    pieceById,
    seats,
    seatsBySlot: new Map(SLOTS.map((slot) => [slot, seats.filter((seat) => seat.slot === slot)])),
    rulebook,
    goes,
    points,
    own: Int32Array.from(seats, (seat) => seatPoints(seat, seat.choice)),
    allowed,
    empty,
    loneLayers: lone.filter(({ unless }) => unless.length > 0),
    hardCaps: hardCaps.filter(({ most }) => most > 1),
    softCaps: capsOf(false),
    marks: marksOf(seats, rulebook),
    hardMarks: marking?.severity === HARD ? marking.threshold : undefined,
    softMarks:
      marking !== undefined && marking.severity !== HARD
        ? { most: marking.threshold, points: marking.rule.points }
        : undefined,
    hardCompanions: rulebook.companions.filter(({ severity }) => severity === HARD),
    softCompanions: rulebook.companions.filter(({ severity }) => severity !== HARD),
    cloOff: clo(false),
    cloOn: clo(true),
  };
};
