import { bagReport, briefToPack, findingsOfBag, findingsOfStock, packInFull } from '../bag/index.ts';
import { checkList, findingsOfList, lookSourceOf, refusedPieces, tradeFindings } from '../capsule/index.ts';
import { accentOf, colourFindings, lookVisionFindings, paletteReport } from '../colour/index.ts';
import { feelsOf } from '../comfort/index.ts';
import type {
  Brief,
  Capsule,
  Finding,
  HouseRuleSettings,
  Look,
  PackingListPlan,
  Piece,
  Plan,
  StockLine,
  Studio,
} from '../model/index.ts';
import { createWardrobeEngine, type Restriction, type WardrobeEngine, type WardrobeRules } from '../outfit/index.ts';
import {
  findingsOfBrief,
  findingsOfFinish,
  findingsOfFixed,
  findingsOfNumber,
  findingsOfPlan,
  findingsOfRepeats,
  findingsOfReserve,
  findingsOfRooms,
  findingsOfUse,
  findingsOfWashing,
  planTrip,
  type Solver,
  withSocks,
} from '../plan/index.ts';
import { dampInWords } from './damp.ts';
import { describeLooks, type ShownLook } from './looks.ts';
import { noLookFindings } from './no-looks.ts';
import { inGroupOrder } from './order.ts';
import type { Guide, GuidePair, GuidePiece } from './record.ts';
import { piecesNotWorn, refusalFindings } from './refused.ts';
import { createSuitsTrip, tripAirOf } from './trip-air.ts';

/** What a guide is computed from; all of it plain data but the solver. */
export interface GuideQuestion {
  readonly studio: Studio;
  readonly houseRules: HouseRuleSettings;
  readonly brief: Brief;
  readonly capsule: Capsule;
  /** Every piece of the capsule's wardrobe. */
  readonly wardrobe: readonly Piece[];
  readonly list: PackingListPlan | undefined;
  /** The studio's stock of things that are packed and not worn in a look. */
  readonly sundries: readonly StockLine[];
  readonly solver: Solver;
}

/** The pieces a capsule names, in the order of the kind groups. */
export const piecesOfCapsule = (capsule: Capsule, wardrobe: readonly Piece[]): readonly Piece[] => {
  const byId = new Map(wardrobe.map((piece) => [piece.id, piece]));
  return inGroupOrder(capsule.pieces.flatMap((id) => byId.get(id) ?? []));
};

/** Pieces under the studio's rules and those of a capsule. */
export const rulesFor = (pieces: readonly Piece[], capsule: Capsule, houseRules: HouseRuleSettings): WardrobeRules => ({
  pieces,
  rules: { ...houseRules, ...capsule.rules },
  never: capsule.never,
  always: capsule.always,
});

/** The engine of a capsule: its pieces under the studio's rules and its own. */
export const engineFor = (pieces: readonly Piece[], capsule: Capsule, houseRules: HouseRuleSettings): WardrobeEngine =>
  createWardrobeEngine(rulesFor(pieces, capsule, houseRules));

const stylistsLooks = (capsule: Capsule, engine: WardrobeEngine): readonly ShownLook[] =>
  [...capsule.favourites, ...capsule.fixed].flatMap(({ pieces, title, note }): ShownLook[] => {
    const { look } = engine.explain([...pieces]);
    return look === undefined
      ? []
      : [{ look, favourite: true, ...(title === undefined ? {} : { title }), ...(note === undefined ? {} : { note }) }];
  });

const plannedLooks = (plan: Plan): readonly ShownLook[] =>
  plan.days
    .flatMap(({ occasions }) => occasions)
    .flatMap(({ look }) => (look === undefined ? [] : [{ look, favourite: false }]));

const once = (looks: readonly ShownLook[]): readonly ShownLook[] => {
  const seen = new Set<string>();
  return looks.filter(({ look }) => !seen.has(look.id) && seen.add(look.id));
};

/**
 * The looks of the lookbook: the stylist's, then the plan's, then the most varied others up to the number shown, these
 * with socks in their laced shoes. Looks for weather that the trip has not are shown only for want of others.
 */
const chooseLooks = (
  capsule: Capsule,
  plan: Plan,
  engine: WardrobeEngine,
  shown: number,
  wearable: readonly Piece[],
  suits: (look: Look) => boolean,
): readonly ShownLook[] => {
  const fixed = once([...stylistsLooks(capsule, engine), ...plannedLooks(plan)]);
  const keep: Look[] = fixed.map(({ look }) => look);
  const kept = new Set(keep.map(({ id }) => id));
  const isWearable = new Set(wearable.map(({ id }) => id));
  const varied = engine
    .varied(Math.max(shown, keep.length), { keep, suits })
    .filter(({ look }) => look.worn.every(({ piece }) => isWearable.has(piece)));
  const source = lookSourceOf(engine);
  const dressed = varied.map(({ look }) => (kept.has(look.id) ? look : withSocks(source, look, wearable)));
  return once([...fixed, ...dressed.map((look) => ({ look, favourite: false }))]);
};

const pairsOf = (engine: WardrobeEngine, looks: readonly Look[]): readonly GuidePair[] =>
  engine.pairs().map(({ top, bottom, goes, reasons }) => ({
    top,
    bottom,
    goes,
    reasons: reasons.map(({ message }) => message),
    rules: [...new Set(reasons.flatMap(({ rule, severity }) => (severity === 'rules out' ? [rule] : [])))],
    looks: looks.flatMap(({ worn }, index) => {
      const has = (id: string, slot: string): boolean => worn.some((seat) => seat.piece === id && seat.slot === slot);
      return has(top, 'top') && has(bottom, 'bottom') ? [index + 1] : [];
    }),
  }));

