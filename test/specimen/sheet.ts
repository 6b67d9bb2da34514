import { INK, PAPER } from '../../lib/draw/card/index.ts';
import { type LaidWord, wordsMarkup } from '../../lib/draw/card/letters.ts';
import { itemMarkup } from '../../lib/draw/flat-lay/index.ts';
import { FACES, type Fonts } from '../../lib/type/index.ts';
import type { Cell, Row } from './cells.ts';

const WIDTH = 1640;
const MARGIN = 40;
const CELL = { width: 156, height: 196, picture: 160 } as const;
const LARGE = 480;
/** Width of the picture that must still be recognised. */
const SMALL = 80;

const word = (text: string, x: number, y: number, size: number, style: 'title' | 'text', fonts: Fonts): LaidWord => ({
  text,
  x,
  y,
  width: 0,
  size,
  spacing: 0,
  colour: INK,
  faces: FACES[style].filter((face) => fonts.stack(text, style).includes(`'${face.name}'`)),
  transform: '',
});

interface Spot {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

const scaleFor = ({ drawing: { box } }: Cell, width: number, height: number): number =>
  Math.min(width / (box.width + 3), height / (box.height + 3));

const cellMarkup = (cell: Cell, spot: Spot, scale: number, prefix: string): string => {
  const { box } = cell.drawing;
  const x = spot.x + spot.width / 2 - (box.x + box.width / 2) * scale;
  const y = spot.y + spot.height / 2 - (box.y + box.height / 2) * scale;
  const item = { id: cell.caption, slot: 'top' as const, picture: cell.drawing };
  return `<g transform="translate(${x.toFixed(1)} ${y.toFixed(1)})scale(${scale.toFixed(4)})">${itemMarkup(item, prefix, 'shade', scale)}</g>`;
};

/** All drawings of one kind on one sheet: large, at 80 pixels, then every variant. */
export const sheetSvg = (rows: readonly Row[], fonts: Fonts): string => {
  const words: LaidWord[] = [];
  let inner = '';
  let y = MARGIN;
  rows.forEach((row, index) => {
    const large = index === 0;
    words.push(word(row.title, MARGIN, y + (large ? 34 : 22), large ? 40 : 22, 'title', fonts));
    y += large ? 56 : 36;
    const across = large ? 3 : Math.floor((WIDTH - 2 * MARGIN) / CELL.width);
    // one scale a row, so that lengths can be compared
    const shared = Math.min(...row.cells.map((cell) => scaleFor(cell, CELL.width - 16, CELL.picture)));
    row.cells.forEach((cell, at) => {
      const [column, line] = [at % across, Math.floor(at / across)];
      const spot = large
        ? {
            x: MARGIN + column * (LARGE + 40),
            y,
            width: cell.detail === 'small' ? SMALL : LARGE,
            height: cell.detail === 'small' ? SMALL : LARGE,
          }
        : { x: MARGIN + column * CELL.width, y: y + line * CELL.height, width: CELL.width - 16, height: CELL.picture };
      const scale = large ? scaleFor(cell, spot.width, spot.height) : shared;
      inner += cellMarkup(cell, spot, scale, `r${index}c${at}-`);
      words.push(word(cell.caption, spot.x, spot.y + spot.height + 18, 12, 'text', fonts));
    });
    y += large ? LARGE + 50 : Math.ceil(row.cells.length / across) * CELL.height + 22;
  });
  const height = Math.ceil(y + MARGIN);
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${WIDTH}" height="${height}" viewBox="0 0 ${WIDTH} ${height}"><rect width="${WIDTH}" height="${height}" fill="${PAPER}"/>${inner}${wordsMarkup(words, fonts, 't')}</svg>`;
};
