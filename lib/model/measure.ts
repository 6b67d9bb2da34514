/** A quantity, how sure it is, and where it comes from. The unit stands in the field's name (grams, litres, clo, hours). */
export interface Measure {
  readonly value: number;
  /** Lowest and highest plausible value; equal to `value` when it was weighed or measured exactly. */
  readonly low: number;
  readonly high: number;
  /** `given` was written by the stylist in the file; `estimated` came from the kind and the fabric. */
  readonly basis: 'given' | 'estimated';
  /** For people: a publication, or "entered by the stylist". */
  readonly source: string;
}

/** Calendar date, `2027-10-02`. */
export type IsoDate = string;
/** Clock time, `19:30`. */
export type ClockTime = string;
