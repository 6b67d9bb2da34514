import type { PDFRef } from 'pdf-lib';
import type { Matrix } from '../../draw/drawing.ts';
import type { Area, Size } from '../paper.ts';
import { MILLIMETRES_A_POINT, POINTS_A_MILLIMETRE } from '../paper.ts';
import type { DrawnForm } from './drawings.ts';
import { matrixNums, num, nums, rgb } from './numbers.ts';
import { objectName } from './resources.ts';
import type { Sheet } from './sheet.ts';
import type { Role, Tag, TagProperties, TagTree } from './tags.ts';
import type { SetGlyph, Typeface } from './typefaces.ts';

/** How a line or an outline is drawn; widths in points, dashes in millimetres. */
interface Stroke {
  readonly colour: string;
  readonly width: number;
  readonly dash?: readonly number[];
  readonly round?: boolean;
}

/** Glyphs of one typeface, ready to be shown. */
export interface SetRun {
  readonly typeface: Typeface;
  readonly glyphs: readonly SetGlyph[];
  readonly points: number;
  readonly colour: string;
  /** Extra space after each glyph, millimetres. */
  readonly tracking: number;
  /** Millimetres. */
  readonly width: number;
}

/**
 * A page as a document sees it: millimetres from its own top left corner, y downwards. Several pages may lie on one
 * sheet. Text belongs to the open element; lines and shapes are artifacts unless a figure is open.
 */
export interface Surface {
  readonly size: Size;
  readonly sheet: Sheet;
  /** Where the page lies on its sheet, millimetres. */
  readonly origin: { readonly x: number; readonly y: number };
  /** Runs one after another from x on the baseline y, turned by degrees clockwise. */
  text(runs: readonly SetRun[], x: number, y: number, turned?: number): void;
  line(x1: number, y1: number, x2: number, y2: number, stroke: Stroke): void;
  /** A path in millimetres of PDF operators. */
  shape(operators: string, paint: { readonly fill?: string; readonly stroke?: Stroke }): void;
  rectangle(area: Area, paint: { readonly fill?: string; readonly stroke?: Stroke }): void;
  circle(x: number, y: number, radius: number, paint: { readonly fill?: string; readonly stroke?: Stroke }): void;
  /** A drawing with its box's top left corner at (x, y), millimetres a centimetre of the drawing. */
  drawing(form: DrawnForm, x: number, y: number, scale: number): void;
  /** A drawing moved and turned: from its centimetres to millimetres of the page. */
  laid(form: DrawnForm, matrix: Matrix): void;
  picture(image: PDFRef, area: Area): void;
  /** Paints inside a new element of the structure. */
  tag<T>(role: Role, properties: TagProperties, paint: () => T): T;
  /** Opens an element that is painted into later, perhaps from several pages. */
  openTag(role: Role, properties: TagProperties): Tag;
  inTag<T>(tag: Tag, paint: () => T): T;
  /** Paints something that is not read: folios, running heads, ornaments. */
  artifact(paint: () => void): void;
}

/** Control-point distance of a quarter circle of radius 1. */
const QUARTER = 0.5523;

/** Dashes and round ends are undone after each stroke; colour and width are said with each. */
const wrapped = (operators: string, stroke: Stroke | undefined): string =>
  stroke?.dash === undefined && stroke?.round !== true ? operators : `q ${operators} Q`;

const strokeOperators = ({ colour, width, dash, round }: Stroke): string =>
  [
    `${rgb(colour)} RG`,
    `${num(width * MILLIMETRES_A_POINT)} w`,
    ...(dash === undefined ? [] : [`[${nums(...dash)}] 0 d`]),
    ...(round === true ? ['1 J 1 j'] : []),
  ].join(' ');

const hex4 = (value: number): string => value.toString(16).padStart(4, '0');

/** One run as a TJ array: kerning as adjustments, against the direction of writing (ISO 32000-1, 9.4.3). */
const showRun = ({ glyphs, tracking, points }: SetRun): string => {
  const parts: string[] = [];
  let shown = '';
  let raised = 0;
  const flush = (): void => {
    if (shown !== '') parts.push(`<${shown}>`);
    shown = '';
  };
  const lines: string[] = [];
  const end = (): void => {
    flush();
    if (parts.length > 0) lines.push(`[${parts.join(' ')}] TJ`);
    parts.length = 0;
  };
  for (const { id, kern, dx, dy } of glyphs) {
    if (dy !== raised) {
      end();
      lines.push(`${num((dy * points) / 1000)} Ts`);
      raised = dy;
    }
    if (Math.abs(dx) > 0.5) {
      flush();
      parts.push(num(-dx, 1));
    }
    shown += hex4(id);
    if (Math.abs(kern - dx) > 0.5) {
      flush();
      parts.push(num(dx - kern, 1));
    }
  }
  end();
  if (raised !== 0) lines.push('0 Ts');
  return `${tracking === 0 ? '' : `${num(tracking * POINTS_A_MILLIMETRE)} Tc\n`}${lines.join('\n')}${tracking === 0 ? '' : '\n0 Tc'}`;
};

