import { MILLIMETRES_A_POINT } from '../paper.ts';
import type { Surface } from '../pdf/surface.ts';
import { type Align, type Block, shiftOf } from './block.ts';
import type { Line, Setter, Span, Type } from './setter.ts';

/** Part of the type size above the baseline that a line of text takes: the ascenders. */
const ASCENT = 0.74;
/** And below it. */
const DESCENT = 0.24;

interface Setting {
  readonly align?: Align;
  /** Lines of about equal length instead of full ones and a short last. */
  readonly balance?: boolean;
}

const lineHeight = (lines: readonly Line[], leading: number, points: number): number =>
  lines.length === 0 ? 0 : (lines.length - 1) * leading + points * MILLIMETRES_A_POINT * (ASCENT + DESCENT);

const linesBlock = (lines: readonly Line[], leading: number, points: number, align: Align): Block => ({
  height: () => lineHeight(lines, leading, points),
  paint: (surface: Surface, area) => {
    const first = area.y + points * MILLIMETRES_A_POINT * ASCENT;
    lines.forEach((line, index) => {
      surface.text(line.runs, area.x + shiftOf(align, area.width - line.width), first + index * leading);
    });
  },
  split: (_width, room) => {
    const fitting = Math.floor((room - lineHeight(lines.slice(0, 1), leading, points)) / leading) + 1;
    const kept = Math.min(fitting, lines.length - 2);
    if (kept < 2) return undefined;
    return [
      linesBlock(lines.slice(0, kept), leading, points, align),
      linesBlock(lines.slice(kept), leading, points, align),
    ];
  },
});

/** Text that wraps. Its height runs from the ascenders of the first line to the descenders of the last. */
export const spans = (
  setter: Setter,
  parts: readonly Span[],
  { align = 'left', balance = false }: Setting = {},
): Block => {
  const points = Math.max(...parts.map(({ type }) => type.points));
  const leading = Math.max(...parts.map(({ type }) => type.leading));
  const made = new Map<number, Block>();
  const at = (width: number): Block => {
    const block = made.get(width) ?? linesBlock(setter.wrap(parts, width + 0.01, balance), leading, points, align);
    made.set(width, block);
    return block;
  };
  return {
    height: (width) => at(width).height(width),
    paint: (surface, area) => at(area.width).paint(surface, area),
    split: (width, room) => at(width).split?.(width, room),
  };
};

export const text = (setter: Setter, content: string, type: Type, setting: Setting = {}): Block =>
  spans(setter, [{ text: content, type }], setting);

/** Width of a text on one line, millimetres. */
export const widthOf = (setter: Setter, content: string, type: Type): number =>
  setter.line([{ text: content, type }]).width;
