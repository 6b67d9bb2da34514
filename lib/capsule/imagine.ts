import type { NamedColour, Piece } from '../model/index.ts';
import {
  type Cut,
  dressIndex,
  estimateClo,
  estimateDryHours,
  estimateGrams,
  estimateLitres,
  estimateWears,
  KINDS,
  type KindId,
  type PatternType,
} from '../vocabulary/index.ts';

export interface ImaginedPiece {
  readonly kind: KindId;
  readonly colour: NamedColour;
  readonly pattern: PatternType;
  readonly cut: Cut;
}

/** A piece nobody owns yet, every figure as its kind has it. */
export const imagine = ({ kind: id, colour, pattern, cut }: ImaginedPiece, wardrobe: string): Piece => {
  const kind = KINDS[id];
  const plain = pattern === 'plain';
  return {
    id: `to-buy: ${colour.name} ${plain ? '' : `${pattern} `}${cut} ${id}`,
    file: '',
    wardrobe,
    name: `${colour.name} ${id}`,
    kind: id,
    places: kind.places,
    ...(kind.site === undefined ? {} : { site: kind.site }),
    colours: plain
      ? [{ ...colour, share: 1 }]
      : [
          { ...colour, share: 0.7 },
          { name: 'white', hex: '#ffffff', oklch: { l: 1, c: 0, h: 0 }, share: 0.3 },
        ],
    pattern: { type: pattern, scale: plain ? 'medium' : 'small' },
    cut,
    length: kind.length,
    heelCm: kind.heelCm,
    fabric: kind.fabric,
    fabricText: kind.fabric,
    grams: estimateGrams(kind, kind.fabric),
    litres: estimateLitres(kind, kind.fabric),
    clo: estimateClo(kind, kind.fabric),
    dress: { low: dressIndex(kind.dress[0]), high: dressIndex(kind.dress[1]) },
    covers: kind.covers,
    suits: kind.suits,
    care: { wash: 30, dryHours: estimateDryHours(kind, kind.fabric) },
    wears: estimateWears(kind),
    status: 'to buy',
    statement: false,
    note: '',
    estimated: ['colours', 'fabric', 'cut', 'length', 'grams', 'litres', 'clo', 'dress', 'care', 'wears'],
  };
};
