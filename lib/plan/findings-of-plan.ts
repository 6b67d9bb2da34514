import { airOf, isBeyondTravelClothes, placeOf } from '../comfort/index.ts';
import type { Brief, Capsule, Finding, Occasion, Piece, Plan } from '../model/index.ts';
import { phrase } from '../words/index.ts';
import { finding } from './finding.ts';

const isTooCold = (brief: Brief, occasion: Occasion): boolean =>
  isBeyondTravelClothes(occasion.setting, airOf(occasion, placeOf(brief, occasion)));

/** What the plan could not do, one finding an occasion, with the first mend; cold beyond clothes is told of the brief. */
export const findingsOfPlan = (plan: Plan, brief: Brief, pieces: readonly Piece[]): readonly Finding[] => {
  const names = new Map(pieces.map(({ id, name }) => [id, name]));
  return plan.unserved.flatMap(({ occasion: id, nearest, lacks, mends }): readonly Finding[] => {
    const occasion = brief.occasions.find((other) => other.id === id);
    if (occasion !== undefined && isTooCold(brief, occasion)) return [];
    const [mend = phrase('plan', 'no mend found', {}), ...others] = mends.map(({ what }) => what);
    const message = phrase('plan', 'unserved', { occasion: occasion?.what ?? id, on: occasion?.on ?? brief.from });
    const unserved: Finding = {
      ...finding('error', 'unserved-occasion', message, mend, brief, occasion === undefined ? [] : [occasion]),
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
