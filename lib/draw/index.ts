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
export { drawPiece, lengthNote } from './garment.ts';
export { drawingMarkup, drawingSvg } from './svg.ts';
