/** Cut, from close to the body to full. `volume` is what the proportion rule reads. */
export const CUTS = {
  fitted: { volume: 0 },
  slim: { volume: 0 },
  tapered: { volume: 1 },
  straight: { volume: 1 },
  regular: { volume: 1 },
  tailored: { volume: 1 },
  bootcut: { volume: 1 },
  'a-line': { volume: 2 },
  wrap: { volume: 1 },
  boxy: { volume: 2 },
  relaxed: { volume: 2 },
  wide: { volume: 3 },
  flared: { volume: 2 },
  pleated: { volume: 2 },
  full: { volume: 3 },
  oversized: { volume: 3 },
  cocoon: { volume: 3 },
} as const satisfies Record<string, { volume: 0 | 1 | 2 | 3 }>;
export type Cut = keyof typeof CUTS;

/** Where a garment ends on the body, from high to low. */
export const LENGTHS = [
  'none',
  'cropped',
  'waist',
  'hip',
  'thigh',
  'mini',
  'knee',
  'midi',
  'calf',
  'ankle',
  'full',
  'floor',
] as const;
export type Length = (typeof LENGTHS)[number];

/** Where a garment hung from the shoulder ends, centimetres below the neck point. common practice, no source */
export const FROM_SHOULDER_CM: Readonly<Record<Length, number>> = {
  none: 66,
  cropped: 46,
  waist: 54,
  hip: 66,
  thigh: 82,
  mini: 87,
  knee: 106,
  midi: 118,
  calf: 123,
  ankle: 134,
  full: 138,
  floor: 146,
};
