import type { PDFDocument, PDFRef } from 'pdf-lib';
import type { Box, Drawing, Mark, MarkGroup, Matrix, Paint, Tile } from '../../draw/drawing.ts';
import { coarsen } from './coarsen.ts';
import { meanCloth } from './mean-cloth.ts';
import { num, nums, rgb } from './numbers.ts';
import { apply, invert, pathBox, pathOperators, readPath, type Segment } from './path.ts';
import { createResources, type Opacities, objectName, type Resources, writeResources } from './resources.ts';

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
/** Nor can a line this thin, or a bend this slight, be seen; half a dot at 600 dots an inch. */
const FINEST_LINE = 0.02;
/** Thumbnails, millimetres a centimetre: below this, drawings are coarsened. */
const COARSE_BELOW = 0.16;

const IDENTITY: Matrix = [1, 0, 0, 1, 0, 0];
/** Tiles are stored in square blocks of blocks, so that a large cloth needs few operators. */
const BLOCK = 8;
const WHOLE_BLOCK = BLOCK * BLOCK;
/** Neighbouring tiles overlap by this share, or a viewer shows the paper between them. */
const OVERLAP = 0.01;
/** Of a stroke without a width, centimetres; as the SVG of a drawing has it. */
const DEFAULT_WIDTH = 0.1;

const isGroup = (mark: Mark | MarkGroup): mark is MarkGroup => 'marks' in mark;

interface Cloth {
  readonly tile: Tile;
  /** Mean colour, when the tile is too fine to be resolved. */
  readonly mean?: ReturnType<typeof meanCloth>;
  readonly blocks: Map<number, PDFRef>;
}

