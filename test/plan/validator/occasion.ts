import {
  airOf,
  type ComfortQuestion,
  cloOfLook,
  feelsOf,
  placeOf,
  requiredClo,
  sunDuring,
} from '../../../lib/comfort/index.ts';
import type { Brief, Look, Occasion, Piece } from '../../../lib/model/index.ts';
import { DRESS_CODES, FABRICS } from '../../../lib/vocabulary/index.ts';

export type Pieces = ReadonlyMap<string, Piece>;

/** Taken off at the door, and so without a say in the dress code. common practice, no source */
const LEFT_AT_DOOR =
  /coat$|^(parka|rain jacket|windbreaker|down jacket|cape|beanie|(chunky )?scarf|(leather )?gloves|mittens)$/;

const isLeftAtDoor = ({ kind }: Piece): boolean => LEFT_AT_DOOR.test(kind);

/** Hung up in a room: what is worn over everything, and what goes with it. common practice, no source */
export const isHungUp = (piece: Piece): boolean =>
  isLeftAtDoor(piece) || piece.places.every((place) => place === 'outer layer');

const answers = new Map<string, ReturnType<typeof requiredClo>>();
/** The standards' iterations are slow, and the same is asked of every look. */
const remembered = (question: ComfortQuestion): ReturnType<typeof requiredClo> => {
  const key = JSON.stringify(question);
  const answer = answers.get(key) ?? requiredClo(question);
  answers.set(key, answer);
  return answer;
};

/** Clo the occasion asks for between `low` and `high`; undefined without weather, or where nothing is asked. */
export const askedClo = (
  brief: Brief,
  occasion: Occasion,
  traveller: string,
  air = airOf(occasion, placeOf(brief, occasion)),
  off = 0,
): { readonly min: number; readonly max: number } | undefined => {
  if (air === undefined) return undefined;
  const sunElevation =
    occasion.setting.where === 'outdoors' ? sunDuring(occasion, placeOf(brief, occasion)) : undefined;
  const { min, max, method } = remembered({
    setting: occasion.setting,
    activity: occasion.activity,
    air: { ...air, lowC: air.lowC + off, highC: air.highC - off },
    dress: occasion.dress,
    swims: occasion.needs.includes('swim'),
    feels: feelsOf(brief, traveller),
    ...(sunElevation === undefined ? {} : { sunElevation }),
  });
  return method === 'none' ? undefined : { min, max };
};

/** What a look misses of an occasion; each need is answered by what the documentation says answers it. */
export const missing = (
  brief: Brief,
  occasion: Occasion,
  look: Look,
  pieces: Pieces,
  traveller: string,
): readonly string[] => {
  const wrong: string[] = [];
  const worn = look.worn.flatMap(({ piece, slot }) => {
    const found = pieces.get(piece);
    return found === undefined ? [] : [{ ...found, slot: slot as string }];
  });
  const asked = (DRESS_CODES as readonly string[]).indexOf(occasion.dress);
  for (const piece of worn) {
    const fits = piece.dress.low <= asked && asked <= piece.dress.high;
    if (!fits && !isLeftAtDoor(piece)) wrong.push(`${piece.id} is not ${occasion.dress}`);
    if (brief.avoid.heelCmOver !== undefined && piece.heelCm > brief.avoid.heelCmOver)
      wrong.push(`${piece.id} has a heel`);
    for (const word of brief.avoid.fabrics)
      if (piece.fabric === word || FABRICS[piece.fabric].fibre === word) wrong.push(`${piece.id} is of ${word}`);
    for (const { hex } of brief.avoid.colours)
      if (piece.colours[0]?.hex === hex) wrong.push(`${piece.id} has a colour that is avoided`);
  }
  const shoes = worn.find(({ slot }) => slot === 'shoes');
  const overlayers = worn.filter(({ slot }) => slot === 'mid layer' || slot === 'outer layer');
  const answers: Readonly<Record<string, boolean>> = {
    swim: worn.some(({ slot }) => slot === 'swim'),
    'uneven ground': shoes?.suits.includes('uneven ground') === true,
    'long walking': shoes?.suits.includes('long walking') === true,
    snow: shoes?.suits.includes('snow') === true,
    rain: overlayers.some(({ suits }) => suits.includes('rain')),
    sun: worn.some(({ suits }) => suits.includes('sun')),
    'shoulders covered': worn.some(({ slot, covers }) => slot !== 'scarf' && covers.includes('shoulders')),
    'knees covered': worn.some(
      ({ slot, covers }) => slot !== 'legwear' && slot !== 'leg layer' && covers.includes('knees'),
    ),
    'head covered': worn.some(({ slot, covers }) => slot === 'headwear' || covers.includes('head')),
  };
  for (const need of occasion.needs) if (answers[need] !== true) wrong.push(`nothing answers ${need}`);
  if (!occasion.needs.includes('swim') && answers.swim) wrong.push('swimwear where nobody swims');
  const clo = askedClo(brief, occasion, traveller, undefined, occasion.degreesOff ?? 0);
  const has = cloOfLook(look, pieces);
  // the plan rounds the clo it asks for outwards to the hundredth
  if (clo !== undefined && has.on < Math.floor(clo.min * 100) / 100 - 1e-9) wrong.push('too cold with everything on');
  if (clo !== undefined && has.off > Math.ceil(clo.max * 100) / 100 + 1e-9) wrong.push('too warm with every layer off');
  return wrong;
};
