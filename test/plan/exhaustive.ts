import { airOf, cloOfLook, placeOf } from '../../lib/comfort/index.ts';
import type { Brief, Capsule, Look, Occasion, Piece } from '../../lib/model/index.ts';
import { canBeWashed, isLegwear, isSwimwear, wearsBetween } from './validator/calendar.ts';
import { unwished } from './validator/look.ts';
import { askedClo, missing, type Pieces } from './validator/occasion.ts';
import { seenOf, seenTwice, type WornTo } from './validator/seen.ts';
import { dayOf, hoursOf, WASH_HOUR } from './validator/time.ts';

/** All ways of choosing some of these. */
const choices = <T>(things: readonly T[]): readonly (readonly T[])[] =>
  Array.from({ length: 2 ** things.length }, (_, chosen) =>
    things.filter((__, index) => (chosen & (2 ** index)) !== 0),
  );

/** Whether one piece can be worn on these occasions: by trying every choice of wash days and walking through the trip. */
const wearable = (brief: Brief, piece: Piece, worn: readonly Occasion[]): boolean => {
  const dries = piece.care.dryHours.high;
  if (isSwimwear(piece))
    return worn.every((later, index) =>
      worn.slice(0, index).every((earlier) => hoursOf(brief, later)[0] >= hoursOf(brief, earlier)[1] + dries),
    );
  if (isLegwear(piece)) return true;
  const washDays = canBeWashed(piece) ? brief.washDays.map((date) => dayOf(brief, date)) : [];
  const days = [...new Set(worn.map(({ on }) => dayOf(brief, on)))].sort((a, b) => a - b);
  return choices(washDays).some((washes) => {
    let [left, dry] = [wearsBetween(piece), Number.NEGATIVE_INFINITY];
    for (let day = 0; day <= Math.max(0, ...days); day += 1) {
      const today = worn.filter(({ on }) => dayOf(brief, on) === day).map((occasion) => hoursOf(brief, occasion));
      if (today.length > 0) left -= 1;
      if (left < 0 || today.some(([from]) => from < dry)) return false;
      if (!washes.includes(day)) continue;
      left = wearsBetween(piece);
      dry = Math.max(day * 24 + WASH_HOUR, ...today.map(([, until]) => until)) + dries;
    }
    return true;
  });
};

/** Whether a piece cannot be worn on every day of the trip. */
const wearsOut = (brief: Brief, piece: Piece | undefined): boolean =>
  piece !== undefined && (isSwimwear(piece) || wearsBetween(piece) <= dayOf(brief, brief.to));

/** Layers of a look that are on: the fewest clo that keep warm, the jumper before the coat. For mid and outer layers. */
const layersOn = (brief: Brief, occasion: Occasion, look: Look, pieces: Pieces): readonly string[] => {
  const layers = look.worn.filter(({ slot }) => slot === 'mid layer' || slot === 'outer layer');
  const outdoors = occasion.setting.where === 'outdoors';
  const air = airOf(occasion, placeOf(brief, occasion));
  const all = layers.map(({ piece }) => piece);
  const mean = air === undefined ? 0 : (air.lowC + air.highC) / 2;
  const asked = air && askedClo(brief, occasion, 'Ada', { ...air, lowC: mean, highC: mean });
  if (asked === undefined) return outdoors ? all : [];
  const clo = (id: string): number => pieces.get(id)?.clo.value ?? 0;
  const mustBeOn = layers.filter(
    ({ piece, slot }) =>
      outdoors &&
      slot === 'outer layer' &&
      occasion.needs.includes('rain') &&
      pieces.get(piece)?.suits.includes('rain') === true,
  );
  const sum = (worn: Look['worn']): number => worn.reduce((total, { piece }) => total + clo(piece), 0);
  const inOrder = (worn: Look['worn']): boolean =>
    !worn.some((layer) => layer.slot === 'outer layer' && !mustBeOn.includes(layer)) ||
    layers.every((layer) => layer.slot === 'outer layer' || worn.includes(layer));
  const wearing = outdoors ? layers : layers.filter(({ slot }) => slot !== 'outer layer');
  const warm = choices(wearing)
    .filter((worn) => mustBeOn.every((layer) => worn.includes(layer)))
    .filter((worn) => cloOfLook(look, pieces).off + sum(worn) >= asked.min)
    .toSorted((a, b) => Number(inOrder(b)) - Number(inOrder(a)) || sum(a) - sum(b))[0];
  return (warm ?? wearing).map(({ piece }) => piece);
};

