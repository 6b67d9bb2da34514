import { shadesEyes, shadesFace, uvBand } from '../comfort/index.ts';
import type { Piece } from '../model/index.ts';
import { FABRICS, isForWarmth } from '../vocabulary/index.ts';
import type { Moment } from './moments.ts';
import { HOT_C } from './warmth.ts';

/** Outdoors from this no wool is put on for looks. Own choice, °C. */
const MILD_C = 18;

/** A sun hat and dark glasses stay away where there is no sun; on a journey they are worn to save room. common practice, no source */
const isIdleInShade = ({ occasion, uvIndex = 0 }: Moment, piece: Piece): boolean =>
  (shadesFace(piece) || shadesEyes(piece)) &&
  piece.suits.includes('sun') &&
  uvBand(uvIndex) === 'low' &&
  !occasion.needs.includes('sun') &&
  !occasion.transit;

/** Something warm for head, neck or hands that the weather never asks for. common practice, no source */
const isIdleInWarmth = ({ air, occasion }: Moment, piece: Piece): boolean => {
  if (air === undefined || occasion.setting.where !== 'outdoors') return false;
  const shoulders = occasion.needs.includes('shoulders covered') && piece.covers.includes('shoulders');
  const isScarf = piece.places.includes('scarf') && piece.clo.value > 0;
  const woolly = isForWarmth(piece) || (isScarf && FABRICS[piece.fabric].fibre === 'wool');
  return !shoulders && ((woolly && air.lowC >= MILD_C) || (isScarf && air.lowC >= HOT_C));
};

/** A finishing piece that the weather of an occasion has no use for: it is not put on for looks. */
export const isIdle = (moment: Moment, piece: Piece): boolean =>
  isIdleInShade(moment, piece) || isIdleInWarmth(moment, piece);
