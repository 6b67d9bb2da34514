import { cloOfLook, warmLayers } from '../comfort/index.ts';
import type { Look, Piece } from '../model/index.ts';
import { coatsByWarmth } from './coats.ts';
import type { LookRestriction } from './look-source.ts';
import type { Moment } from './moments.ts';
import { lackingInside } from './room.ts';
import { tasteCost } from './taste.ts';
import { createWarmthCost } from './warmth.ts';
import { BITTER_WAY_C, wayWithoutCoat } from './way.ts';

/** What is asked of the outfit room: whether pieces make a look that meets a restriction. */
export interface Explaining {
  explain(pieces: string[], restriction?: LookRestriction): { readonly goes: boolean; readonly look?: Look };
}

/** Whether pieces would do in the place of a look at all the occasions it is planned for, by their ids. */
export type StandsIn = (look: Look, occasions: readonly string[], instead: readonly string[]) => boolean;

/** What is against a look on the way to a room: that it has no coat, and in bitter cold each clo by which its coat is thinner. */
const onTheWay = (moment: Moment, look: Look, pieces: ReadonlyMap<string, Piece>): number => {
  const { occasion, weather, swims } = moment;
  if (wayWithoutCoat(moment, look, pieces) !== 'mild') return 1;
  if (swims || occasion.setting.where === 'outdoors' || weather === undefined || weather.lowC > BITTER_WAY_C) return 0;
  const [coat] = coatsByWarmth(look.worn.flatMap(({ piece }) => pieces.get(piece) ?? []));
  return -(coat?.clo.value ?? 0);
};

/** What the plan has against a look at an occasion, each for itself: too little in a room, in the cold, on the way, and in taste. */
const createObjections = (
  moment: Moment,
  pieces: ReadonlyMap<string, Piece>,
): ((look: Look) => readonly [room: number, cold: number, way: number, taste: number]) => {
  const warmthCost = createWarmthCost(moment, [...pieces.values()]);
  return (look) => {
    const worn = look.worn.flatMap(({ piece: id, slot }) => {
      const piece = pieces.get(id);
      return piece === undefined ? [] : [{ piece, slot }];
    });
    const garments = worn.map(({ piece }) => piece);
    return [
      lackingInside(moment, look, pieces),
      warmthCost(cloOfLook(look, pieces).on, garments, warmLayers(look, pieces).length),
      onTheWay(moment, look, pieces),
      tasteCost(moment.occasion, worn),
    ];
  };
};

/**
 * Judges by what the plan itself asks: dress code, needs and clothing for the air, within the degrees a brief allows, and
 * nothing more against it than against the look it stands in for. An occasion that is not known asks for nothing.
 */
export const createStandsIn = (
  moments: readonly Moment[],
  pieces: readonly Piece[],
  { explain }: Explaining,
): StandsIn => {
  const byId = new Map(pieces.map((piece) => [piece.id, piece]));
  const judges = new Map(
    moments.map((moment) => [moment.occasion.id, { moment, objections: createObjections(moment, byId) }] as const),
  );
  return (look, occasions, instead) =>
    occasions.every((id) => {
      const judge = judges.get(id);
      if (judge === undefined) return true;
      const { goes, look: other } = explain([...instead], judge.moment.restriction);
      if (!goes || other === undefined) return false;
      const before = judge.objections(look);
      return judge.objections(other).every((objection, index) => objection <= (before[index] ?? 0));
    });
};