export const createDrawings = (pdf: PDFDocument, opacities: Opacities): Drawings => {
  const { context } = pdf;

  const writeForm = (box: Box, operators: string, resources: Resources, grouped: boolean): PDFRef =>
    context.register(
      context.flateStream(operators, {
        Type: 'XObject',
        Subtype: 'Form',
        BBox: [box.x, box.y, box.x + box.width, box.y + box.height].map((value) => Number(num(value))),
        Resources: writeResources(pdf, resources),
        ...(grouped ? { Group: { Type: 'Group', S: 'Transparency' } } : {}),
      }),
    );

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
        return [tile.name, { tile, blocks: blocksOf(tile), ...(period < finest ? { mean: meanCloth(tile) } : {}) }];
      }),
    );

    const block = (cloth: Cloth, side: number): PDFRef => {
      const known = cloth.blocks.get(side);
      if (known !== undefined) return known;
      const { width, height, marks } = cloth.tile;
      const box = { x: 0, y: 0, width: width * (side + OVERLAP), height: height * (side + OVERLAP) };
      const resources = createResources();
      let operators: string;
      if (side === 1) {
        operators = paintMarks(marks, resources, box);
      } else {
        const name = objectName(resources, block(cloth, side / BLOCK));
        const step = side / BLOCK;
        const rows: string[] = [];
        for (let j = 0; j < BLOCK; j++) {
          for (let i = 0; i < BLOCK; i++) {
            rows.push(`q 1 0 0 1 ${nums(i * step * width, j * step * height)} cm /${name} Do Q`);
          }
        }
        operators = rows.join('\n');
      }
      const ref = writeForm(box, operators, resources, false);
      cloth.blocks.set(side, ref);
      return ref;
    };

    const weave = (cloth: Cloth, path: string, clip: string, area: Box, resources: Resources): string => {
      const { tile, mean } = cloth;
      const ground = mean?.colour ?? tile.ground;
      const veil = mean === undefined || mean.opacity >= 1 ? '' : `/${opacities.use(resources, mean.opacity)} gs\n`;
      const base = ground === undefined ? '' : `${veil}${rgb(ground)} rg\n${path}\n${clip === 'W*' ? 'f*' : 'f'}\n`;
      if (mean !== undefined) return `q\n${base}Q\n`;
      const matrix = tile.transform ?? IDENTITY;
      const back = invert(matrix);
      const corners = [
        [area.x, area.y],
        [area.x + area.width, area.y],
        [area.x, area.y + area.height],
        [area.x + area.width, area.y + area.height],
      ].map(([x = 0, y = 0]) => apply(back, [x, y]));
      const columns = corners.map(([x]) => x / tile.width);
      const rows = corners.map(([, y]) => y / tile.height);
      const span = Math.max(Math.max(...columns) - Math.min(...columns), Math.max(...rows) - Math.min(...rows));
      const side = span > WHOLE_BLOCK ? WHOLE_BLOCK : span > BLOCK ? BLOCK : 1;
      const name = objectName(resources, block(cloth, side));
      const placed: string[] = [];
      for (let j = Math.floor(Math.min(...rows) / side); j * side < Math.max(...rows); j++) {
        for (let i = Math.floor(Math.min(...columns) / side); i * side < Math.max(...columns); i++) {
          placed.push(`q 1 0 0 1 ${nums(i * side * tile.width, j * side * tile.height)} cm /${name} Do Q`);
        }
      }
      return `${base}q\n${path}\n${clip} n\n${matrix.map((value) => num(value, 5)).join(' ')} cm\n${placed.join('\n')}\nQ\n`;
    };

    const fillWith = (paint: Paint, segments: readonly Segment[], mark: Mark, resources: Resources): string => {
      const path = pathOperators(segments, digits);
      if (typeof paint === 'string') return `${rgb(paint)} rg\n${path}\n${mark.evenOdd === true ? 'f*' : 'f'}\n`;
      const cloth = cloths.get(paint.tile);
      if (cloth === undefined) throw new Error(`the drawing has no tile called "${paint.tile}"`);
      return weave(cloth, path, mark.evenOdd === true ? 'W*' : 'W', pathBox(segments), resources);
    };

    const paintMark = (mark: Mark, resources: Resources, box: Box): string => {
      const { opacity = 1 } = mark;
      if (opacity < 1 && typeof mark.fill === 'object') {
        const { opacity: _, ...opaque } = mark;
        return paintGroup({ marks: [opaque], opacity }, resources, box);
      }
      const segments = readPath(mark.path);
      const state = opacity >= 1 ? '' : `/${opacities.use(resources, opacity)} gs\n`;
      const filled = mark.fill === undefined ? '' : fillWith(mark.fill, segments, mark, resources);
      const dash = mark.dash === undefined ? '' : `[${nums(...mark.dash)}] 0 d\n`;
      const round = mark.round === true ? '1 J 1 j\n' : '';
      const stroked =
        mark.stroke === undefined
          ? ''
          : `${rgb(mark.stroke)} RG ${num(mark.width ?? DEFAULT_WIDTH)} w\n${dash}${round}${pathOperators(segments, digits)}\nS\n`;
      return `q\n${state}${filled}${stroked}Q`;
    };

    const paintGroup = (group: MarkGroup, resources: Resources, box: Box): string => {
      const move =
        group.transform === undefined ? '' : `${group.transform.map((value) => num(value, 5)).join(' ')} cm\n`;
      const clip = group.clip === undefined ? '' : `${pathOperators(readPath(group.clip), digits)}\nW n\n`;
      if (group.opacity === undefined || group.opacity >= 1) {
        return `q\n${move}${clip}${paintMarks(group.marks, resources, box)}\nQ`;
      }
      const inner = createResources();
      const reach = Math.max(box.width, box.height);
      const roomy = {
        x: box.x - reach,
        y: box.y - reach,
        width: box.width + 2 * reach,
        height: box.height + 2 * reach,
      };
      const form = writeForm(roomy, paintMarks(group.marks, inner, roomy), inner, true);
      return `q\n${move}${clip}/${opacities.use(resources, group.opacity)} gs /${objectName(resources, form)} Do\nQ`;
    };

    const paintMarks = (marks: readonly (Mark | MarkGroup)[], resources: Resources, box: Box): string =>
      marks
        .map((mark) => (isGroup(mark) ? paintGroup(mark, resources, box) : paintMark(mark, resources, box)))
        .join('\n');

    const resources = createResources();
    return writeForm(drawing.box, paintMarks(drawing.marks, resources, drawing.box), resources, false);
  };

  return {
    form: (drawing, scale) => {
      const fine = scale >= COARSE_BELOW;
      const ready = fine ? drawing : coarsen(drawing, FINEST_LINE / scale);
      return { ref: paintDrawing(ready, FINEST_CLOTH / scale, fine ? 2 : 1), box: drawing.box };
    },
  };
};
