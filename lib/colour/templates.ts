import type { NamedColour } from '../model/index.ts';
import { angleBetween, wheelAngle } from './hue.ts';
import { isAchromatic, isNeutral } from './neutral.ts';

/** Names of the hue templates: Matsuda's, as Tokumaru and Cohen-Or hand them on. */
export type HueTemplateType = 'N' | 'i' | 'I' | 'V' | 'L' | 'L mirrored' | 'Y' | 'T' | 'X';

interface Sector {
  readonly centre: number;
  readonly width: number;
}

/**
 * Sectors in degrees of a colour wheel, from the narrowest template to the widest. Cohen-Or et al. 2006, ACM Transactions
 * on Graphics 25(3), figure 2, after Matsuda 1995. They lay them on the wheel of HSV; here it is the artist's wheel, so
 * that a palette is judged on the same wheel as two colours are.
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
  /** How far the template is turned on the artist's wheel, degrees; 0 for `N`. */
  readonly turn: number;
  /** Mean distance of the hues from their sector, degrees, weighted by share and chroma; 0 is inside. */
  readonly off: number;
  /** The colours of each sector, in the order of the template; those outside are in none. */
  readonly groups: readonly (readonly NamedColour[])[];
  /** Colours that lie outside by more than the tolerance, farthest first. */
  readonly outside: readonly NamedColour[];
}

/** Degrees that a palette may stray in the mean and still count as fitting: half the narrowest sector. Own choice. */
const TOLERANCE = 9;

interface Weighed {
  readonly colour: NamedColour;
  readonly hue: number;
  readonly weight: number;
}

const awayFromOne = (hue: number, { centre, width }: Sector, turn: number): number =>
  Math.max(0, angleBetween(hue, centre + turn + 720) - width / 2);

const awayFrom = (hue: number, sectors: readonly Sector[], turn: number): number =>
  Math.min(...sectors.map((sector) => awayFromOne(hue, sector, turn)));

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

/** The colours that lie in each sector, within the tolerance; a colour between two goes to the nearer. */
const groupsOf = (hues: readonly Weighed[], sectors: readonly Sector[], turn: number): HueTemplateFit['groups'] =>
  sectors.map((sector, index) =>
    hues
      .filter(({ hue }) => {
        const away = sectors.map((other) => awayFromOne(hue, other, turn));
        const own = awayFromOne(hue, sector, turn);
        return own <= TOLERANCE && away.indexOf(Math.min(...away)) === index;
      })
      .map(({ colour }) => colour),
  );

/**
 * The narrowest hue template a palette fits; when it fits none, the one it strays from least. A template is taken only if
 * every one of its sectors has a colour. Neutrals have no say. A palette of neutrals is `N`.
 */
export const fitHueTemplate = (
  palette: readonly { readonly colour: NamedColour; readonly share: number }[],
): HueTemplateFit => {
  const hues = palette.flatMap(({ colour, share }): Weighed[] =>
    isNeutral(colour) || isAchromatic(colour) || share <= 0
      ? []
      : [{ colour, hue: wheelAngle(colour.oklch.h), weight: share * colour.oklch.c }],
  );
  if (hues.length === 0) return { type: 'N', turn: 0, off: 0, groups: [], outside: [] };
  const fits = HUE_TEMPLATES.map(({ type, sectors }) => {
    const { turn, off } = bestTurn(hues, sectors);
    return { type, sectors, turn, off, groups: groupsOf(hues, sectors, turn) };
  }).filter(({ groups }) => groups.length === 1 || groups.every((group) => group.length > 0));
  const strays = ({ sectors, turn }: { sectors: readonly Sector[]; turn: number }): readonly NamedColour[] =>
    hues
      .map(({ colour, hue }) => ({ colour, away: awayFrom(hue, sectors, turn) }))
      .filter(({ away }) => away > TOLERANCE)
      .sort((a, b) => b.away - a.away)
      .map(({ colour }) => colour);
  const fitting = fits.find((fit) => strays(fit).length === 0);
  const chosen = fitting ?? fits.reduce((best, next) => (next.off < best.off ? next : best));
  const { type, turn, off, groups } = chosen;
  return { type, turn, off: Number(off.toFixed(2)), groups, outside: strays(chosen) };
};
