import type { Rasteriser } from '../draw/raster/index.ts';
import type { Fonts } from '../type/index.ts';
import type { Cache } from './cache.ts';
import type { CardVoice } from './card-input.ts';

/** What artwork is made with; all of it handed in. */
export interface Easel {
  readonly rasteriser: Rasteriser;
  readonly fonts: Fonts;
  readonly cache: Cache;
  readonly voice: CardVoice;
  /** Voids what was kept when the code that draws changes. */
  readonly codeHash: string;
  readonly onPicture: () => void;
}

/** Pictures that are made together, from the same pixels or the same layout. */
export interface Job {
  /** Files below the guide's folder, and what else than the code each depends on. */
  readonly outputs: readonly { readonly file: string; readonly key: readonly unknown[] }[];
  /** The files' bytes in their order. */
  make(): Promise<readonly Uint8Array[]>;
}

/** What pictures for pages lie on: a light page, a dark one. */
export const GROUNDS = ['clear', 'night'] as const;
/** How pictures on each are written: a pool of light that fades slowly shows every step that is saved on it. */
export const WEBP_ON = { clear: {}, night: { alphaQuality: 100, effort: 4 } } as const;
