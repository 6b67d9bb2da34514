import { bagVerb } from './bag.ts';
import { buildVerb } from './build.ts';
import { checkVerb } from './check.ts';
import { chooseVerb } from './choose.ts';
import { compareVerb } from './compare.ts';
import { explainVerb } from './explain.ts';
import { improveVerb } from './improve.ts';
import { listVerb } from './list.ts';
import { looksVerb } from './looks.ts';
import { paletteVerb } from './palette.ts';
import { planVerb } from './plan.ts';
import { serveVerb } from './serve.ts';
import { togetherVerb } from './together.ts';
import type { Verb } from './verb.ts';
import { wordsVerb } from './words.ts';

/** Every verb, in the order help lists them. */
export const VERBS: readonly Verb[] = [
  buildVerb,
  checkVerb,
  listVerb,
  chooseVerb,
  improveVerb,
  compareVerb,
  togetherVerb,
  looksVerb,
  explainVerb,
  planVerb,
  bagVerb,
  paletteVerb,
  wordsVerb,
  serveVerb,
];
