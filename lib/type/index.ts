export { FACES, type Face, type FontStyle, SCRIPTS, type Script, STYLES } from './faces.ts';
export { type Fonts, type Letter, loadFonts, type Run, type SatoriFont } from './fonts.ts';
export { pdfFontkit } from './pdf-fontkit.ts';
export { plainText, UncoveredTextError } from './text.ts';
export { unwrapWoff } from './unwrap.ts';
