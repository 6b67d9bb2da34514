import {
  type AirRule,
  airRules,
  BAG_GUIDELINES,
  BATTERIES,
  GUIDELINES_READ,
  hasFlight,
  LIQUIDS,
  weightVerdict,
} from '../../bag/index.ts';
import type { Guide } from '../../guide/index.ts';
import type { Bag, PackedBag } from '../../model/index.ts';
import { type Phrase, phrase } from '../../words/index.ts';
import type { PictureIndex } from '../pictures.ts';
import type { SiteVoice } from '../voice.ts';
import { type Frame, frameOf } from './frame.ts';
import { type LighterView, lighterView } from './lighter.ts';
import { type BagView, bagViews, type PackingLine, totalOf, type Verdict, verdictOf } from './packing.ts';

export interface PackedBagView extends BagView {
  /** What the bag is and what it may hold. */
  readonly is: string;
  /** How it stands to its limit on its heaviest journey. */
  readonly verdict: Verdict;
  /** Pieces, first in first. */
  readonly order: readonly PackingLine[];
  readonly small: string;
}

export interface BagPageView {
  readonly frame: Frame;
  readonly kick: string;
  readonly heading: string;
  readonly lede: string;
  readonly total: string;
  readonly verdict: Verdict;
  readonly bags: readonly PackedBagView[];
  readonly notes: readonly string[];
  readonly journeys: {
    readonly heading: string;
    readonly lead: string;
    readonly heads: readonly string[];
    readonly rows: readonly { readonly journey: string; readonly weights: readonly Verdict[] }[];
    /** The look that would take most more out of the bags; empty when none is worth it. */
    readonly advice: string;
  };
  readonly lighter: LighterView | undefined;
  /** Undefined on a trip without a flight. */
  readonly rules:
    | {
        readonly heading: string;
        readonly lead: string;
        readonly heads: readonly string[];
        readonly rows: readonly { readonly rule: string; readonly here: Verdict }[];
        readonly source: string;
      }
    | undefined;
  readonly words: Readonly<Record<'order' | 'bar' | 'estimated' | 'toList' | 'firstIn' | 'lastIn', string>>;
}

const bagIs = ({ role, cm, ownGrams, limitKg, litres }: Bag, voice: SiteVoice): string =>
  voice.say(
    phrase('bag', 'bag is', {
      role,
      sides: cm === undefined ? '' : voice.formats.sides(cm),
      own: ownGrams,
      limit: limitKg ?? 0,
      room: litres,
    }),
  );

const smallThings = ({ sundries }: PackedBag, { say }: SiteVoice): string =>
  sundries.length === 0
    ? ''
    : say(
        phrase('bag', 'small things', {
          things: sundries.map(({ sundry: { name, count } }) =>
            count === 1 ? name : say(phrase('bag', 'so many', { what: name, count })),
          ),
        }),
      );

const packedBagViews = (guide: Guide, pictures: PictureIndex, voice: SiteVoice): readonly PackedBagView[] =>
  bagViews(guide, pictures, voice).map((view, index): PackedBagView => {
    const packed = guide.packing.bags[index];
    if (packed === undefined) throw new Error(`no bag ${index}`);
    const { is, grams, isOver } = weightVerdict(packed);
    return {
      ...view,
      is: bagIs(packed.bag, voice),
      verdict: {
        words: is === 'no limit' ? '' : voice.say(phrase('bag', `weight ${is}`, { grams })),
        isOver,
      },
      order: view.lines.slice(0, packed.pieces.length),
      small: smallThings(packed, voice),
    };
  });

/** Extra grams from which another look for a journey is worth a line. Own choice. */
const WORTH_SAYING_GRAMS = 200;