const earningsOf = (
  engine: WardrobeEngine,
  looks: readonly Look[],
  plan: Plan,
  worn: Restriction,
): readonly GuidePiece[] =>
  engine.contributions(worn).map(({ piece, layered, complete }) => ({
    piece,
    layeredLooks: layered,
    completeLooks: complete,
    shownIn: looks.flatMap(({ worn }, index) => (worn.some((seat) => seat.piece === piece) ? [index + 1] : [])),
    wears: plan.wears[piece] ?? 0,
  }));

/** The plan of one capsule, with the pieces and the engine it was made with. */
export const planGuide = async ({
  brief,
  capsule,
  wardrobe,
  houseRules,
  solver,
}: Pick<GuideQuestion, 'brief' | 'capsule' | 'wardrobe' | 'houseRules' | 'solver'>) => {
  const pieces = piecesOfCapsule(capsule, wardrobe);
  const engine = engineFor(pieces, capsule, houseRules);
  const plan = await planTrip({
    brief,
    traveller: capsule.traveller,
    capsule,
    pieces,
    engine: lookSourceOf(engine, refusedPieces(pieces, brief)),
    solver,
    wardrobe: {
      pieces: wardrobe,
      engine: lookSourceOf(engineFor(wardrobe, capsule, houseRules), refusedPieces(wardrobe, brief)),
    },
  });
  return { pieces, engine, plan };
};

/** How the pieces fill their list, and what the trade would say of them. */
const findingsOfPieces = (
  pieces: readonly Piece[],
  { capsule, brief, list }: Pick<GuideQuestion, 'capsule' | 'brief' | 'list'>,
): readonly Finding[] =>
  [...(list === undefined ? [] : findingsOfList(checkList(pieces, list), pieces)), ...tradeFindings(pieces, brief)].map(
    (finding) => ({ ...finding, file: capsule.file }),
  );

/** Computes the whole guide of one capsule of one trip. Draws nothing, writes nothing. */
export const buildGuide = async (question: GuideQuestion): Promise<Guide> => {
  const { studio, brief, capsule } = question;
  const { pieces, engine, plan } = await planGuide(question);
  const byId = new Map(pieces.map((piece) => [piece.id, piece]));
  const refused = refusedPieces(pieces, brief);
  const looks = describeLooks(
    chooseLooks(
      capsule,
      plan,
      engine,
      studio.looksShown,
      pieces.filter(({ id }) => !refused.has(id)),
      createSuitsTrip(tripAirOf(plan), byId, feelsOf(brief, capsule.traveller)),
    ),
    capsule,
    brief,
    plan,
    byId,
    engine,
    refused,
  );
  const shown = looks.map(({ look }) => look);
  const worn = { without: piecesNotWorn(pieces, brief) };
  const palette = paletteReport(pieces, capsule.mood.palette);
  const { solver } = question;
  const planAgain = async (without: readonly string[]): Promise<readonly string[]> => {
    const fewer = pieces.filter(({ id }) => !without.includes(id));
    const isWhole = (look: { readonly pieces: readonly string[] }): boolean =>
      look.pieces.every((id) => !without.includes(id));
    const kept = { ...capsule, favourites: capsule.favourites.filter(isWhole), fixed: capsule.fixed.filter(isWhole) };
    const looksOf = lookSourceOf(engine, new Set([...refused, ...without]));
    const again = { brief, traveller: capsule.traveller, capsule: kept, pieces: fewer, engine: looksOf, solver };
    return (await planTrip(again)).unserved.map(({ occasion }) => occasion);
  };
  const toPack = {
    brief: briefToPack(brief, capsule.traveller),
    capsule,
    pieces,
    plan,
    stock: question.sundries,
    solver,
    planAgain,
  };
  const packed = await packInFull(toPack);
  const report = await bagReport(toPack, packed, engine);
  return {
    id: `${brief.id}/${capsule.id}`,
    studio,
    brief,
    capsule,
    pieces,
    accent: accentOf(pieces),
    counts: engine.count(worn),
    looks,
    pairs: pairsOf(engine, shown),
    earnings: earningsOf(engine, shown, plan, worn),
    palette,
    plan,
    packing: {
      ...packed.packing,
      notes: [
        ...packed.packing.notes,
        ...dampInWords(plan, brief, (piece) => byId.get(piece)?.name ?? piece).map(({ said }) => said),
      ],
    },
    bagReport: report,
    ...(question.list === undefined ? {} : { listCheck: checkList(pieces, question.list) }),
    findings: [
      ...noLookFindings(engine, capsule),
      ...refusalFindings(pieces, brief, { ...question.houseRules, ...capsule.rules }),
      ...findingsOfBrief(brief),
      ...findingsOfWashing(plan, brief, pieces),
      ...findingsOfPlan(plan, brief, pieces),
      ...findingsOfNumber(pieces, brief, capsule),
      ...findingsOfFixed(plan, brief),
      ...findingsOfRepeats(plan, brief, capsule, pieces),
      ...findingsOfRooms(plan, brief, pieces, lookSourceOf(engine, refused)),
      ...findingsOfReserve(plan),
      ...findingsOfUse(plan, capsule, pieces),
      ...findingsOfFinish(plan, brief, pieces, question.sundries),
      ...findingsOfBag(toPack, packed, report),
      ...findingsOfStock(question.sundries),
      ...findingsOfPieces(pieces, question),
      ...colourFindings(pieces, { avoid: brief.avoid.colours, mood: capsule.mood.palette }, palette),
      ...lookVisionFindings(pieces, looks),
    ],
  };
};
