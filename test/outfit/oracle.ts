import type { Piece } from '../../lib/model/index.ts';
import type { WardrobeRules } from '../../lib/outfit/index.ts';
import { HOUSE_RULES, type Level, type Restriction } from '../../lib/outfit/index.ts';
import { DRESS_CODES, type Place } from '../../lib/vocabulary/index.ts';

/**
 * Looks by plain nested loops, written without the engine: every combination is made in full and then judged by the
 * house rules one after another. Slow and obvious.
 */
export interface OracleWorn {
  readonly piece: Piece;
  readonly slot: never;
}
type Seat = { piece: Piece; slot: string };

const ORDER = [
  'one-piece',
  'top',
  'bottom',
  'swim',
  'cover-up',
  'mid layer',
  'outer layer',
  'base layer',
  'leg layer',
  'legwear',
  'shoes',
  'bag',
  'jewellery ears',
  'jewellery neck',
  'jewellery wrist',
  'jewellery finger',
  'jewellery lapel',
  'eyewear',
  'headwear',
  'scarf',
  'tie',
  'gloves',
  'belt',
];
const REST = [
  'base layer',
  'leg layer',
  'legwear',
  'bag',
  'jewellery ears',
  'jewellery neck',
  'jewellery wrist',
  'jewellery finger',
  'jewellery lapel',
  'eyewear',
  'headwear',
  'scarf',
  'gloves',
  'belt',
];
const GRAMMAR: Record<string, { core: string[]; layers: string[]; rest: string[]; mustRest: string[] }> = {
  separates: {
    core: ['top', 'bottom'],
    layers: ['mid layer', 'outer layer'],
    rest: [...REST, 'shoes', 'tie'],
    mustRest: ['shoes'],
  },
  'one-piece': {
    core: ['one-piece'],
    layers: ['mid layer', 'outer layer'],
    rest: [...REST, 'shoes'],
    mustRest: ['shoes'],
  },
  swim: { core: ['swim'], layers: ['cover-up'], rest: ['shoes', 'bag', 'eyewear', 'headwear'], mustRest: [] },
};

const slotOf = (piece: Piece, place: Place): string =>
  place === 'jewellery' ? `jewellery ${piece.site ?? 'neck'}` : place;

function* combinations(pieces: readonly Piece[], slots: readonly string[], must: readonly string[]): Generator<Seat[]> {
  const [slot, ...others] = slots;
  if (slot === undefined) {
    yield [];
    return;
  }
  const here: (Seat | undefined)[] = must.includes(slot) ? [] : [undefined];
  for (const piece of pieces)
    if (piece.places.some((place) => slotOf(piece, place) === slot)) here.push({ piece, slot });
  for (const seat of here) {
    for (const rest of combinations(pieces, others, must)) {
      if (seat === undefined) yield rest;
      else if (!rest.some(({ piece }) => piece === seat.piece)) yield [seat, ...rest];
    }
  }
}

const settingOf = (wardrobe: WardrobeRules, id: string) => {
  const rule = HOUSE_RULES.find((candidate) => candidate.id === id);
  return {
    hard: (wardrobe.rules[id]?.severity ?? rule?.severity) === 'rules out',
    threshold: wardrobe.rules[id]?.threshold ?? rule?.threshold?.default ?? 0,
  };
};

const obeys = (
  wardrobe: WardrobeRules,
  worn: readonly Seat[],
  slots: readonly string[],
  asked: Restriction,
  formSlots: readonly string[],
): boolean => {
  const seats = worn as never as { piece: Piece; slot: never }[];
  for (const rule of HOUSE_RULES) {
    const { hard, threshold } = settingOf(wardrobe, rule.id);
    if (!hard) continue;
    if (rule.shape === 'pair') {
      for (let i = 0; i < seats.length; i += 1)
        for (let j = i + 1; j < seats.length; j += 1)
          if (rule.between(seats[i] as never, seats[j] as never, threshold) !== undefined) return false;
    }
    if (rule.shape === 'cap' && seats.filter((seat) => rule.counts(seat)).length > threshold) return false;
    if (rule.shape === 'marks' && new Set(seats.flatMap((seat) => rule.marks(seat))).size > threshold) return false;
    if (rule.shape === 'empty' && slots.includes(rule.slot) && !worn.some(({ slot }) => slot === rule.slot)) {
      if (seats.some((seat) => rule.without(seat, threshold) !== undefined)) return false;
    }
    if (rule.shape === 'occasion' && seats.some((seat) => rule.at(seat, asked, threshold) !== undefined)) return false;
    const has = (id: string): boolean => worn.some(({ piece }) => piece.id === id);
    if (rule.shape === 'never' && wardrobe.never.some((set) => new Set(set).size > 1 && set.every(has))) return false;
    if (rule.shape === 'always') {
      for (const [first = '', ...partners] of wardrobe.always) {
        for (const partner of partners) {
          const places = wardrobe.pieces.find(({ id }) => id === partner)?.places ?? [];
          const piece = wardrobe.pieces.find(({ id }) => id === partner);
          // judged once every place the partner could take belongs to what is listed
          const judged = places.every((place) => {
            const slot = piece === undefined ? '' : slotOf(piece, place);
            return !formSlots.includes(slot) || slots.includes(slot);
          });
          if (judged && has(first) && !has(partner)) return false;
        }
      }
    }
  }
  return true;
};

