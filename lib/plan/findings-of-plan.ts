import type { Brief, Capsule, Finding, Piece, Plan, PlanMend } from '../model/index.ts';
import { type Phrase, phrase } from '../words/index.ts';
import { finding } from './finding.ts';
import { type Moment, momentsOf } from './moments.ts';

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

/** What the plan could not do, one finding an occasion, with the first mend. */
export const findingsOfPlan = (plan: Plan, brief: Brief, pieces: readonly Piece[]): readonly Finding[] => {
  const names = new Map(pieces.map(({ id, name }) => [id, name]));
  const moments = new Map(momentsOf(brief, plan.traveller).map((moment) => [moment.occasion.id, moment]));
  return plan.unserved.flatMap(({ occasion: id, nearest, lacks, mends, untried = false }): readonly Finding[] => {
    const moment = moments.get(id);
    const about = moment === undefined ? [] : [moment.occasion];
    const said = { occasion: moment?.occasion.what ?? id, on: moment?.occasion.on ?? brief.from };
    const low = moment?.air?.lowC ?? 0;
    const [mend = unmended(moment, lacks, untried), ...others] = [
      ...mends.map(({ what }) => what),
      ...besides(moment, lacks, mends),
    ];
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
      reason:
        nearest === undefined
          ? phrase('plan', 'what is lacking', { lacks })
          : phrase('plan', 'nearest lacks', {
              look: nearest.worn.map(({ piece }) => names.get(piece) ?? piece),
              lacks,
            }),
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
