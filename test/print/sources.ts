import type { PrintSources } from '../../lib/print/index.ts';
import { loadFonts } from '../../lib/type/index.ts';
import { english } from '../../lib/words/index.ts';
import { drawSilhouette, drawThing } from './drawings.ts';

export const SOURCES: PrintSources = {
  fonts: loadFonts(),
  language: english,
  drawPiece: drawSilhouette,
  drawSundry: drawThing,
};
