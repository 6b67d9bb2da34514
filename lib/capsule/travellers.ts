import type { Brief, HouseRuleSettings, IsoDate, Look, LookCounts, Packing, Piece, Plan } from '../model/index.ts';
import { createWardrobeEngine } from '../outfit/index.ts';
import { KINDS } from '../vocabulary/index.ts';
import { type Phrase, phrase } from '../words/index.ts';
import { judgePicture, type PictureVerdict, seenPieces } from './picture.ts';
import { demandsOf } from './serving.ts';
import { type SharedBags, sharedBags } from './shared-bags.ts';

export interface Traveller {
  readonly name: string;
  readonly pieces: readonly Piece[];
  readonly plan: Plan;
  readonly packing: Packing;
  readonly rules: HouseRuleSettings;
  readonly never: readonly (readonly string[])[];
  readonly always: readonly (readonly string[])[];
}

/** How the looks of two travellers sit beside each other at one occasion. */
export interface SideBySide extends PictureVerdict {
  readonly date: IsoDate;
  readonly occasion: string;
  readonly travellers: readonly [string, string];
  /** Where they do not: another look of one of them for the same occasion that would, its finish left out. */
  readonly instead?: { readonly traveller: string; readonly look: Look };
}

export interface Lendable {
  readonly piece: Piece;
  readonly from: string;
  readonly to: string;
  /** Why it can be worn: any size will do, or the same size. */
  readonly why: Phrase;
  /** Looks of the borrower's plan that it goes with, what they wear in its place left out; and how many there are. */
  readonly goesWith: number;
  readonly planned: number;
  /** Looks with it that the borrower has not without it. */
  readonly adds: LookCounts;
}

export interface Together {
  readonly travellers: readonly string[];
  readonly days: readonly SideBySide[];
  /** What goes with most planned looks first. */
  readonly lendable: readonly Lendable[];
  readonly bags: SharedBags;
}

/** Worn in any size. */
const ANY_SIZE: ReadonlySet<string> = new Set(['bags', 'jewellery']);
const ANY_SIZE_PLACES: ReadonlySet<string> = new Set(['scarf', 'eyewear']);
/** Looks tried for one occasion in search of one that sits better. */
const TRIED = 60;
const LENT_AT_MOST = 12;

const engineOf = ({ rules, never, always }: Traveller, pieces: readonly Piece[]) =>
  createWardrobeEngine({ pieces, rules, never, always });

const lookAt = ({ plan }: Traveller, occasion: string) =>
  plan.days.flatMap(({ occasions }) => occasions).find((planned) => planned.occasion === occasion);

const seenAt = (traveller: Traveller, occasion: string): readonly Piece[] => {
  const planned = lookAt(traveller, occasion);
  return planned?.look === undefined ? [] : seenPieces(planned.look, traveller.pieces, new Set(planned.layersCarried));
};

/** The best look of one for the occasion that sits well beside what the other wears. */
const betterLook = (
  one: Traveller,
  beside: readonly Piece[],
  occasion: string,
  brief: Brief,
): SideBySide['instead'] => {
  const demand = demandsOf(brief, one.name, one.pieces).find((each) => each.occasion === occasion);
  if (demand === undefined) return undefined;
  const found = engineOf(one, one.pieces)
    .rank(TRIED, demand.bare)
    .find(({ look }) => judgePicture(seenPieces(look, one.pieces), beside).goes);
  return found === undefined ? undefined : { traveller: one.name, look: found.look };
};

const sideBySide = (brief: Brief, one: Traveller, two: Traveller): readonly SideBySide[] =>
  brief.occasions.flatMap(({ id, on }): readonly SideBySide[] => {
    if (lookAt(one, id)?.look === undefined || lookAt(two, id)?.look === undefined) return [];
    const [mine, theirs] = [seenAt(one, id), seenAt(two, id)];
    const verdict = judgePicture(mine, theirs);
    const instead = verdict.goes ? undefined : (betterLook(two, mine, id, brief) ?? betterLook(one, theirs, id, brief));
    return [
      {
        date: on,
        occasion: id,
        travellers: [one.name, two.name],
        ...verdict,
        ...(instead === undefined ? {} : { instead }),
      },
    ];
  });

