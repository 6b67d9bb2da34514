/// <reference lib="dom" />
import { guide } from '../../words/english/guide.ts';
import { outfit } from '../../words/english/outfit.ts';
import { tryOn } from './try/try.ts';

tryOn(document, { guide, outfit });
