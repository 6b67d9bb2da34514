import type { PDFDocument, PDFRef } from 'pdf-lib';
import type { Box, Drawing, Mark, MarkGroup, Matrix, Tile } from '../../draw/drawing.ts';
import { coarsen } from './coarsen.ts';
import { meanCloth } from './mean-cloth.ts';
import { matrixNums, num } from './numbers.ts';
import { apply, invert, pathBox, pathOperators, readPath } from './path.ts';
import { createPen, type Pen } from './pen.ts';
import { createResources, type Opacities, objectName, type Resources, writeResources } from './resources.ts';
import { overhang, seamlessMarks } from './seamless.ts';

/** A drawing as a form of the document: in centimetres, y downwards, painted as often as wanted and stored once. */
export interface DrawnForm {
  readonly ref: PDFRef;
  readonly box: Box;
}

export interface Drawings {
  /** The form of a drawing that is painted at about this scale, millimetres a centimetre. */
  form(drawing: Drawing, scale: number): DrawnForm;
}

/** A printed period under this many millimetres cannot be told from its mean colour. */
const FINEST_CLOTH = 0.18;
/** Nor can a line this thin, or a bend this slight, be seen: about one dot at 600 dots an inch. */
const FINEST_LINE = 0.04;
/** Thumbnails, millimetres a centimetre: below this, drawings are coarsened. */
const COARSE_BELOW = 0.16;

const IDENTITY: Matrix = [1, 0, 0, 1, 0, 0];
/** Tiles are stored in square blocks of blocks, so that a large cloth needs few operators. */
const BLOCK = 8;
const WHOLE_BLOCK = BLOCK * BLOCK;
/** Tiles whose marks cannot be freed of their edges overlap by this share, or a viewer shows the paper between them. */
const OVERLAP = 0.01;
/** Of a stroke without a width, centimetres; as the SVG of a drawing has it. */
const DEFAULT_WIDTH = 0.1;

const isGroup = (mark: Mark | MarkGroup): mark is MarkGroup => 'marks' in mark;

interface Cloth {
  readonly tile: Tile;
  /** Mean colour, when the tile is too fine to be resolved. */
  readonly mean?: ReturnType<typeof meanCloth>;
  readonly blocks: Map<number, PDFRef>;
  /** Its marks when they need no cutting at the edges, and how far they reach over them, in tiles. */
  readonly seamless?: { readonly marks: readonly Mark[]; readonly reach: number };
}

/** A path ready to be filled with cloth. */
interface Outline {
  readonly path: string;
  readonly box: Box;
  readonly evenOdd: boolean;
}

/** Columns and rows of tiles that a box needs. */
const tileRange = ({ x, y, width, height }: Box, tile: Tile, matrix: Matrix) => {
  const back = invert(matrix);
  const corners = [
    apply(back, [x, y]),
    apply(back, [x + width, y]),
    apply(back, [x, y + height]),
    apply(back, [x + width, y + height]),
  ];
  const columns = corners.map(([at]) => at / tile.width);
  const rows = corners.map(([, at]) => at / tile.height);
  return { left: Math.min(...columns), right: Math.max(...columns), top: Math.min(...rows), bottom: Math.max(...rows) };
};

const placeAt = (pen: Pen, name: string, x: number, y: number): void =>
  pen.raw(`q 1 0 0 1 ${matrixNums(x, y)} cm /${name} Do Q`);

/** A group may be moved before it is painted: its form needs room on every side. */
const widened = ({ x, y, width, height }: Box): Box => {
  const reach = Math.max(width, height);
  return { x: x - reach, y: y - reach, width: width + 2 * reach, height: height + 2 * reach };
};

