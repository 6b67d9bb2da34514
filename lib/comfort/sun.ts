import { getPosition } from 'suncalc';
import type { IsoDate, Look, Occasion, Piece, TripPlace } from '../model/index.ts';
import { type Coverage, FABRICS, type Surface } from '../vocabulary/index.ts';
import { pieceOf } from './clo.ts';
import { hoursOf, type Timed } from './day-weather.ts';

/** Ozone column when nobody knows better, Dobson units. Source: Madronich 2007 normalises to 300. */
const USUAL_OZONE_DU = 300;

/**
 * Clear-sky UV index from the sun's elevation. Source: Madronich 2007, Photochem. Photobiol. 83(6):1537:
 * 12.5 μ₀^2.42 (ozone/300)^−1.23. Sea level, no snow, no cloud; 0 with the sun down.
 */
export const uvIndex = (elevationDegrees: number, ozoneDu = USUAL_OZONE_DU): number => {
  const cosineOfZenith = Math.sin((elevationDegrees * Math.PI) / 180);
  return cosineOfZenith <= 0 ? 0 : 12.5 * cosineOfZenith ** 2.42 * (ozoneDu / 300) ** -1.23;
};

export type UvBand = 'low' | 'moderate' | 'high' | 'very high' | 'extreme';

/** Band of an index. Source: WHO, WMO, UNEP, ICNIRP, Global Solar UV Index 2002: rounded first, then 0–2, 3–5, 6–7, 8–10, 11 and more. */
export const uvBand = (index: number): UvBand => {
  const whole = Math.round(index);
  if (whole <= 2) return 'low';
  if (whole <= 5) return 'moderate';
  if (whole <= 7) return 'high';
  return whole <= 10 ? 'very high' : 'extreme';
};

/** Sun's elevation in degrees at an instant, refraction included. */
export const sunElevation = (instant: Date, latitude: number, longitude: number): number =>
  getPosition(instant, latitude, longitude).altitude;

/** Tells by how many minutes a time zone is ahead of UTC at an instant. */
const zoneMinutesIn = (timeZone: string): ((instant: Date) => number) => {
  const format = new Intl.DateTimeFormat('en-GB', {
    timeZone,
    year: 'numeric',
    month: 'numeric',
    day: 'numeric',
    hour: 'numeric',
    minute: 'numeric',
    hourCycle: 'h23',
  });
  return (instant) => {
    const parts = format.formatToParts(instant);
    const part = (type: string): number => Number(parts.find((p) => p.type === type)?.value ?? 0);
    const local = Date.UTC(part('year'), part('month') - 1, part('day'), part('hour'), part('minute'));
    return Math.round((local - instant.getTime()) / 60_000);
  };
};

/** Gives the instant of a local clock hour; without a time zone the sun's own time at the longitude stands in. */
const instantIn = (date: IsoDate, longitude: number, timeZone?: string): ((hour: number) => Date) => {
  const minutesAt = timeZone === undefined ? (): number => Math.round(longitude / 15) * 60 : zoneMinutesIn(timeZone);
  return (hour) => {
    const asIfUtc = Date.parse(`${date}T00:00:00Z`) + hour * 3_600_000;
    return new Date(asIfUtc - minutesAt(new Date(asIfUtc)) * 60_000);
  };
};

/** How high the sun climbs during an occasion, degrees; undefined when the brief does not place it on the map. */
export const sunDuring = (occasion: Timed & Pick<Occasion, 'on'>, place: TripPlace | undefined): number | undefined => {
  if (place?.at === undefined) return undefined;
  const { latitude, longitude } = place.at;
  const instantAt = instantIn(occasion.on, longitude, place.timeZone);
  const [from, to] = hoursOf(occasion);
  let highest = -90;
  for (let hour = from; hour <= to; hour += 0.5) {
    highest = Math.max(highest, sunElevation(instantAt(hour), latitude, longitude));
  }
  return highest;
};

/** True when the sun stays below the horizon from noon to noon at the place: polar night. */
export const sunNeverRises = (date: IsoDate, place: TripPlace): boolean =>
  (sunDuring({ on: date, part: 'day', at: '11:00' }, place) ?? 90) < 0;

/** Skin that the sun reaches first, from the top down. */
const EXPOSED: readonly Coverage[] = [
  'head',
  'face shaded',
  'neck',
  'shoulders',
  'upper arms',
  'forearms',
  'thighs',
  'calves',
];

/** A brim over the face, and glasses against the sun. */
export const shadesFace = ({ covers }: Piece): boolean => covers.includes('face shaded');
export const shadesEyes = ({ places, suits }: Piece): boolean => places.includes('eyewear') && suits.includes('sun');

/** Cloth the sun shines through. common practice, no source */
const SHEER: ReadonlySet<Surface> = new Set<Surface>(['chiffon', 'lace', 'open knit']);
const keepsSunOff = ({ fabric }: Piece): boolean => !SHEER.has(FABRICS[fabric].surface);

/**
 * What a look leaves to the sun: parts nothing covers, and parts under sheer cloth alone. Its shade is fabric only: no
 * garment here is rated for UV.
 */
export const sunCover = (
  look: Look,
  pieces: ReadonlyMap<string, Piece>,
): {
  readonly bare: readonly Coverage[];
  readonly sheer: readonly Coverage[];
  readonly hat: boolean;
  readonly eyewear: boolean;
} => {
  const worn = look.worn.map(({ piece, slot }) => ({ piece: pieceOf(pieces, piece), slot }));
  const covered = new Set(worn.flatMap(({ piece }) => piece.covers));
  const shaded = new Set(worn.flatMap(({ piece }) => (keepsSunOff(piece) ? piece.covers : [])));
  return {
    bare: EXPOSED.filter((part) => !covered.has(part)),
    sheer: EXPOSED.filter((part) => covered.has(part) && !shaded.has(part)),
    hat: shaded.has('face shaded'),
    eyewear: worn.some(({ piece, slot }) => slot === 'eyewear' && piece.suits.includes('sun')),
  };
};