export const createSurface = (
  sheet: Sheet,
  tags: TagTree,
  size: Size,
  origin: { readonly x: number; readonly y: number } = { x: 0, y: 0 },
): Surface => {
  let hidden = 0;
  const reader = () => {
    const tag = tags.current();
    return hidden > 0 ? ('artifact' as const) : tag;
  };
  const drawer = () => {
    if (hidden > 0) return 'artifact' as const;
    for (let tag = tags.current(); tag.parent !== undefined; tag = tag.parent) if (tag.role === 'Figure') return tag;
    return 'artifact' as const;
  };
  const draw = (operators: string): void => sheet.emitAt(drawer(), origin.x, origin.y, operators);
  const shape: Surface['shape'] = (operators, { fill, stroke }) => {
    const how = fill !== undefined && stroke !== undefined ? 'B' : fill !== undefined ? 'f' : 'S';
    const paint = [fill === undefined ? '' : `${rgb(fill)} rg`, stroke === undefined ? '' : strokeOperators(stroke)];
    draw(wrapped(`${paint.filter((part) => part !== '').join(' ')}\n${operators} ${how}`, stroke));
  };
  return {
    size,
    sheet,
    origin,
    shape,
    text: (runs, x, y, turned = 0) => {
      const left = (origin.x + x) * POINTS_A_MILLIMETRE;
      const base = (sheet.size.height - origin.y - y) * POINTS_A_MILLIMETRE;
      const angle = (-turned * Math.PI) / 180;
      const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
      let along = 0;
      const shown = runs.map((run) => {
        sheet.resources.fonts.set(run.typeface.name, run.typeface.ref);
        const at = along * POINTS_A_MILLIMETRE;
        along += run.width;
        return [
          `${rgb(run.colour)} rg /${run.typeface.name} ${num(run.points)} Tf`,
          `${matrixNums(cos, sin, -sin, cos)} ${nums(left + at * cos, base + at * sin)} Tm`,
          showRun(run),
        ].join('\n');
      });
      if (shown.length > 0) sheet.emit(reader(), `BT\n${shown.join('\n')}\nET`);
    },
    line: (x1, y1, x2, y2, stroke) => shape(`${nums(x1, y1)} m ${nums(x2, y2)} l`, { stroke }),
    rectangle: ({ x, y, width, height }, paint) => shape(`${nums(x, y, width, height)} re`, paint),
    circle: (x, y, r, paint) => {
      const q = r * QUARTER;
      shape(
        [
          `${nums(x + r, y)} m`,
          `${nums(x + r, y + q, x + q, y + r, x, y + r)} c`,
          `${nums(x - q, y + r, x - r, y + q, x - r, y)} c`,
          `${nums(x - r, y - q, x - q, y - r, x, y - r)} c`,
          `${nums(x + q, y - r, x + r, y - q, x + r, y)} c h`,
        ].join(' '),
        paint,
      );
    },
    drawing: ({ ref, box }, x, y, scale) => {
      const name = objectName(sheet.resources, ref);
      draw(`q ${matrixNums(scale, 0, 0, scale)} ${nums(x - box.x * scale, y - box.y * scale)} cm /${name} Do Q`);
    },
    laid: ({ ref }, matrix) => {
      const name = objectName(sheet.resources, ref);
      draw(`q ${matrixNums(...matrix)} cm /${name} Do Q`);
    },
    picture: (image, { x, y, width, height }) => {
      const name = objectName(sheet.resources, image);
      draw(`q ${nums(width, 0, 0, -height, x, y + height)} cm /${name} Do Q`);
    },
    tag: (role, properties, paint) => tags.within(role, properties, paint),
    openTag: (role, properties) => tags.open(role, properties),
    inTag: (tag, paint) => tags.resume(tag, paint),
    artifact: (paint) => {
      hidden++;
      try {
        paint();
      } finally {
        hidden--;
      }
    },
  };
};
