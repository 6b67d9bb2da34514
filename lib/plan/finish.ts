import { shadesEyes, shadesFace, sunCover, uvBand } from '../comfort/index.ts';
import type { Brief, Finding, Look, Piece, Plan, StockLine } from '../model/index.ts';
import { dressIndex, isForWarmth, type KindId } from '../vocabulary/index.ts';
import { phrase } from '../words/index.ts';
import type { LookRestriction, LookSource } from './look-source.ts';
import type { Moment } from './moments.ts';
import { isColdOutdoors } from './warmth.ts';
import { BITTER_WAY_C, hasBareLegs, isTights } from './way.ts';

const kinds = (...ids: KindId[]): ReadonlySet<KindId> => new Set(ids);

/** Shoes worn with socks below trousers: those that are laced, and snow boots. common practice, no source */
const SOCKED = kinds(
  'oxford shoes',
  'derby shoes',
  'brogues',
  'lace-up boots',
  'hiking boots',
  'walking shoes',
  'snow boots',
);
/** Trousers with loops for a belt. common practice, no source */
const LOOPED = kinds('suit trousers', 'tailored trousers', 'chinos', 'corduroy trousers', 'jeans', 'wide jeans');
/** Braces or a waistcoat take the place of a belt. common practice, no source */
const INSTEAD_OF_BELT = kinds('braces', 'waistcoat');
/** Dress codes from which a bare ankle or an empty loop is noticed. common practice, no source */
const SOCKS_FROM = dressIndex('business');
const BELT_FROM = dressIndex('business');

type Finish = 'socks' | 'belt';

const isSock = ({ places, covers }: Piece): boolean => places.includes('legwear') && !covers.includes('knees');

/** What a look with trousers lacks below the waist. */
const lacking = (look: Look, pieces: ReadonlyMap<string, Piece>): readonly Finish[] => {
  const inSlot = (slot: string): Piece | undefined =>
    pieces.get(look.worn.find((worn) => worn.slot === slot)?.piece ?? '');
  const bottom = inSlot('bottom');
  const shoes = inSlot('shoes');
  const trousers = bottom?.covers.includes('calves') === true;
  const belted = look.worn.some(({ piece, slot }) => {
    const { kind } = pieces.get(piece) ?? {};
    return slot === 'belt' || (kind !== undefined && INSTEAD_OF_BELT.has(kind));
  });
  return [
    ...(trousers && shoes !== undefined && SOCKED.has(shoes.kind) && inSlot('legwear') === undefined
      ? (['socks'] as const)
      : []),
    ...(bottom !== undefined && LOOPED.has(bottom.kind) && !belted ? (['belt'] as const) : []),
  ];
};

const canBe = (piece: Piece, finish: Finish): boolean =>
  finish === 'socks' ? isSock(piece) : piece.places.includes('belt');

type Wanted = (piece: Piece) => boolean;

/** Tights under a skirt, a dress or shorts where it is bitter outside, on the way or there. */
const forBareLegs = ({ occasion, air, weather, swims }: Moment, look: Look, pieces: ReadonlyMap<string, Piece>) => {
  const outside = occasion.setting.where === 'indoors' ? weather : air;
  const isBitter = !swims && outside !== undefined && outside.lowC <= BITTER_WAY_C;
  return isBitter && hasBareLegs(look, pieces) ? [isTights] : [];
};

/** What shades face and eyes, where the sun is worth a caution and a look leaves them to it. */
const againstSun = (
  { uvIndex = 0, occasion }: Moment,
  look: Look,
  pieces: ReadonlyMap<string, Piece>,
): readonly Wanted[] => {
  if (uvBand(uvIndex) === 'low' || occasion.needs.includes('rain')) return [];
  const cover = sunCover(look, pieces);
  return [...(cover.hat ? [] : [shadesFace]), ...(cover.eyewear ? [] : [shadesEyes])];
};

/** What covers head, neck and hands in the cold, as far as a look leaves them bare. */
const againstCold = (moment: Moment, { worn }: Look): readonly Wanted[] =>
  isColdOutdoors(moment)
    ? (['headwear', 'scarf', 'gloves'] as const)
        .filter((slot) => worn.every((one) => one.slot !== slot))
        .map((slot) => (piece) => isForWarmth(piece) && piece.places.includes(slot))
    : [];

