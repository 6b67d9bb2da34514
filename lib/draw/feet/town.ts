import type { Detail, Drawing, DrawnPiece } from '../drawing.ts';
import { type Node, oklch } from '../kit/index.ts';
import type { ShoeArtist } from './artist.ts';
import { townLast } from './lasts.ts';
import { FROM_THE_SIDE, pair } from './pair.ts';
import type { SoleStyle } from './soles.ts';
import { mouthAround, type Topline } from './solids.ts';

/** Edge of a leather sole: dark under dark shoes, waxed brown under the rest. */
export const leatherSole = (ground: string): string => (oklch(ground).l < 0.4 ? '#2b2320' : '#4a3527');

export const stackedSole = (artist: ShoeArtist, welt = 0.32): SoleStyle => {
  const colour = leatherSole(artist.cloth.ground);
  return {
    kind: 'welted',
    colour,
    welt,
    heel: {
      breast: 0.25,
      taper: [
        [0, 0.95],
        [1, 1],
      ],
      over: 0.11,
      colour,
      lifts: 3,
    },
  };
};

/** The curved seam of the heel counter, from the sole up to the mouth; returns where it runs. */
export const counterSeam = (artist: ShoeArtist, topline: Topline): Node[] => {
  const top = mouthAround(artist.last, topline, 0.12) * 0.97;
  const nodes: Node[] = [
    [0.2, 0.02],
    [0.21, top * 0.55],
    [0.12, top],
  ];
  artist.seam(nodes);
  return nodes;
};

/** A town shoe seen from the side. */
export const town =
  (paint: (artist: ShoeArtist) => void, toe: 'almond' | 'round' = 'almond') =>
  (piece: DrawnPiece, detail: Detail): Drawing =>
    pair(piece, detail, () => ({ shape: townLast(piece.heelCm, toe), stance: FROM_THE_SIDE, paint }));
