/** Surface patterns. `plain` is none; ribs, cables and weaves are fabric, not pattern. */
export const PATTERN_TYPES = [
  'plain',
  'stripe',
  'pinstripe',
  'gingham',
  'check',
  'tartan',
  'houndstooth',
  'herringbone',
  'dot',
  'floral',
  'animal',
  'abstract',
  'geometric',
  'paisley',
  'colour block',
] as const;
export type PatternType = (typeof PATTERN_TYPES)[number];

export const PATTERN_SCALES = ['small', 'medium', 'large'] as const;
export type PatternScale = (typeof PATTERN_SCALES)[number];

/** Patterns so quiet that the trade treats them as texture: they do not count as a print. common practice, no source */
export const QUIET_PATTERNS: ReadonlySet<PatternType> = new Set(['plain', 'pinstripe', 'herringbone']);
