import type { Detail, Drawing, DrawnPiece } from '../../lib/draw/drawing.ts';
import { drawPiece } from '../../lib/draw/garment.ts';
import {
  CUTS,
  type Cut,
  FABRICS,
  type FabricId,
  type KindId,
  LENGTHS,
  PATTERN_TYPES,
} from '../../lib/vocabulary/index.ts';
import { samplePiece } from './sample.ts';

/** One drawing of a sheet and what it shows. */
export interface Cell {
  readonly caption: string;
  readonly drawing: Drawing;
  readonly detail: Detail;
}

export interface Row {
  readonly title: string;
  readonly cells: readonly Cell[];
}

/** One fabric for each surface: what is drawn does not differ within a surface. */
const fabrics = (): readonly FabricId[] => {
  const bySurface = new Map<string, FabricId>();
  for (const [id, { surface }] of Object.entries(FABRICS)) {
    if (!bySurface.has(surface)) bySurface.set(surface, id as FabricId);
  }
  return [...bySurface.values()];
};

const looksOf = ({ marks, tiles }: Drawing): string => JSON.stringify([marks, tiles]);

/** Every cut, length, fabric and pattern of a kind that gives a drawing of its own. */
export const rowsOf = (kind: KindId): readonly Row[] => {
  const plain = drawPiece(samplePiece(kind), 'full');
  const seen = new Set([looksOf(plain)]);
  const row = (title: string, changes: readonly (readonly [string, Partial<DrawnPiece>])[]): Row => ({
    title,
    cells: changes.flatMap(([caption, change]): Cell[] => {
      const drawing = drawPiece(samplePiece(kind, change), 'full');
      const looks = looksOf(drawing);
      if (seen.has(looks)) return [];
      seen.add(looks);
      return [{ caption, drawing, detail: 'full' }];
    }),
  });
  const rows: readonly Row[] = [
    {
      title: kind,
      cells: [
        { caption: 'as it comes', drawing: plain, detail: 'full' },
        { caption: 'small', drawing: drawPiece(samplePiece(kind), 'small'), detail: 'small' },
      ],
    },
    row(
      'cuts',
      (Object.keys(CUTS) as Cut[]).map((cut) => [cut, { cut }]),
    ),
    row(
      'lengths',
      LENGTHS.map((length) => [length, { length }]),
    ),
    row(
      'fabrics',
      fabrics().map((fabric) => [fabric, { fabric }]),
    ),
    row(
      'patterns',
      PATTERN_TYPES.map((type) => [type, { pattern: { type, scale: 'medium' } }]),
    ),
  ];
  return rows.filter(({ cells }) => cells.length > 0);
};
