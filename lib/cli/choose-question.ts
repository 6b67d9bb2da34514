import { type ChooseQuestion, listFromTraits } from '../capsule/index.ts';
import { briefFor, type Content, type Trip, wardrobeOn, writeInstead } from '../content/index.ts';
import type { Brief, BriefTraveller, Capsule, PackingListPlan } from '../model/index.ts';
import { type Given, UsageError, wholeNumber } from './verb.ts';

/** What the options ask for, read before the content is. */
export interface Wishes {
  readonly traveller?: string;
  readonly mood?: string;
  readonly list?: string;
  readonly limits: Pick<ChooseQuestion, 'piecesAtMost' | 'gramsAtMost' | 'litresAtMost'>;
  readonly level: 'core' | 'layered';
  /** The proposal to print as a file, from 1. */
  readonly proposal: number;
}

const textOf = (option: Given[string]): string | undefined => (option === undefined ? undefined : String(option));

/** A limit given to an option; nothing fits into none, so 0 is refused. */
const limitOf = (option: Given[string], name: string): number | undefined => {
  if (option === undefined) return undefined;
  const limit = wholeNumber(option, name, 0);
  if (limit === 0) throw new UsageError(`--${name} wants at least 1, not 0`);
  return limit;
};

const levelOf = (option: Given[string]): Wishes['level'] => {
  const level = option ?? 'layered';
  if (level === 'core' || level === 'layered') return level;
  throw new UsageError(`--most wants core or layered, not "${String(level)}"`);
};

/** Reads the options; a wrong one is a `UsageError`. */
export const wishesOf = (options: Given): Wishes => {
  const [traveller, mood, list] = [options.traveller, options.mood, options.list].map(textOf);
  const [pieces, grams, litres] = (['pieces', 'grams', 'litres'] as const).map((name) => limitOf(options[name], name));
  return {
    ...(traveller === undefined ? {} : { traveller }),
    ...(mood === undefined ? {} : { mood }),
    ...(list === undefined ? {} : { list }),
    limits: {
      ...(pieces === undefined ? {} : { piecesAtMost: pieces }),
      ...(grams === undefined ? {} : { gramsAtMost: grams }),
      ...(litres === undefined ? {} : { litresAtMost: litres }),
    },
    level: levelOf(options.most),
    proposal: wholeNumber(options.proposal, 'proposal', 1),
  };
};

/** What a traveller without a capsule is chosen by: the only list there is, every colour. */
const anyMood = (
  { id, title }: Brief,
  traveller: BriefTraveller | undefined,
  lists: readonly PackingListPlan[],
): Capsule => ({
  id: 'new',
  file: `trips/${id}/brief.md`,
  trip: id,
  title,
  traveller: traveller?.name ?? '',
  wardrobe: traveller?.wardrobe ?? '',
  list: lists.length === 1 ? (lists[0]?.id ?? '') : '',
  mood: { palette: [], words: [] },
  pieces: [],
  never: [],
  always: [],
  favourites: [],
  fixed: [],
  rules: {},
  rationale: '',
});

/** The capsule a choice is made like: the one named, else the traveller's first, else none but the traveller. */
const likeOf = (
  { brief, capsules }: Trip,
  lists: readonly PackingListPlan[],
  { mood, traveller: named }: Wishes,
): Capsule => {
  const names = brief.travellers.map(({ name }) => name);
  if (named !== undefined && !names.includes(named))
    throw new UsageError(`nobody called "${named}" travels; ${writeInstead(named, names)}`);
  const theirs = capsules.filter(({ traveller }) => named === undefined || traveller === named);
  if (mood === undefined) {
    const at = named === undefined ? 0 : names.indexOf(named);
    return theirs[0] ?? anyMood(brief, brief.travellers[at], lists);
  }
  const found = theirs.find(({ id }) => id === mood);
  if (found !== undefined) return found;
  throw new UsageError(
    `${named ?? 'the trip'} has no capsule "${mood}"; it has ${theirs.map(({ id }) => id).join(', ') || 'none yet'}`,
  );
};

/** The list with a name; undefined where the capsule names none, or one that is not there. */
const listNamed = (lists: readonly PackingListPlan[], like: Capsule, wish: string | undefined) => {
  const id = wish ?? like.list;
  const found = lists.find((list) => list.id === id);
  if (found !== undefined || wish === undefined) return found;
  throw new UsageError(
    `there is no list "${wish}"; ${writeInstead(
      wish,
      lists.map((list) => list.id),
    )}`,
  );
};

/** The question, and what the file of a proposal says beside its pieces. A wish for what is not there is a `UsageError`. */
export const questionOf = (
  trip: Trip,
  { lists, wardrobes, houseRules }: Pick<Content, 'lists' | 'wardrobes' | 'houseRules'>,
  wishes: Wishes,
): { readonly question: ChooseQuestion; readonly like: Capsule } => {
  const like = likeOf(trip, lists, wishes);
  const brief = briefFor(trip.brief, like.traveller);
  const written = listNamed(lists, like, wishes.list);
  const { mood, traveller, choose, never, always } = like;
  return {
    like: { ...like, list: written?.id ?? '' },
    question: {
      wardrobe: wardrobeOn(wardrobes, brief, like),
      brief,
      traveller,
      list: written ?? listFromTraits(brief).list,
      mood,
      keep: choose?.keep ?? [],
      leaveOut: choose?.leaveOut ?? [],
      ...wishes.limits,
      most: wishes.level,
      rules: { ...houseRules, ...like.rules },
      never,
      always,
    },
  };
};
