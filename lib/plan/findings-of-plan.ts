import type { Brief, Capsule, Finding, Look, Piece, Plan, PlanMend } from '../model/index.ts';
import { type Phrase, phrase } from '../words/index.ts';
import { finding } from './finding.ts';
import { type Moment, momentsOf } from './moments.ts';
import { nearestInWords } from './nearest.ts';

/** What is said where nothing that was tried mends it: of the cold what to do about it, since no other piece would. */
const unmended = (moment: Moment | undefined, lacks: readonly Phrase[], isUntried: boolean): Phrase => {
  if (isUntried) return phrase('plan', 'mend not sought', {});
  if (moment?.beyondClothes === 'altogether') return phrase('plan', 'too cold for clothes mend', {});
  const isColdOutside =
    moment?.occasion.setting.where === 'outdoors' && lacks.some(({ key }) => key === 'lacks warmth');
  return phrase('plan', isColdOutside ? 'too cold to keep still mend' : 'no mend found', {});
};

const packs = ({ entries }: PlanMend): boolean => entries.some(({ field }) => field === 'pieces');

/** What else can be said: in the cold outdoors that the client can move or stay briefly, where no piece would help. */
const besides = (
  moment: Moment | undefined,
  lacks: readonly Phrase[],
  mends: readonly PlanMend[],
): readonly Phrase[] =>
  mends.length > 0 && !mends.some(packs)
    ? [unmended(moment, lacks, false)].filter(({ key }) => key !== 'no mend found')
    : [];

/** That the real figure of the warmest piece of a look that is not warm enough may help, where it is only estimated. */
const realFigure = (
  nearest: Look | undefined,
  lacks: readonly Phrase[],
  pieces: readonly Piece[],
): readonly Phrase[] => {
  if (!lacks.some(({ key }) => key === 'lacks warmth')) return [];
  const worn = pieces.filter(({ id }) => nearest?.worn.some(({ piece }) => piece === id) === true);
  const [warmest] = worn.toSorted((a, b) => b.clo.value - a.clo.value);
  return warmest?.clo.basis === 'estimated' ? [phrase('plan', 'real clo may help', { piece: warmest.name })] : [];
};

/** What the plan could not do, one finding an occasion, with the first mend. */
export const findingsOfPlan = (plan: Plan, brief: Brief, pieces: readonly Piece[]): readonly Finding[] => {
  const names = new Map(pieces.map(({ id, name }) => [id, name]));
  const moments = new Map(momentsOf(brief, plan.traveller).map((moment) => [moment.occasion.id, moment]));
  return plan.unserved.flatMap(({ occasion: id, nearest, lacks, mends, untried = false }): readonly Finding[] => {
    const moment = moments.get(id);
    const about = moment === undefined ? [] : [moment.occasion];
    const said = { occasion: moment?.occasion.what ?? id, on: moment?.occasion.on ?? brief.from };
    const low = moment?.air?.lowC ?? 0;
    const [mend = unmended(moment, lacks, untried), ...more] = [
      ...mends.map(({ what }) => what),
      ...besides(moment, lacks, mends),
    ];
    const others = [...more, ...realFigure(nearest, lacks, pieces)];
    const unserved: Finding = {
      ...(moment?.beyondClothes === undefined
        ? finding('error', 'unserved-occasion', phrase('plan', 'unserved', said), mend, brief, about)
        : finding(
            'error',
            'too-cold-for-clothes',
            moment.beyondClothes === 'altogether'
              ? phrase('plan', 'too cold for clothes', { ...said, low })
              : phrase('plan', 'too cold to keep still', { ...said, low, activity: moment.occasion.activity }),
            mend,
            brief,
            about,
          )),
      reason: nearestInWords({ ...(nearest === undefined ? {} : { nearest }), lacks }, (id) => names.get(id) ?? id),
      ...(others.length === 0 ? {} : { orElse: others }),
    };
    return [unserved];
  });
};

/** Looks the stylist fixed that do not meet their occasion, one finding an occasion. */
export const findingsOfFixed = (plan: Plan, brief: Brief): readonly Finding[] =>
  plan.days
    .flatMap(({ occasions }) => occasions)
    .flatMap(({ occasion: id, misses }): Finding[] => {
      const occasion = brief.occasions.find((other) => other.id === id);
      if (occasion === undefined || misses === undefined) return [];
      const said = { occasion: occasion.what, on: occasion.on };
      const message = phrase('plan', 'fixed look misses', said);
      const mend = phrase('plan', 'fixed look misses mend', {});
      return [
        {
          ...finding('warning', 'fixed-look', message, mend, brief, [occasion]),
          reason: phrase('plan', 'fixed look misses why', { misses }),
        },
      ];
    });

/** More pieces than the brief allows. */
export const findingsOfNumber = (
  pieces: readonly Piece[],
  { piecesAtMost }: Brief,
  { file }: Capsule,
): readonly Finding[] =>
  piecesAtMost === undefined || pieces.length <= piecesAtMost
    ? []
    : [
        {
          level: 'error',
          rule: 'pieces-at-most',
          message: phrase('plan', 'too many pieces', { pieces: pieces.length, most: piecesAtMost }),
          mend: phrase('plan', 'too many pieces mend', {}),
          about: [],
          file,
        },
      ];

/** Where the plan has nothing in reserve, one finding a point. */
export const findingsOfReserve = (plan: Plan): readonly Finding[] =>
  plan.weakPoints.map(({ what, piece, loses }) => ({
    level: 'advice',
    rule: 'weak-point',
    message: what,
    mend: phrase('plan', piece === undefined ? 'rain on a dry day mend' : 'piece spoilt mend', {}),
    about: piece === undefined ? loses : [piece, ...loses],
  }));
