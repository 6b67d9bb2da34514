import type { DrawnPiece } from '../../lib/draw/drawing.ts';
import { seedOf } from '../../lib/draw/kit/index.ts';
import type { PieceColour } from '../../lib/model/index.ts';
import { KINDS, type KindId } from '../../lib/vocabulary/index.ts';

const colour = (name: string, hex: string, l: number, c: number, h: number): Omit<PieceColour, 'share'> => ({
  name,
  hex,
  oklch: { l, c, h },
});

const GROUNDS = [
  colour('rust', '#9c5233', 0.53, 0.11, 44),
  colour('bottle green', '#2c5745', 0.42, 0.06, 163),
  colour('ecru', '#e4d8bf', 0.89, 0.04, 86),
  colour('ink', '#2d3a57', 0.35, 0.06, 265),
  colour('camel', '#b4854f', 0.65, 0.09, 70),
  colour('slate', '#58788e', 0.56, 0.05, 237),
  colour('oxblood', '#7d2430', 0.4, 0.12, 19),
  colour('charcoal', '#454649', 0.39, 0.01, 265),
  colour('blush', '#d2a79a', 0.77, 0.05, 35),
] as const;

const MOTIFS = [colour('ivory', '#f2eadc', 0.94, 0.02, 82), colour('mustard', '#d09a45', 0.73, 0.12, 75)] as const;

/** A made-up piece of a kind with the kind's own defaults and a colour that comes from its name. */
export const samplePiece = (kind: KindId, changes: Partial<DrawnPiece> = {}): DrawnPiece => {
  const { cut, length, fabric, heelCm } = KINDS[kind];
  const ground = GROUNDS[seedOf(kind) % GROUNDS.length] ?? GROUNDS[0];
  return {
    id: `specimen ${kind}`,
    wardrobe: 'specimen',
    name: `${ground.name} ${kind}`,
    kind,
    colours: [
      { ...ground, share: 0.7 },
      { ...MOTIFS[0], share: 0.2 },
      { ...MOTIFS[1], share: 0.1 },
    ],
    pattern: { type: 'plain', scale: 'medium' },
    cut,
    length,
    heelCm,
    fabric,
    ...changes,
  };
};
