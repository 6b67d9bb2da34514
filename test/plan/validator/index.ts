import type { Brief, Capsule, Look, Occasion, Piece, Plan, PlannedOccasion } from '../../../lib/model/index.ts';
import { unwashed } from './calendar.ts';
import { mislayered } from './layers.ts';
import { ungrammatical, unwished } from './look.ts';
import { missing, type Pieces } from './occasion.ts';
import { seenTwice, type WornTo } from './seen.ts';
import { dayOf } from './time.ts';
import { badWay } from './way.ts';

const NO_WISHES: Pick<Capsule, 'never' | 'always' | 'fixed'> = { never: [], always: [], fixed: [] };
type Wishes = typeof NO_WISHES;

interface Dressed {
  readonly occasion: Occasion;
  readonly planned: PlannedOccasion & { readonly look: Look };
  /** Pieces the stylist fixed to it. */
  readonly chosen: readonly string[] | undefined;
}

/** Each occasion of the traveller within the trip once, on its own day, in order; and the numbers that go with it. */
const miscounted = (plan: Plan, asked: readonly Occasion[]): readonly string[] => {
  const wrong: string[] = [];
  const planned = plan.days.flatMap(({ date, occasions }) => occasions.map((one) => ({ date, ...one })));
  for (const { id, on } of asked) {
    const places = planned.filter(({ occasion }) => occasion === id).map(({ date }) => date);
    if (places.join() !== on) wrong.push(`${id} is planned on ${places.join(' and ') || 'no day'}, not on ${on}`);
  }
  for (const { occasion } of planned)
    if (!asked.some(({ id }) => id === occasion)) wrong.push(`${occasion} is planned and not asked for`);
  const bare = planned.filter(({ look }) => look === undefined).map(({ occasion }) => occasion);
  const said = plan.unserved.map(({ occasion }) => occasion);
  if (bare.sort().join() !== [...said].sort().join())
    wrong.push(`${said.join()} are called unserved, not ${bare.join()}`);
  if (plan.of !== asked.length || plan.served !== asked.length - said.length)
    wrong.push(`says ${plan.served} of ${plan.of}`);
  return wrong;
};

const BASE = ['one-piece', 'top', 'bottom', 'swim', 'base layer', 'leg layer', 'legwear', 'shoes'];
const OVER = ['cover-up', 'mid layer', 'outer layer'];
const wornIn = ({ worn }: Look, slots: readonly string[]): string =>
  worn
    .filter(({ slot }) => slots.includes(slot))
    .map(({ piece }) => piece)
    .join();

/** The change between two looks of a day, as the plan should call it. */
const changeOf = (before: Look | undefined, after: Look): string =>
  before === undefined
    ? 'first'
    : wornIn(before, BASE) !== wornIn(after, BASE)
      ? 'changes clothes'
      : wornIn(before, OVER) !== wornIn(after, OVER)
        ? 'layers only'
        : 'goes on';

const miscalled = (plan: Plan): readonly string[] =>
  plan.days.flatMap(({ occasions }) => {
    let before: Look | undefined;
    return occasions.flatMap(({ occasion, look, change }) => {
      const right = look === undefined ? 'first' : changeOf(before, look);
      before = look ?? before;
      return change === right ? [] : [`${occasion} is called “${change}” and is “${right}”`];
    });
  });

/** The table of wears, piece by piece. */
const misworn = (plan: Plan, pieces: readonly Piece[]): readonly string[] => {
  const days = (id: string): number =>
    plan.days.filter(({ occasions }) =>
      occasions.some(
        ({ look, way }) =>
          look?.worn.some(({ piece }) => piece === id) ||
          way?.worn.includes(id) ||
          way?.under === id ||
          way?.shoes === id,
      ),
    ).length;
  const right = Object.fromEntries(pieces.map(({ id }) => [id, days(id)]));
  return [...new Set([...Object.keys(right), ...Object.keys(plan.wears)])]
    .filter((id) => right[id] !== plan.wears[id])
    .map((id) => `${id} is worn on ${right[id]} days, not ${plan.wears[id]}`);
};

const misdated = (plan: Plan, brief: Brief): readonly string[] =>
  plan.days.length !== dayOf(brief, brief.to) + 1 || plan.days.some(({ date }, day) => dayOf(brief, date) !== day)
    ? ['the days are not the days of the trip']
    : [];

const misdressed = (
  brief: Brief,
  { occasion, planned, chosen }: Dressed,
  pieces: Pieces,
  wishes: Wishes,
  traveller: string,
): readonly string[] => {
  const { look } = planned;
  const form = ungrammatical(look, pieces);
  if (look.worn.some(({ piece }) => !pieces.has(piece))) return form.map((wrong) => `${occasion.id}: ${wrong}`);
  const ids = look.worn.map(({ piece }) => piece).sort();
  const own =
    chosen === undefined
      ? [...missing(brief, occasion, look, pieces, traveller), ...unwished(look, wishes)]
      : chosen.toSorted().join() === ids.join()
        ? []
        : ['it is not the look the stylist chose'];
  const all = [
    ...form,
    ...own,
    ...mislayered(brief, occasion, planned, pieces, traveller),
    ...badWay(brief, occasion, planned, pieces),
  ];
  return all.map((wrong) => `${occasion.id}, ${look.id}: ${wrong}`);
};

/** The plan's looks with their occasions; what is not in the brief is told elsewhere. */
export const dressedOf = (plan: Plan, brief: Brief, { fixed }: Pick<Wishes, 'fixed'>): readonly Dressed[] =>
  plan.days.flatMap(({ occasions }) =>
    occasions.flatMap((planned): Dressed[] => {
      const { look } = planned;
      const occasion = brief.occasions.find(({ id }) => id === planned.occasion);
      if (occasion === undefined || look === undefined) return [];
      const chosen = fixed.find((one) => one.occasion === occasion.id || one.occasion === occasion.what)?.pieces;
      return [{ occasion, planned: { ...planned, look }, chosen }];
    }),
  );

export const wornToOf = (dressed: readonly Dressed[]): readonly WornTo[] =>
  dressed.map(({ occasion, planned: { look, layersOn }, chosen }) => ({
    occasion,
    look,
    on: layersOn,
    fixed: chosen !== undefined,
  }));

/** Everything that is wrong with a plan. Knows what a plan must keep to and nothing of how plans are made. */
export const brokenPlan = (
  plan: Plan,
  brief: Brief,
  pieces: readonly Piece[],
  wishes: Wishes = NO_WISHES,
): readonly string[] => {
  const byId = new Map(pieces.map((piece) => [piece.id, piece]));
  const asked = brief.occasions.filter(
    ({ on, travellers }) =>
      on >= brief.from && on <= brief.to && (travellers.length === 0 || travellers.includes(plan.traveller)),
  );
  const dressed = dressedOf(plan, brief, wishes);
  return [
    ...misdated(plan, brief),
    ...miscounted(plan, asked),
    ...miscalled(plan),
    ...misworn(plan, pieces),
    ...unwashed(plan, brief, new Map(asked.map((occasion) => [occasion.id, occasion])), pieces),
    ...dressed.flatMap((one) => misdressed(brief, one, byId, wishes, plan.traveller)),
    ...seenTwice(wornToOf(dressed), byId),
  ];
};
