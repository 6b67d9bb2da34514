/** Seeded source of numbers from 0 to 1 (mulberry32). */
export type Random = () => number;

export const random = (seed: number): Random => {
  let state = seed | 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
};

/** 32-bit FNV-1a of a text, as a seed. */
export const seedOf = (text: string): number => {
  let hash = 2166136261;
  for (const letter of text) hash = Math.imul(hash ^ (letter.codePointAt(0) ?? 0), 16777619);
  return hash >>> 0;
};