/** Puts on the first piece of each kind wanted that goes with the rest, where the bag has one. */
const putOn = (
  source: Pick<LookSource, 'explain'>,
  look: Look,
  pieces: readonly Piece[],
  wanted: readonly Wanted[],
  restriction: LookRestriction = {},
): Look => {
  let done = look;
  for (const wants of wanted) {
    for (const piece of pieces.filter(wants)) {
      const tried = source.explain([...done.worn.map(({ piece: id }) => id), piece.id], restriction);
      if (!tried.goes || tried.look === undefined) continue;
      done = tried.look;
      break;
    }
  }
  return done;
};

/** Puts something warm on head, neck and hands in the cold, where the bag has it and it goes with the rest. */
export const coveredInTheCold = (
  source: LookSource,
  moment: Moment,
  look: Look,
  pieces: readonly Piece[],
  restriction: LookRestriction,
): Look => putOn(source, look, pieces, againstCold(moment, look), restriction);

const wantedOf = (finishes: readonly Finish[]): readonly Wanted[] =>
  finishes.map((finish) => (piece) => canBe(piece, finish));

/** Puts socks into the laced shoes of a look below trousers, where there is a pair that goes with the rest. */
export const withSocks = (source: Pick<LookSource, 'explain'>, look: Look, pieces: readonly Piece[]): Look => {
  const byId = new Map(pieces.map((piece) => [piece.id, piece]));
  return putOn(source, look, pieces, wantedOf(lacking(look, byId).filter((finish) => finish === 'socks')));
};

/**
 * Puts tights under bare legs in the cold, socks into laced shoes, a belt through its loops, a brim and glasses on against the sun, and something warm on
 * head, neck and hands against the cold, where the bag has one that goes with the rest.
 */
export const finished = (source: LookSource, moment: Moment, look: Look, pieces: readonly Piece[]): Look => {
  const byId = new Map(pieces.map((piece) => [piece.id, piece]));
  const asksBelt = dressIndex(moment.occasion.dress) >= BELT_FROM;
  const finishes = lacking(look, byId).filter((finish) => finish !== 'belt' || asksBelt);
  const wanted = [
    ...forBareLegs(moment, look, byId),
    ...wantedOf(finishes),
    ...againstSun(moment, look, byId),
    ...againstCold(moment, look),
  ];
  return putOn(source, look, pieces, wanted, moment.restriction);
};

/**
 * What is missed at dressy occasions and is not in the bag: a belt, and socks where neither the capsule nor the stock
 * of underthings has any.
 */
export const findingsOfFinish = (
  plan: Plan,
  brief: Brief,
  pieces: readonly Piece[],
  stock: readonly StockLine[],
): readonly Finding[] => {
  const byId = new Map(pieces.map((piece) => [piece.id, piece]));
  const occasions = new Map(brief.occasions.map((occasion) => [occasion.id, occasion]));
  const without = (finish: Finish, from: number): readonly { readonly id: string; readonly what: string }[] =>
    plan.days.flatMap((day) =>
      day.occasions.flatMap(({ occasion: id, look }) => {
        const occasion = occasions.get(id);
        const dressy = occasion !== undefined && dressIndex(occasion.dress) >= from;
        return dressy && look !== undefined && lacking(look, byId).includes(finish) ? [occasion] : [];
      }),
    );
  const say = (finish: Finish, from: number): readonly Finding[] => {
    const bare = without(finish, from);
    if (bare.length === 0 || pieces.some((piece) => canBe(piece, finish))) return [];
    return [
      {
        level: 'advice',
        rule: `no-${finish}`,
        message: phrase('plan', `no ${finish}`, { occasions: bare.map(({ what }) => what) }),
        mend: phrase('plan', `no ${finish} mend`, {}),
        about: bare.map(({ id }) => id),
      },
    ];
  };
  const packsUnderthings = stock.some(
    ({ group, travellers }) =>
      group === 'underthings' && (travellers.length === 0 || travellers.includes(plan.traveller)),
  );
  return [...(packsUnderthings ? [] : say('socks', SOCKS_FROM)), ...say('belt', BELT_FROM)];
};
