import { bagVerb } from './bag.ts';
import { buildVerb } from './build.ts';
import { checkVerb } from './check.ts';
import { chooseVerb } from './choose.ts';
import { explainVerb } from './explain.ts';
import { looksVerb } from './looks.ts';
import { paletteVerb } from './palette.ts';
import { planVerb } from './plan.ts';
import { serveVerb } from './serve.ts';
import type { Verb } from './verb.ts';
import { wordsVerb } from './words.ts';

/** Every verb, in the order help lists them. */
export const VERBS: readonly Verb[] = [
  buildVerb,
  checkVerb,
  chooseVerb,
  looksVerb,
  explainVerb,
  planVerb,
  bagVerb,
  paletteVerb,
  wordsVerb,
  serveVerb,
];