const fitsBorrower = (piece: Piece, to: Traveller): Phrase | undefined => {
  const { group } = KINDS[piece.kind];
  if (ANY_SIZE.has(group) || ANY_SIZE_PLACES.has(piece.places[0] ?? '')) return phrase('capsule', 'lend any size', {});
  const { size } = piece;
  const worn = size !== undefined && to.pieces.some((own) => own.size === size && KINDS[own.kind].group === group);
  return worn ? phrase('capsule', 'lend same size', { size }) : undefined;
};

/** True when the other wears something of the sort as dressy: an evening clutch is not for one who has a day pack alone. */
const wearsSuch = (piece: Piece, { pieces }: Traveller): boolean =>
  pieces.some(
    ({ kind, dress }) =>
      KINDS[kind].group === KINDS[piece.kind].group && dress.low <= piece.dress.high && piece.dress.low <= dress.high,
  );

/** The different looks of a plan, as the ids of their pieces. */
const plannedLooks = ({ plan }: Traveller): readonly (readonly string[])[] => {
  const looks = plan.days.flatMap(({ occasions }) => occasions.flatMap(({ look }) => look ?? []));
  return [...new Map(looks.map((look) => [look.id, look.worn.map(({ piece }) => piece)])).values()];
};

/**
 * What the other does not have and could wear: of a kind they have none of, of a sort they do wear, in a size that fits,
 * and with some look of their plan.
 */
const lendableBetween = (from: Traveller, to: Traveller): readonly Lendable[] =>
  from.pieces.flatMap((piece): readonly Lendable[] => {
    const why = fitsBorrower(piece, to);
    if (why === undefined || to.pieces.some(({ kind }) => kind === piece.kind)) return [];
    if (!wearsSuch(piece, to)) return [];
    // two wardrobes may name a piece alike
    const lent = { ...piece, id: `${piece.wardrobe}/${piece.id}` };
    const engine = engineOf(to, [...to.pieces, lent]);
    const adds = engine.count({ pieces: [lent.id] });
    if (adds.complete === 0n) return [];
    const inItsPlace = new Set(to.pieces.filter(({ places }) => places[0] === piece.places[0]).map(({ id }) => id));
    const looks = plannedLooks(to);
    const goesWith = looks.filter((look) => {
      const rest = look.filter((id) => !inItsPlace.has(id));
      return engine.count({ pieces: [lent.id, ...rest] }).complete > 0n;
    }).length;
    if (goesWith === 0) return [];
    return [{ piece, from: from.name, to: to.name, why, goesWith, planned: looks.length, adds }];
  });

/** Two or more on one brief: day by day side by side, what they can lend, and whether the bags hold it all. */
export const travelTogether = (brief: Brief, travellers: readonly Traveller[]): Together => {
  const pairs = travellers.flatMap((one, index) => travellers.slice(index + 1).map((two) => [one, two] as const));
  return {
    travellers: travellers.map(({ name }) => name),
    days: pairs
      .flatMap(([one, two]) => sideBySide(brief, one, two))
      .toSorted((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0)),
    lendable: pairs
      .flatMap(([one, two]) => [...lendableBetween(one, two), ...lendableBetween(two, one)])
      .toSorted(
        (a, b) =>
          b.goesWith - a.goesWith ||
          Number(b.adds.layered - a.adds.layered) ||
          Number(b.adds.complete - a.adds.complete) ||
          (a.piece.id < b.piece.id ? -1 : 1),
      )
      .slice(0, LENT_AT_MOST),
    bags: sharedBags(travellers),
  };
};
