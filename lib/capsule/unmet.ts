import type { Finding, ListLine, Piece } from '../model/index.ts';
import { phrase } from '../words/index.ts';
import { type Position, seatPieces } from './fill.ts';
import { error } from './infeasible.ts';
import { type Limits, overLimits, packedOf } from './limits.ts';

export interface LimitsQuestion {
  readonly eligible: readonly Piece[];
  readonly kept: readonly Piece[];
  readonly positions: readonly Position[];
  readonly lines: readonly ListLine[];
  readonly limits: Limits;
}

type Measured = 'grams' | 'litres';

/** Fills the list with `first`, then with what weighs or takes least. Without a line `shorter`, with one piece less on it. */
const fillWith = (
  { eligible, kept, positions, lines }: LimitsQuestion,
  measured: Measured,
  first: readonly Piece[],
  shorter?: number,
): readonly Piece[] => {
  const ahead = [...new Set([...kept, ...first])];
  const order = [
    ...ahead,
    ...eligible.filter((piece) => !ahead.includes(piece)).sort((a, b) => a[measured].value - b[measured].value),
  ];
  const listed = positions.filter(({ line }) => line !== undefined);
  const dropped = listed.findIndex(({ line }) => line === shorter);
  const open = listed.filter((_, at) => at !== dropped);
  // what is ahead and finds no line takes places without one; no other piece does
  const beside = ahead.length - seatPieces(ahead, open, lines).filter((index) => index >= 0).length;
  const free = positions.filter(({ line }) => line === undefined).slice(0, beside);
  return seatPieces(order, [...open, ...free], lines).flatMap((index) => order[index] ?? []);
};

/** A filling within the limits round what is kept; undefined when the least there is of one is over. */
export const fillingWithin = (question: LimitsQuestion): readonly Piece[] | undefined => {
  const { limits } = question;
  const plain = fillWith(question, 'grams', []);
  if (overLimits(plain, limits) === 0) return plain;
  const measures = (['grams', 'litres'] as const).filter((measured) => limits[measured] !== undefined);
  const least = measures.map((measured) => ({ measured, pieces: leastFilling(question, measured) }));
  const over = least.some(
    ({ measured, pieces }) => packedOf(pieces, limits.journeys)[measured] > (limits[measured] ?? 0),
  );
  return over ? undefined : (least.find(({ pieces }) => overLimits(pieces, limits) === 0) ?? least[0])?.pieces;
};

/**
 * The filling that puts least in the bags. What is worn on a journey is not in them, so that it may be worth packing a
 * heavier coat or pair of shoes: each is tried as the one that is worn.
 */
const leastFilling = (question: LimitsQuestion, measured: Measured, shorter?: number): readonly Piece[] => {
  const { eligible, limits } = question;
  const packed = (pieces: readonly Piece[]): number => packedOf(pieces, limits.journeys)[measured];
  let worn: readonly Piece[] = [];
  let best = fillWith(question, measured, worn, shorter);
  if (!limits.journeys) return best;
  for (const place of ['outer layer', 'shoes'] as const) {
    const before = worn;
    for (const piece of eligible.filter(({ places }) => places.includes(place))) {
      const tried = fillWith(question, measured, [...before, piece], shorter);
      if (packed(tried) >= packed(best)) continue;
      best = tried;
      worn = [...before, piece];
    }
  }
  return best;
};

/** The longest line that, one piece shorter, lets the limits be met. */
const lineToShorten = (question: LimitsQuestion, measured: Measured): ListLine | undefined => {
  const { lines, limits } = question;
  const fits = (line: number): boolean =>
    overLimits(leastFilling(question, measured, line), { journeys: limits.journeys, ...pick(limits, measured) }) === 0;
  return lines
    .map((line, number) => ({ line, number }))
    .sort((a, b) => b.line.count - a.line.count)
    .find(({ number }) => fits(number))?.line;
};

const pick = (limits: Limits, measured: Measured): Partial<Limits> => {
  const most = limits[measured];
  return most === undefined ? {} : { [measured]: most };
};

/** Limits that no filling of the list meets, each with the least that would mend it. */
export const unmetLimits = (question: LimitsQuestion): readonly Finding[] => {
  const { limits, kept } = question;
  return (['grams', 'litres'] as const).flatMap((measured): Finding[] => {
    const most = limits[measured];
    if (most === undefined) return [];
    const alone = { journeys: limits.journeys, ...pick(limits, measured) };
    if (overLimits(fillWith(question, measured, []), alone) === 0) return [];
    const least = packedOf(leastFilling(question, measured), limits.journeys)[measured];
    if (least <= most) return [];
    const shorten = lineToShorten(question, measured);
    const values = { least, most, kept: kept.length };
    const mend = { over: least - most, line: shorten?.what ?? '' };
    return [
      measured === 'grams'
        ? error('bag-weight', phrase('capsule', 'too heavy', values), phrase('capsule', 'too heavy mend', mend))
        : error('bag-volume', phrase('capsule', 'too full', values), phrase('capsule', 'too full mend', mend)),
    ];
  });
};

/** When each limit could be met alone and no set was found that meets both: what the nearest set takes. */
export const nothingWithin = (nearest: readonly Piece[], limits: Limits): Finding => {
  const { grams, litres } = packedOf(nearest, limits.journeys);
  const overGrams = limits.grams === undefined ? 0 : Math.max(0, grams - limits.grams);
  const overLitres = limits.litres === undefined ? 0 : Math.max(0, litres - limits.litres);
  return error(
    'bag-limits',
    phrase('capsule', 'nothing within', { grams, litres }),
    phrase('capsule', 'nothing within mend', { overGrams, overLitres }),
  );
};
