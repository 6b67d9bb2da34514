import type { Brief, Occasion } from '../model/index.ts';
import { estimateDryHours, KINDS } from '../vocabulary/index.ts';

/** When a swim has no clock time it counts as noon: swims on one day are close, those of two days are not. */
const NOON = '12:00';
const HOUR_MS = 3_600_000;

const hourOf = ({ on, at = NOON }: Occasion): number => Date.parse(`${on}T${at}Z`) / HOUR_MS;

export interface Swims {
  readonly swims: number;
  /** Pieces of swimwear a person wants: none without a swim, two where one would still be wet at the next swim, or one. */
  readonly wanted: number;
}

/** How often one swims on the trip and how much swimwear that asks for; dry is dry at the slow end of the estimate. */
export const swimsOf = ({ occasions }: Brief): Swims => {
  const hours = occasions.filter(({ needs }) => needs.includes('swim')).map(hourOf);
  const ordered = hours.toSorted((a, b) => a - b);
  const dry = estimateDryHours(KINDS.swimsuit, KINDS.swimsuit.fabric).high;
  const wet = ordered.some((hour, index) => index > 0 && hour - (ordered[index - 1] ?? hour) < dry);
  return { swims: hours.length, wanted: wet ? 2 : Math.min(1, hours.length) };
};
