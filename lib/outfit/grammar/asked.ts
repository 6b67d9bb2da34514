import { DRESS_CODES, dressIndex } from '../../vocabulary/dress-codes.ts';
import { NEEDS_ON_FOOT, type Need } from '../../vocabulary/needs.ts';
import { type Phrase, phrase } from '../../words/phrase.ts';
import { FLAT_HEEL_CM, type Restriction } from '../restriction.ts';
import { isLeftAtDoor } from '../rules/traits.ts';
import type { Worn } from '../worn.ts';
import type { CoreForm } from './forms.ts';

/** Needs that some piece of the look has to answer, and which piece does. */
const ANSWERS: Readonly<Partial<Record<Need, (worn: Worn) => boolean>>> = {
  rain: ({ piece, slot }) => (slot === 'outer layer' || slot === 'mid layer') && piece.suits.includes('rain'),
  'shoulders covered': ({ piece, slot }) => slot !== 'scarf' && piece.covers.includes('shoulders'),
  // tights do not count as cover where knees are to be covered. common practice, no source
  'knees covered': ({ piece, slot }) => slot !== 'legwear' && slot !== 'leg layer' && piece.covers.includes('knees'),
  'head covered': ({ piece, slot }) => slot === 'headwear' || piece.covers.includes('head'),
  sun: ({ piece }) => piece.suits.includes('sun'),
};

export interface Demand {
  readonly need: Need;
  readonly answers: (worn: Worn) => boolean;
  readonly unmet: Phrase;
}

/** What has to be answered by one piece or another. */
export const demandsOf = ({ needs = [] }: Restriction): readonly Demand[] =>
  [...new Set(needs)].flatMap((need) => {
    const answers = ANSWERS[need];
    return answers === undefined ? [] : [{ need, answers, unmet: phrase('outfit', 'need unmet', { need }) }];
  });

/** Why a form of core is not asked for; undefined when it may be worn. Swimwear is for swimming, and only swimwear is. */
export const formRefused = (form: CoreForm, { cores, dress, needs }: Restriction): Phrase | undefined => {
  if (cores !== undefined && !cores.includes(form)) return phrase('outfit', 'form not asked', { swim: 0 });
  if (dress === undefined && needs === undefined) return undefined;
  const swims = needs?.includes('swim') ?? false;
  if (form === 'swim') return swims ? undefined : phrase('outfit', 'form not asked', { swim: 1 });
  return swims ? phrase('outfit', 'swim asked', {}) : undefined;
};

const dressRefused = ({ piece }: Worn, { dress }: Restriction): Phrase | undefined => {
  if (dress === undefined || isLeftAtDoor(piece)) return undefined;
  const asked = dressIndex(dress);
  const said = { piece: piece.name, asked: dress };
  if (piece.dress.high < asked) {
    return phrase('outfit', 'dress too plain', { ...said, ends: DRESS_CODES[piece.dress.high] ?? '' });
  }
  if (piece.dress.low > asked) {
    return phrase('outfit', 'dress too formal', { ...said, begins: DRESS_CODES[piece.dress.low] ?? '' });
  }
  return undefined;
};

const shoesRefused = ({ piece, slot }: Worn, { needs, heelCmAtMost, flat }: Restriction): Phrase | undefined => {
  if (slot !== 'shoes') return undefined;
  const mostCm = Math.min(heelCmAtMost ?? Number.POSITIVE_INFINITY, flat ? FLAT_HEEL_CM : Number.POSITIVE_INFINITY);
  if (piece.heelCm > mostCm) {
    return phrase('outfit', 'heel too high', { piece: piece.name, heelCm: piece.heelCm, mostCm });
  }
  const need = needs?.find((asked) => NEEDS_ON_FOOT.has(asked) && !piece.suits.includes(asked));
  return need === undefined ? undefined : phrase('outfit', 'shoes do not suit', { piece: piece.name, need });
};

/** Why a worn piece is not what is asked for; undefined when it is. */
export const pieceRefused = (worn: Worn, restriction: Restriction): Phrase | undefined => {
  if (restriction.without?.includes(worn.piece.id)) return phrase('outfit', 'left out', { piece: worn.piece.name });
  return dressRefused(worn, restriction) ?? shoesRefused(worn, restriction);
};
