/** When the guidelines below were last read. They change, and the carrier's own rule always wins. */
export const GUIDELINES_READ = '2026-11';

/** A published size or weight for a bag, to start from until the carrier has been asked. */
export interface BagGuideline {
  /** Outer size with wheels and handles, centimetres, longest first. */
  readonly cm: readonly [number, number, number];
  readonly kg?: number;
  /** Length, width and depth added up, centimetres. */
  readonly sumCm: number;
  readonly source: string;
}

/** The box for the hold is one of the common shapes within the published sum of sides; the sum and the mass are the rule. */
export const BAG_GUIDELINES: Readonly<Record<'cabin' | 'hold', BagGuideline>> = {
  cabin: { cm: [56, 45, 25], sumCm: 126, source: 'IATA, passenger baggage guideline for the cabin' },
  hold: { cm: [75, 50, 33], kg: 23, sumCm: 158, source: 'IATA, passenger baggage guideline, piece concept' },
};

/** Liquids in the cabin, millilitres. Source: ICAO guidance; Regulation (EU) 2015/1998 and its forerunners. */
export const LIQUIDS = { containerMl: 100, bagMl: 1000 } as const;

/** Lithium-ion batteries, watt hours: free up to the first, with the carrier's approval up to the second. Source: ICAO Technical Instructions, IATA. */
export const BATTERIES = { freeWh: 100, approvedWh: 160 } as const;
