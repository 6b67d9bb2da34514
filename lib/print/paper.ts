/** Millimetres. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

/** Millimetres from the top left corner of a page. */
export interface Area extends Size {
  readonly x: number;
  readonly y: number;
}

export type PaperName = 'A4' | 'Letter';
export type Orientation = 'portrait' | 'landscape';

/** PDF user space has 72 units an inch (ISO 32000-1, 8.3.2.3), an inch is 25.4 mm. */
export const POINTS_A_MILLIMETRE = 72 / 25.4;
export const MILLIMETRES_A_POINT = 25.4 / 72;

/** ISO 216 A sizes, and the American sizes of ANSI/ASME Y14.1 (Letter is 8.5 by 11 inches). */
export const PAPERS: Readonly<Record<PaperName, Size>> = {
  A4: { width: 210, height: 297 },
  Letter: { width: 215.9, height: 279.4 },
};

/** The page of a booklet whose sheets are folded once: A5 (ISO 216), and Letter cut in half. */
export const FOLDED: Readonly<Record<PaperName, Size>> = {
  A4: { width: 148, height: 210 },
  Letter: { width: 139.7, height: 215.9 },
};

export const turn = (size: Size, orientation: Orientation): Size =>
  orientation === 'landscape' ? { width: size.height, height: size.width } : size;

/** The area left when an edge is taken away on each side. */
export const inset = (area: Area, edge: { top?: number; right?: number; bottom?: number; left?: number }): Area => {
  const { top = 0, right = 0, bottom = 0, left = 0 } = edge;
  return {
    x: area.x + left,
    y: area.y + top,
    width: area.width - left - right,
    height: area.height - top - bottom,
  };
};