export interface Trip {
  readonly brief: Brief;
  readonly pieces: readonly Piece[];
  readonly looks: readonly Look[];
  readonly capsule: Pick<Capsule, 'never' | 'always' | 'fixed'>;
}

interface Option extends WornTo {
  /** Pieces that wear out. */
  readonly ids: readonly string[];
}

/** Of options at one occasion those that no other makes needless: it wears out fewer pieces and, where that counts, shows the same. */
const needed = (options: readonly Option[], byId: Pieces): readonly Option[] => {
  const kept: (Option & { readonly shown: string })[] = [];
  for (const option of options.toSorted((a, b) => a.ids.length - b.ids.length)) {
    const shown = option.occasion.dress === 'casual' ? '' : seenOf(option, byId);
    const spared = kept.some((other) => other.shown === shown && other.ids.every((id) => option.ids.includes(id)));
    if (!spared) kept.push({ ...option, shown });
  }
  return kept;
};

/** Looks that could serve each occasion, in order of time. */
const optionsOf = ({ brief, looks, capsule }: Trip, byId: Pieces): readonly (readonly Option[])[] =>
  brief.occasions
    .toSorted((a, b) => hoursOf(brief, a)[0] - hoursOf(brief, b)[0])
    .map((occasion) => {
      const chosen = capsule.fixed.find((one) => one.occasion === occasion.id)?.pieces;
      const right = looks.filter((look) =>
        chosen === undefined
          ? missing(brief, occasion, look, byId, 'Ada').length === 0 && unwished(look, capsule).length === 0
          : chosen.length === look.worn.length && look.worn.every(({ piece }) => chosen.includes(piece)),
      );
      const options = right.map((look): Option => {
        const on = layersOn(brief, occasion, look, byId);
        const ids = look.worn.map(({ piece }) => piece).filter((id) => wearsOut(brief, byId.get(id)));
        return { occasion, look, ids, on, fixed: chosen !== undefined };
      });
      return needed(options, byId);
    });

/** The most occasions any plan can serve, by trying everything. For small trips. */
export const mostServed = (trip: Trip): number => {
  const byId = new Map(trip.pieces.map((piece) => [piece.id, piece]));
  // an occasion that nothing serves takes no part
  const options = optionsOf(trip, byId).filter(({ length }) => length > 0);
  let most = 0;
  const go = (index: number, served: readonly Option[]): void => {
    most = Math.max(most, served.length);
    for (const option of options[index] ?? []) {
      if (served.length + options.length - index <= most) return;
      const next = [...served, option];
      const holds = option.ids.every((id) => {
        const piece = byId.get(id);
        const worn = next.filter(({ ids }) => ids.includes(id)).map(({ occasion }) => occasion);
        return piece !== undefined && wearable(trip.brief, piece, worn);
      });
      if (holds && seenTwice(next, byId).length === 0) go(index + 1, next);
    }
    if (index < options.length && served.length + options.length - index - 1 > most) go(index + 1, served);
  };
  go(0, []);
  return most;
};

/** Whether one plan can serve all of these occasions, by trying everything. */
export const canServe = (trip: Trip, ids: ReadonlySet<string>): boolean => {
  const occasions = trip.brief.occasions.filter(({ id }) => ids.has(id));
  return mostServed({ ...trip, brief: { ...trip.brief, occasions } }) === occasions.length;
};