const serves = (worn: readonly Seat[], form: string, asked: Restriction): boolean => {
  const { pieces = [], without = [], cores, dress, needs, clo, heelCmAtMost } = asked;
  const some = (test: (seat: Seat) => boolean): boolean => worn.some(test);
  if (cores !== undefined && !cores.includes(form as never)) return false;
  if (!pieces.every((id) => some(({ piece }) => piece.id === id))) return false;
  if (some(({ piece }) => without.includes(piece.id))) return false;
  if ((dress !== undefined || needs !== undefined) && (form === 'swim') !== (needs ?? []).includes('swim'))
    return false;
  if (dress !== undefined) {
    const step = DRESS_CODES.indexOf(dress);
    if (some(({ piece }) => piece.dress.low > step || piece.dress.high < step)) return false;
  }
  if (some(({ piece, slot }) => slot === 'shoes' && piece.heelCm > (heelCmAtMost ?? 99))) return false;
  for (const need of needs ?? []) {
    if (
      ['uneven ground', 'long walking', 'snow'].includes(need) &&
      some(({ piece, slot }) => slot === 'shoes' && !piece.suits.includes(need))
    )
      return false;
    if (need === 'rain' && !some(({ piece, slot }) => /layer/.test(slot) && piece.suits.includes('rain'))) return false;
    if (need === 'sun' && !some(({ piece }) => piece.suits.includes('sun'))) return false;
    if (
      need === 'shoulders covered' &&
      !some(({ piece, slot }) => slot !== 'scarf' && piece.covers.includes('shoulders'))
    )
      return false;
    if (
      need === 'knees covered' &&
      !some(({ piece, slot }) => slot !== 'legwear' && slot !== 'leg layer' && piece.covers.includes('knees'))
    )
      return false;
    if (need === 'head covered' && !some(({ piece, slot }) => slot === 'headwear' || piece.covers.includes('head')))
      return false;
  }
  if (clo !== undefined) {
    const removable = ['mid layer', 'outer layer', 'cover-up', 'scarf', 'headwear', 'gloves'];
    // underthings nobody lists: ASHRAE Handbook Fundamentals ch. 9 table 9
    const base = form === 'swim' ? 0 : 0.04;
    // socks, 0.02 there, in a closed shoe; what the look has on the feet stands in their place
    const feet = (slot: string) => some((seat) => seat.slot === slot && seat.piece.covers.includes('feet'));
    const legwear = worn.find(({ slot }) => slot === 'legwear');
    const inPlace = feet('legwear') ? Math.min(0.02, legwear?.piece.clo.value ?? 0) : 0;
    const socks = (feet('shoes') ? 0.02 : 0) - inPlace;
    const on = worn.reduce((sum, { piece }) => sum + piece.clo.value, base + socks);
    const off = worn
      .filter(({ slot }) => !removable.includes(slot))
      .reduce((sum, { piece }) => sum + piece.clo.value, base + socks);
    const digits = (value: number): number => Math.round(value * 1000);
    if (digits(on) < digits(clo.min) || digits(off) > digits(clo.max)) return false;
  }
  return true;
};

/** The same pieces with a lone layer moved to the place it is made for: the same outfit to anyone who sees it. */
const withLayerAtHome = (worn: readonly Seat[]): readonly Seat[] => {
  const layers = worn.filter(({ slot }) => slot === 'mid layer' || slot === 'outer layer');
  const [lone] = layers;
  if (lone === undefined || layers.length > 1) return worn;
  const home = lone.piece.places.find((place) => place === 'mid layer' || place === 'outer layer') ?? lone.slot;
  return worn.map((seat) => (seat === lone ? { piece: lone.piece, slot: home } : seat));
};

/** Look ids in the documented order. */
export const oracleLooks = (wardrobe: WardrobeRules, level: Level, asked: Restriction): readonly string[] => {
  const { pieces } = wardrobe;
  const occasion = ['dress', 'needs', 'clo', 'heelCmAtMost'].some((key) => key in asked);
  const written = (seats: readonly Seat[]): string =>
    seats
      .toSorted((a, b) => ORDER.indexOf(a.slot) - ORDER.indexOf(b.slot))
      .map(
        ({ piece, slot }) =>
          piece.id + (slotOf(piece, piece.places[0] as Place) === slot ? '' : `@${slot.replaceAll(' ', '-')}`),
      )
      .join('+');
  return Object.entries(GRAMMAR).flatMap(([form, { core, layers, rest, mustRest }]) => {
    const ordered = (slots: readonly string[]): string[] =>
      slots.toSorted((a, b) => ORDER.indexOf(a) - ORDER.indexOf(b));
    const whole = ordered([...core, ...layers, ...rest]);
    const listed = level === 'core' ? core : level === 'layered' ? ordered([...core, ...layers]) : whole;
    const slots = occasion ? whole : listed;
    const must = [...core, ...mustRest];
    const isLook = (worn: readonly Seat[]): boolean =>
      obeys(wardrobe, worn, slots, asked, whole) && serves(worn, form, asked);
    const looks = [...combinations(pieces, slots, must)].filter(
      (worn) => isLook(worn) && (written(withLayerAtHome(worn)) === written(worn) || !isLook(withLayerAtHome(worn))),
    );
    return [...new Set(looks.map((worn) => written(worn.filter(({ slot }) => listed.includes(slot)))))];
  });
};
