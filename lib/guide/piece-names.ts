import type { GuideLook } from './record.ts';

/**
 * Ids of the pieces of a look whose names must stand beside its picture, in the order worn: some people cannot tell them
 * apart by colour. Empty when everyone can.
 */
export const piecesToName = ({ look, hardToTell }: Pick<GuideLook, 'look' | 'hardToTell'>): readonly string[] => {
  const unclear = new Set(hardToTell.flatMap(({ one, two }) => [one, two]));
  return look.worn.map(({ piece }) => piece).filter((piece) => unclear.has(piece));
};
