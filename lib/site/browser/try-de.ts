/// <reference lib="dom" />
import { guide } from '../../words/german/guide.ts';
import { outfit } from '../../words/german/outfit.ts';
import { tryOn } from './try/try.ts';

tryOn(document, { guide, outfit });
