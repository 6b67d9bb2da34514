import { clampChroma, formatHex, oklch, wcagContrast } from 'culori';

/** The few colours of a printed sheet, `#rrggbb`, all on white paper. */
export interface Inks {
  readonly ink: string;
  /** Secondary text. */
  readonly soft: string;
  /** Rules and ticks. */
  readonly hair: string;
  /** Rules between rows. */
  readonly faint: string;
  /** The capsule's own accent, dark enough to be read as text. */
  readonly thread: string;
  /** Washing. */
  readonly water: string;
  readonly paper: string;
}

/** WCAG 2.2, success criterion 1.4.3: text has a contrast of at least 4.5 to 1. */
const LEAST_CONTRAST = 4.5;
const STEP = 0.01;

/** A colour made darker, hue kept, until text in it is legible on white. */
export const legibleOnWhite = (colour: string): string => {
  const start = oklch(colour);
  if (start === undefined) return '#27323f';
  for (let l = start.l; l > 0; l -= STEP) {
    const hex = formatHex(clampChroma({ ...start, l }, 'oklch'));
    if (hex !== undefined && wcagContrast(hex, '#ffffff') >= LEAST_CONTRAST) return hex;
  }
  return '#000000';
};

export const inksFor = (accent: string): Inks => ({
  ink: '#27323f',
  soft: '#5a6571',
  hair: '#a3abb3',
  faint: '#cfd4d9',
  thread: legibleOnWhite(accent),
  water: '#3c6a86',
  paper: '#ffffff',
});