/** What every bag weighs on each journey, and the look that would take more out of them. */
const journeysOf = (guide: Guide, voice: SiteVoice): BagPageView['journeys'] => {
  const { say, formats } = voice;
  const { bagReport: report, brief, packing, pieces } = guide;
  const occasions = brief.occasions.filter(({ id }) => report.loads.some(({ journey }) => journey === id));
  const most = report.transit.toSorted((a, b) => b.moreGrams - a.moreGrams)[0];
  const nameOf = (id: string): string => pieces.find((piece) => piece.id === id)?.name ?? id;
  return {
    heading: say(phrase('bag', 'journeys heading', {})),
    lead: say(phrase('bag', 'journeys lead', {})),
    heads: [say(phrase('bag', 'head journey', {})), ...packing.bags.map(({ bag }) => bag.name)],
    rows: occasions.map(({ id, what, on }) => ({
      journey: `${what}, ${formats.dateShort(on)}`,
      weights: packing.bags.map(({ bag }): Verdict => {
        const load = report.loads.find((one) => one.journey === id && one.bag === bag.name);
        return {
          words: load === undefined ? '–' : formats.kilograms(load.grams.value / 1000),
          isOver: (load?.over.grams ?? 0) > 0,
        };
      }),
    })),
    advice:
      most === undefined || most.moreGrams < WORTH_SAYING_GRAMS
        ? ''
        : `${say(
            phrase('bag', 'wear it', {
              occasion: occasions.find(({ id }) => id === most.occasion)?.what ?? most.occasion,
              grams: most.moreGrams,
              pieces: most.pieces.map(nameOf),
            }),
          )}.`,
  };
};

const rulePhrase = (rule: AirRule['rule'], voice: SiteVoice): Phrase => {
  if (rule === 'container') return phrase('bag', 'rule container', { limit: LIQUIDS.containerMl });
  if (rule === 'liquids') return phrase('bag', 'rule liquids', { limit: LIQUIDS.bagMl });
  if (rule === 'battery') return phrase('bag', 'rule battery', { limit: BATTERIES.freeWh, most: BATTERIES.approvedWh });
  if (rule === 'spare battery') return phrase('bag', 'rule spare battery', {});
  return phrase('bag', 'rule cabin size', { sides: voice.formats.sides(BAG_GUIDELINES.cabin.cm) });
};

const herePhrase = ({ rule, things, amount, keeps }: AirRule): Phrase => {
  if (things.length === 0) return phrase('bag', 'here nothing', {});
  if (rule === 'container') return phrase('bag', 'here millilitres', { things, amount });
  if (rule === 'liquids') return phrase('bag', 'here millilitres in all', { amount });
  if (rule === 'battery') return phrase('bag', 'here watt hours', { things, amount });
  if (rule === 'spare battery') return phrase('bag', keeps ? 'here in the cabin' : 'here in the hold', { things });
  return phrase('bag', keeps ? 'here within' : 'here too large', { things });
};

/** Nobody who goes by rail or road has to read about liquids. */
const rulesOf = ({ brief, packing }: Guide, voice: SiteVoice): BagPageView['rules'] => {
  const { say } = voice;
  if (!hasFlight(brief)) return undefined;
  return {
    heading: say(phrase('bag', 'rules heading', {})),
    lead: say(phrase('bag', 'ask the carrier', {})),
    heads: [say(phrase('bag', 'head rule', {})), say(phrase('bag', 'head here', {}))],
    rows: airRules(packing).map((rule) => ({
      rule: say(rulePhrase(rule.rule, voice)),
      here: { words: say(herePhrase(rule)), isOver: !rule.keeps },
    })),
    source: say(phrase('bag', 'rules source', { read: GUIDELINES_READ })),
  };
};

/** The bag: what goes where and how, what it weighs, how to get lighter, and the rules of the air. */
export const bagView = (guide: Guide, pictures: PictureIndex, voice: SiteVoice): BagPageView => {
  const { word, say } = voice;
  const heading = say(phrase('bag', 'bag title', {}));
  return {
    frame: frameOf({ guide, voice, page: 'packing', path: 'bag/', title: heading, description: guide.brief.title }),
    kick: guide.capsule.title,
    heading,
    lede: say(phrase('bag', 'bag lead', {})),
    total: totalOf(guide, voice),
    verdict: verdictOf(guide, voice),
    bags: packedBagViews(guide, pictures, voice),
    notes: guide.packing.notes.map(say),
    journeys: journeysOf(guide, voice),
    lighter: lighterView(guide, voice),
    rules: rulesOf(guide, voice),
    words: {
      order: say(phrase('bag', 'order rule', {})),
      bar: word('bar means'),
      estimated: word('estimated means'),
      toList: say(phrase('bag', 'to the list', {})),
      firstIn: say(phrase('bag', 'first in', {})),
      lastIn: say(phrase('bag', 'last in', {})),
    },
  };
};
