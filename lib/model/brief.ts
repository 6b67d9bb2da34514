import type { ActivityId } from '../vocabulary/activities.ts';
import type { DressCode } from '../vocabulary/dress-codes.ts';
import type { Feels } from '../vocabulary/feels.ts';
import type { Need } from '../vocabulary/needs.ts';
import type { NamedColour } from './colour.ts';
import type { ClockTime, IsoDate } from './measure.ts';
import type { SourceFile } from './piece.ts';

export interface Weather {
  readonly lowC: number;
  readonly highC: number;
  /** Wind at head height, metres a second. */
  readonly windMs: number;
  /** Relative humidity, percent. */
  readonly humidityPercent: number;
  /** Chance of rain, percent. */
  readonly rainPercent: number;
  /** Where the figures come from, for people: `forecast`; empty when the stylist does not say. */
  readonly source: string;
}

/** One stay. Stays may overlap on the day of travel; the later one then gives the evening's weather. */
export interface TripPlace {
  readonly name: string;
  readonly from: IsoDate;
  readonly to: IsoDate;
  readonly at?: { readonly latitude: number; readonly longitude: number };
  readonly timeZone?: string;
  readonly weather?: Weather;
  /** Weather of single days, where known better. */
  readonly days: Readonly<Record<IsoDate, Weather>>;
}

export type DayPart = 'morning' | 'day' | 'evening' | 'night';

export type Setting =
  | { readonly where: 'indoors'; readonly airC: number }
  | { readonly where: 'outdoors'; readonly sun: 'sun' | 'shade' };

export interface Occasion {
  /** Unique in the brief, from its date and name: `2027-10-03-chamber-concert`. */
  readonly id: string;
  readonly what: string;
  readonly on: IsoDate;
  readonly part: DayPart;
  /** Clock time when given. */
  readonly at?: ClockTime;
  /** Clock time of its end when given; on the next day where it is not later than `at`. */
  readonly until?: ClockTime;
  readonly dress: DressCode;
  readonly setting: Setting;
  readonly activity: ActivityId;
  readonly needs: readonly Need[];
  /** A journey with the luggage: what is worn on it is not in the bag. */
  readonly transit: boolean;
  /** How far off comfortable the client accepts to be, °C at either end; nothing when absent. */
  readonly degreesOff?: number;
  /** Names of the travellers it concerns; all when empty. */
  readonly travellers: readonly string[];
  /** Line in the brief, for findings. */
  readonly line?: number;
}

/** What a guideline says of a bag. */
export type BagMeasure = 'size' | 'limit';

export interface Bag {
  readonly name: string;
  readonly role: 'cabin' | 'personal' | 'hold';
  /** Outer size, centimetres, longest first. */
  readonly cm?: readonly [number, number, number];
  readonly litres: number;
  /** Its own weight, grams. */
  readonly ownGrams: number;
  /** Limit including its own weight, kilograms; undefined when there is none. */
  readonly limitKg?: number;
  /** Inner size, centimetres, longest first; when it was measured. */
  readonly innerCm?: readonly [number, number, number];
  /** Published guideline that filled in what was not written. */
  readonly guideline?: 'cabin' | 'hold';
  /** What the guideline filled in. */
  readonly assumed?: readonly BagMeasure[];
  /** Travellers who pack one such bag together. */
  readonly sharedBy?: readonly string[];
  /** The only traveller who brings it; everyone brings one of their own when this and `sharedBy` are absent. */
  readonly traveller?: string;
}

/** Colours, cloths and heels that a client does not wear. */
export interface Aversions {
  readonly colours: readonly NamedColour[];
  readonly fabrics: readonly string[];
  readonly heelCmOver?: number;
  /** Fibres and cloths that are worn only over something else. */
  readonly againstSkin?: readonly string[];
}

export interface BriefTraveller {
  readonly name: string;
  readonly wardrobe: string;
  /** As most people do when absent. */
  readonly feels?: Feels;
  /** What this traveller alone does not wear. */
  readonly avoid?: Aversions;
}

export interface Brief extends SourceFile {
  /** Folder name of the trip. */
  readonly id: string;
  readonly title: string;
  readonly from: IsoDate;
  readonly to: IsoDate;
  readonly travellers: readonly BriefTraveller[];
  readonly places: readonly TripPlace[];
  /** In order of date and time. */
  readonly occasions: readonly Occasion[];
  readonly bags: readonly Bag[];
  readonly washDays: readonly IsoDate[];
  /** Line of the wash days, when there are any. */
  readonly washDaysLine?: number;
  readonly piecesAtMost?: number;
  /** What nobody on the trip wears. */
  readonly avoid: Aversions;
  /** Allergies and other cautions in the client's words; shown with the usual deferral to a doctor. */
  readonly cautions: readonly string[];
  /** Markdown, published. */
  readonly introduction: string;
}
