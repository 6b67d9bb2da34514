import {
  converter,
  filterDeficiencyDeuter,
  filterDeficiencyProt,
  filterDeficiencyTrit,
  formatHex,
  type Rgb,
} from 'culori';
import type { Piece } from '../model/index.ts';
import { differenceOf } from './difference.ts';

/** The three kinds of two-cone vision. */
export const DICHROMACIES = ['protanopia', 'deuteranopia', 'tritanopia'] as const;
export type Dichromacy = (typeof DICHROMACIES)[number];

type Filter = (colour: Rgb) => Rgb;

/** Matrices of Machado, Oliveira and Fernandes 2009 (doi:10.1109/TVCG.2009.113) at full severity, as culori holds them. */
const FILTERS: Readonly<Record<Dichromacy, Filter>> = {
  protanopia: filterDeficiencyProt(1) as Filter,
  deuteranopia: filterDeficiencyDeuter(1) as Filter,
  tritanopia: filterDeficiencyTrit(1) as Filter,
};

const toLinear = converter('lrgb');

/** A hex colour as a person with this vision sees it. The published matrices are for linear light, so it is used there. */
export const seenWith = (vision: Dichromacy, hex: string): string => {
  const light = toLinear(hex);
  if (light === undefined) throw new Error(`${hex} is no colour`);
  // culori multiplies the channels it is given, so the linear ones go in under the name of rgb
  const { r, g, b } = FILTERS[vision]({ mode: 'rgb', r: light.r, g: light.g, b: light.b });
  return formatHex({ mode: 'lrgb', r, g, b });
};

/** CIEDE2000 from which two grounds are told apart at a glance. common practice, no source */
const TOLD_APART = 14;
/** CIEDE2000 below which, in a small picture, they run together. common practice, no source */
const RUNS_TOGETHER = 8;

/** Two pieces that a person with this vision can hardly tell apart by colour though others can. */
export interface HardToTell {
  readonly one: string;
  readonly two: string;
  readonly visions: readonly Dichromacy[];
}

/** Pairs of pieces whose grounds run together for a two-cone vision and not for others, in the order of the pieces. */
export const hardToTellApart = (pieces: readonly Pick<Piece, 'id' | 'colours'>[]): readonly HardToTell[] =>
  pieces.flatMap((one, index) =>
    pieces.slice(index + 1).flatMap((two): HardToTell[] => {
      const a = one.colours[0]?.hex;
      const b = two.colours[0]?.hex;
      if (a === undefined || b === undefined || differenceOf(a, b) < TOLD_APART) return [];
      const visions = DICHROMACIES.filter(
        (vision) => differenceOf(seenWith(vision, a), seenWith(vision, b)) < RUNS_TOGETHER,
      );
      return visions.length === 0 ? [] : [{ one: one.id, two: two.id, visions }];
    }),
  );