export const createDrawings = (pdf: PDFDocument, opacities: Opacities): Drawings => {
  const { context } = pdf;

  const written = new Map<string, PDFRef>();
  /** Equal forms are stored once. */
  const writeForm = (box: Box, pen: Pen, resources: Resources, grouped: boolean): PDFRef => {
    const corners = [box.x, box.y, box.x + box.width, box.y + box.height].map((value) => Number(num(value)));
    const operators = pen.text();
    const key = `${corners.join(' ')} ${grouped} ${operators}`;
    const made =
      written.get(key) ??
      context.register(
        context.flateStream(operators, {
          Subtype: 'Form',
          BBox: corners,
          Resources: writeResources(pdf, resources),
          ...(grouped ? { Group: { S: 'Transparency' } } : {}),
        }),
      );
    written.set(key, made);
    return made;
  };

  const paintDrawing = (drawing: Drawing, finest: number, digits: number): PDFRef => {
    const woven = new Map<Tile['marks'], Map<number, PDFRef>>();
    /** Tiles that differ in their turn or ground alone share their blocks. */
    const blocksOf = ({ marks }: Tile): Map<number, PDFRef> => {
      const blocks = woven.get(marks) ?? new Map<number, PDFRef>();
      woven.set(marks, blocks);
      return blocks;
    };
    const cloths = new Map(
      drawing.tiles.map((tile): [string, Cloth] => {
        const [a, b] = tile.transform ?? IDENTITY;
        const period = Math.max(tile.width, tile.height) * Math.hypot(a, b);
        if (period < finest) return [tile.name, { tile, blocks: blocksOf(tile), mean: meanCloth(tile) }];
        const marks = seamlessMarks(tile);
        const seamless = marks === undefined ? {} : { seamless: { marks, reach: overhang(marks, tile) } };
        return [tile.name, { tile, blocks: blocksOf(tile), ...seamless }];
      }),
    );

    const block = (cloth: Cloth, side: number): PDFRef => {
      const known = cloth.blocks.get(side);
      if (known !== undefined) return known;
      const { width, height } = cloth.tile;
      const marks = cloth.seamless?.marks ?? cloth.tile.marks;
      const [before, after] =
        cloth.seamless === undefined ? [0, OVERLAP] : [cloth.seamless.reach, cloth.seamless.reach];
      const box = {
        x: -before * width,
        y: -before * height,
        width: width * (before + side + after),
        height: height * (before + side + after),
      };
      const resources = createResources();
      const pen = createPen(resources, opacities);
      if (side === 1) paintMarks(pen, marks, resources, box);
      else {
        const step = side / BLOCK;
        const name = objectName(resources, block(cloth, step));
        for (let j = 0; j < BLOCK; j++) {
          for (let i = 0; i < BLOCK; i++) placeAt(pen, name, i * step * width, j * step * height);
        }
      }
      const ref = writeForm(box, pen, resources, false);
      cloth.blocks.set(side, ref);
      return ref;
    };

    const weave = (pen: Pen, cloth: Cloth, { path, box, evenOdd }: Outline, resources: Resources): void => {
      const { tile, mean } = cloth;
      const ground = mean?.colour ?? tile.ground;
      if (ground !== undefined) {
        pen.opacity(mean?.opacity ?? 1);
        pen.fill(ground);
        pen.raw(`${path}\n${evenOdd ? 'f*' : 'f'}`);
      }
      if (mean !== undefined) return;
      const matrix = tile.transform ?? IDENTITY;
      const { left, top, right, bottom } = tileRange(box, tile, matrix);
      const span = Math.max(right - left, bottom - top);
      const side = span > WHOLE_BLOCK ? WHOLE_BLOCK : span > BLOCK ? BLOCK : 1;
      const name = objectName(resources, block(cloth, side));
      pen.opacity(1);
      pen.inside(() => {
        pen.raw(`${path}\n${evenOdd ? 'W*' : 'W'} n\n${matrixNums(...matrix)} cm`);
        const reach = cloth.seamless?.reach ?? 0;
        for (let j = Math.floor((top - reach) / side); j * side < bottom + reach; j++) {
          for (let i = Math.floor((left - reach) / side); i * side < right + reach; i++) {
            placeAt(pen, name, i * side * tile.width, j * side * tile.height);
          }
        }
      });
    };

    const paintMark = (pen: Pen, mark: Mark, resources: Resources, box: Box): void => {
      const { opacity = 1, fill, stroke, evenOdd = false } = mark;
      if (opacity < 1 && typeof fill === 'object') {
        const { opacity: _, ...opaque } = mark;
        paintGroup(pen, { marks: [opaque], opacity }, resources, box);
        return;
      }
      const segments = readPath(mark.path);
      const path = pathOperators(segments, digits);
      const both = typeof fill === 'string' && stroke !== undefined && opacity === 1;
      if (typeof fill === 'object') {
        const cloth = cloths.get(fill.tile);
        if (cloth === undefined) throw new Error(`the drawing has no tile called "${fill.tile}"`);
        weave(pen, cloth, { path, box: pathBox(segments), evenOdd }, resources);
      }
      pen.opacity(opacity);
      if (typeof fill === 'string') pen.fill(fill);
      if (typeof fill === 'string' && !both) pen.raw(`${path}\n${evenOdd ? 'f*' : 'f'}`);
      if (stroke === undefined) return;
      pen.stroke(stroke, mark.width ?? DEFAULT_WIDTH, mark.dash ?? [], mark.round ?? false);
      pen.raw(`${path}\n${both ? (evenOdd ? 'B*' : 'B') : 'S'}`);
    };

    const paintGroup = (pen: Pen, group: MarkGroup, resources: Resources, box: Box): void => {
      const { opacity = 1, transform, clip, marks } = group;
      pen.inside(() => {
        if (transform !== undefined) pen.raw(`${matrixNums(...transform)} cm`);
        if (clip !== undefined) pen.raw(`${pathOperators(readPath(clip), digits)}\nW n`);
        if (opacity >= 1) {
          paintMarks(pen, marks, resources, box);
          return;
        }
        const inner = createResources();
        const roomy = widened(box);
        const innerPen = createPen(inner, opacities);
        paintMarks(innerPen, marks, inner, roomy);
        pen.opacity(opacity);
        pen.raw(`/${objectName(resources, writeForm(roomy, innerPen, inner, true))} Do`);
      });
    };

    const paintMarks = (pen: Pen, marks: readonly (Mark | MarkGroup)[], resources: Resources, box: Box): void => {
      for (const mark of marks) {
        if (isGroup(mark)) paintGroup(pen, mark, resources, box);
        else paintMark(pen, mark, resources, box);
      }
    };

    const resources = createResources();
    const pen = createPen(resources, opacities);
    paintMarks(pen, drawing.marks, resources, drawing.box);
    return writeForm(drawing.box, pen, resources, false);
  };

  return {
    form: (drawing, scale) => {
      const fine = scale >= COARSE_BELOW;
      const ready = fine ? drawing : coarsen(drawing, FINEST_LINE / scale);
      return { ref: paintDrawing(ready, FINEST_CLOTH / scale, fine ? 2 : 1), box: drawing.box };
    },
  };
};
