export { drawnLarger } from './adorn/index.ts';
export type {
  Box,
  Detail,
  Drawing,
  DrawKind,
  DrawnPiece,
  Mark,
  MarkGroup,
  Matrix,
  Paint,
  Point,
  Tile,
} from './drawing.ts';
export { drawingFindings, heelNote } from './findings.ts';
export { drawPiece, lengthNote } from './garment.ts';
export { drawSundry, drawSundryIcon, SUNDRY_ICONS, type SundryIcon, sundryIconOf } from './sundry.ts';
export { drawingMarkup, drawingSvg } from './svg.ts';
export { type Tick, tapeTicks } from './tape.ts';
