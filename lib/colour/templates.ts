import { converter } from 'culori';
import type { NamedColour } from '../model/index.ts';
import { angleBetween } from './hue.ts';
import { isNeutral } from './neutral.ts';

/** Names of the hue templates: Matsuda's, as Tokumaru and Cohen-Or hand them on. */
export type HueTemplateType = 'N' | 'i' | 'I' | 'V' | 'L' | 'L mirrored' | 'Y' | 'T' | 'X';

interface Sector {
  readonly centre: number;
  readonly width: number;
}

/**
 * Sectors in degrees of HSV hue, from the narrowest template to the widest. Cohen-Or et al. 2006, ACM Transactions on
 * Graphics 25(3), figure 2, after Matsuda 1995.
 */
export const HUE_TEMPLATES: readonly { readonly type: HueTemplateType; readonly sectors: readonly Sector[] }[] = [
  { type: 'i', sectors: [{ centre: 0, width: 18 }] },
  {
    type: 'I',
    sectors: [
      { centre: 0, width: 18 },
      { centre: 180, width: 18 },
    ],
  },
  { type: 'V', sectors: [{ centre: 0, width: 93.6 }] },
  {
    type: 'L',
    sectors: [
      { centre: 0, width: 18 },
      { centre: 90, width: 79.2 },
    ],
  },
  {
    type: 'L mirrored',
    sectors: [
      { centre: 0, width: 18 },
      { centre: -90, width: 79.2 },
    ],
  },
  {
    type: 'Y',
    sectors: [
      { centre: 0, width: 93.6 },
      { centre: 180, width: 18 },
    ],
  },
  { type: 'T', sectors: [{ centre: 90, width: 180 }] },
  {
    type: 'X',
    sectors: [
      { centre: 0, width: 93.6 },
      { centre: 180, width: 93.6 },
    ],
  },
];

/** A palette laid under the template that suits it. */
export interface HueTemplateFit {
  readonly type: HueTemplateType;
  /** How far the template is turned on the HSV wheel, degrees; 0 for `N`. */
  readonly turn: number;
  /** Mean distance of the hues from their sector, degrees, weighted by share and saturation; 0 is inside. */
  readonly off: number;
  /** Colours that lie outside by more than the tolerance, farthest first. */
  readonly outside: readonly NamedColour[];
}

/** Degrees of HSV hue that a palette may stray in the mean and still count as fitting: half the narrowest sector. Own choice. */
const TOLERANCE = 9;

const toHsv = converter('hsv');

interface Weighed {
  readonly colour: NamedColour;
  readonly hue: number;
  readonly weight: number;
}

const awayFrom = (hue: number, sectors: readonly Sector[], turn: number): number =>
  Math.min(...sectors.map(({ centre, width }) => Math.max(0, angleBetween(hue, centre + turn + 720) - width / 2)));

const meanAway = (hues: readonly Weighed[], sectors: readonly Sector[], turn: number): number => {
  const weight = hues.reduce((sum, hue) => sum + hue.weight, 0);
  return hues.reduce((sum, hue) => sum + hue.weight * awayFrom(hue.hue, sectors, turn), 0) / weight;
};

/** The turn, in whole degrees, at which the sectors fit best. */
const bestTurn = (hues: readonly Weighed[], sectors: readonly Sector[]): { turn: number; off: number } => {
  let best = { turn: 0, off: Number.POSITIVE_INFINITY };
  for (let turn = 0; turn < 360; turn += 1) {
    const off = meanAway(hues, sectors, turn);
    if (off < best.off) best = { turn, off };
  }
  return best;
};

/**
 * The narrowest hue template a palette fits; when it fits none, the one it strays from least. Neutrals have no say. A
 * palette of neutrals is `N`.
 */
export const fitHueTemplate = (
  palette: readonly { readonly colour: NamedColour; readonly share: number }[],
): HueTemplateFit => {
  const hues = palette.flatMap(({ colour, share }): Weighed[] => {
    const hsv = isNeutral(colour) ? undefined : toHsv(colour.hex);
    return hsv?.h === undefined || share <= 0 ? [] : [{ colour, hue: hsv.h, weight: share * hsv.s }];
  });
  if (hues.length === 0) return { type: 'N', turn: 0, off: 0, outside: [] };
  const fits = HUE_TEMPLATES.map(({ type, sectors }) => ({ type, sectors, ...bestTurn(hues, sectors) }));
  const strays = ({ sectors, turn }: { sectors: readonly Sector[]; turn: number }): readonly NamedColour[] =>
    hues
      .map(({ colour, hue }) => ({ colour, away: awayFrom(hue, sectors, turn) }))
      .filter(({ away }) => away > TOLERANCE)
      .sort((a, b) => b.away - a.away)
      .map(({ colour }) => colour);
  const fitting = fits.find((fit) => strays(fit).length === 0);
  const chosen = fitting ?? fits.reduce((best, next) => (next.off < best.off ? next : best));
  return { type: chosen.type, turn: chosen.turn, off: Number(chosen.off.toFixed(2)), outside: strays(chosen) };
};
