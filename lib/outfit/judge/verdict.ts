import type { Look } from '../../model/look.ts';
import { SLOTS, type Slot } from '../../vocabulary/places.ts';
import { type Phrase, phrase } from '../../words/phrase.ts';
import { lookOf } from '../grammar/look-id.ts';
import { type Seating, seatingsOf } from '../grammar/seating.ts';
import { type SeatedPiece, slotsOfPiece } from '../grammar/seats.ts';
import type { Rulings } from '../rules/rulings.ts';
import { type Judged, type Reason, reasonsOf } from './reasons.ts';

/** What there is to say of some pieces worn together. */
export interface Verdict {
  /** No rule that rules out stands against it; more pieces may still be needed. */
  readonly goes: boolean;
  /** Nothing is missing from a whole look. */
  readonly complete: boolean;
  /** The pieces as a look, each in its place, when nothing is missing; also when it does not go. */
  readonly look?: Look;
  /** What rules out first, then what lowers the score. */
  readonly reasons: readonly Reason[];
  /** What is still needed for a whole look. */
  readonly missing: readonly Phrase[];
}

const grammar = (message: Phrase, pieces: readonly string[]): Reason => ({
  rule: 'grammar',
  severity: 'rules out',
  message,
  pieces,
});

const shared = (a: SeatedPiece, b: SeatedPiece): Slot | undefined => {
  const [only, another] = slotsOfPiece(a);
  return another === undefined && only !== undefined && slotsOfPiece(b).join() === only ? only : undefined;
};

/** Why pieces have no places together: the pairs that cannot be, or their number. */
const unseatable = (pieces: readonly SeatedPiece[]): readonly Reason[] => {
  const pairs = pieces.flatMap((a, index) =>
    pieces.slice(index + 1).flatMap((b): readonly Reason[] => {
      if (seatingsOf([a, b]).length > 0) return [];
      const place = shared(a, b);
      const said = { one: a.name, two: b.name };
      return [
        grammar(
          place === undefined
            ? phrase('outfit', 'no common form', said)
            : phrase('outfit', 'same place', { ...said, place }),
          [a.id, b.id],
        ),
      ];
    }),
  );
  if (pairs.length > 0) return pairs;
  // the fewest of them that still have no places together
  const few = pieces.reduce((left, piece) => {
    const fewer = left.filter(({ id }) => id !== piece.id);
    return seatingsOf(fewer).length === 0 ? fewer : left;
  }, pieces);
  const names = few.map(({ name }) => name);
  const places = [...new Set(few.flatMap(slotsOfPiece))].toSorted((a, b) => SLOTS.indexOf(a) - SLOTS.indexOf(b));
  return [
    grammar(
      places.length < few.length
        ? phrase('outfit', 'too many pieces', { pieces: names, places })
        : phrase('outfit', 'no form for all', { pieces: names }),
      few.map(({ id }) => id),
    ),
  ];
};

const wordsOf = ({ rule, message }: Reason): string => JSON.stringify([rule, message]);

/** What several pieces are told in the same words is told once, of all of them. */
const toldOnce = (reasons: readonly Reason[]): readonly Reason[] =>
  reasons
    .filter((reason, index) => reasons.findIndex((other) => wordsOf(other) === wordsOf(reason)) === index)
    .map((reason) => {
      const pieces = reasons.filter((other) => wordsOf(other) === wordsOf(reason)).flatMap((other) => other.pieces);
      return { ...reason, pieces: [...new Set(pieces)] };
    });

const hard = (reasons: readonly Reason[]): number => reasons.filter(({ severity }) => severity === 'rules out').length;

/** What judging needs: the pieces, what the rules in force say of them, and what is asked for when something is. */
export interface Bench<P extends SeatedPiece> {
  readonly rulings: Rulings<P>;
  readonly pieceById: ReadonlyMap<string, P>;
  readonly asked?: (judged: Judged<P>) => readonly Reason[];
}

/** Judges pieces by the best way of wearing them together. Unknown ids are a reason, not an error. */
export const judge = <P extends SeatedPiece>(bench: Bench<P>, pieceIds: readonly string[]): Verdict => {
  const wanted = [...new Set(pieceIds)];
  const strangers = wanted
    .filter((id) => !bench.pieceById.has(id))
    .map((id) => grammar(phrase('outfit', 'not in wardrobe', { piece: id }), [id]));
  // in the order of the wardrobe, so that the order in which pieces are asked about decides nothing
  const pieces = [...bench.pieceById.values()].filter(({ id }) => wanted.includes(id));
  const seatings = seatingsOf(pieces);
  if (strangers.length > 0 || seatings.length === 0) {
    const reasons = [...strangers, ...(seatings.length === 0 && pieces.length > 1 ? unseatable(pieces) : [])];
    return { goes: false, complete: false, reasons, missing: [] };
  }
  const nameOf = (id: string): string => bench.pieceById.get(id)?.name ?? id;
  const judged = seatings.map((seating) => {
    const seated = { ...seating, whole: seating.missing.length === 0 };
    return {
      seating,
      reasons: reasonsOf(seated, bench.rulings, bench.asked?.(seated) ?? [], nameOf),
      odd: seating.worn.reduce((sum, { piece, slot }) => sum + slotsOfPiece(piece).indexOf(slot), 0),
    };
  });
  // a whole look before a part of one, then the fewest breaches, then the places the pieces are made for
  const [best] = judged.toSorted(
    (a, b) =>
      Number(a.seating.missing.length > 0) - Number(b.seating.missing.length > 0) ||
      hard(a.reasons) - hard(b.reasons) ||
      a.seating.missing.length - b.seating.missing.length ||
      a.reasons.length - b.reasons.length ||
      a.odd - b.odd,
  );
  if (best === undefined) return { goes: false, complete: false, reasons: [], missing: [] };
  const complete = best.seating.missing.length === 0;
  return {
    goes: hard(best.reasons) === 0,
    complete,
    ...(complete ? { look: lookOf(best.seating.worn) } : {}),
    reasons: toldOnce(best.reasons),
    missing: complete ? [] : missingOf(seatings),
  };
};

/** One sentence naming each place that is still empty in the fullest way of wearing the pieces. */
const missingOf = (seatings: readonly Seating[]): readonly Phrase[] => {
  const fewest = Math.min(...seatings.map(({ missing }) => missing.length));
  const places = seatings.find(({ missing }) => missing.length === fewest)?.missing ?? [];
  return places.map((place) => phrase('outfit', 'missing piece', { places: [place] }));
};
