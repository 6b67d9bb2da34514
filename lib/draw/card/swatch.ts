import type { Box, Drawing } from '../drawing.ts';
import { drawingMarkup } from '../svg.ts';
import type { CardPiece } from './input.ts';
import type { CardColours } from './palette.ts';

const TEETH_ACROSS = 8;
const TEETH_DOWN = 6;

/** A rectangle with pinked edges, as pinking shears leave it; `unit` is the size of a pixel in the path's own unit. */
const pinkedPath = (width: number, height: number, unit: number): string => {
  const bite = 1.4 * unit;
  const points: [number, number][] = [];
  for (let i = 0; i < TEETH_ACROSS; i++) {
    points.push([(i * width) / TEETH_ACROSS, 0], [((i + 0.5) * width) / TEETH_ACROSS, bite]);
  }
  for (let i = 0; i < TEETH_DOWN; i++) {
    points.push([width, (i * height) / TEETH_DOWN], [width - bite, ((i + 0.5) * height) / TEETH_DOWN]);
  }
  for (let i = TEETH_ACROSS; i > 0; i--) {
    points.push([(i * width) / TEETH_ACROSS, height], [((i - 0.5) * width) / TEETH_ACROSS, height - bite]);
  }
  for (let i = TEETH_DOWN; i > 0; i--)
    points.push([0, (i * height) / TEETH_DOWN], [bite, ((i - 0.5) * height) / TEETH_DOWN]);
  return `M${points.map((point) => point.map((value) => Math.round(value * 1000) / 1000).join(' ')).join('L')}Z`;
};

const clothOf = ({ picture, colour }: CardPiece): Pick<Drawing, 'tiles' | 'cloth'> => {
  if ('png' in picture) return { tiles: [], cloth: colour };
  const { cloth, tiles } = picture;
  return typeof cloth === 'string'
    ? { tiles: [], cloth }
    : { tiles: tiles.filter(({ name }) => name === cloth.tile), cloth };
};

/** A print is shown smaller when its repeat is larger than the swatch, but never below this share of the card's scale. */
const SMALLEST_PRINT = 0.45;

/** A pinked swatch cut from the cloth itself. `scale` is pixels a centimetre; the box is in pixels; `short` as for `drawingMarkup`. */
export const swatchMarkup = (
  piece: CardPiece,
  box: Box,
  cardScale: number,
  prefix: string,
  colours: Pick<CardColours, 'ink'>,
  short = true,
): string => {
  const { tiles, cloth } = clothOf(piece);
  const repeat = Math.max(0.1, ...tiles.map(({ width }) => width));
  const scale = Math.min(cardScale, Math.max(cardScale * SMALLEST_PRINT, box.width / repeat));
  const path = pinkedPath(box.width / scale, box.height / scale, 1 / scale);
  const drawing: Drawing = {
    box: { x: 0, y: 0, width: box.width / scale, height: box.height / scale },
    outline: [],
    tiles,
    marks: [
      { path, fill: cloth },
      { path, stroke: colours.ink, width: 0.9 / scale, opacity: 0.45 },
    ],
    anchors: {},
    cloth,
  };
  return `<g transform="translate(${box.x} ${box.y}) scale(${Math.round(scale * 1e4) / 1e4})">${drawingMarkup(drawing, prefix, short)}</g>`;
};
