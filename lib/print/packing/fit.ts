import type { PackGroup, PackSection } from './lines.ts';

/** How closely a list is set; millimetres and points. */
export interface Density {
  readonly row: number;
  /** Head of a bag. */
  readonly head: number;
  /** Head of a body place. */
  readonly kind: number;
  /** Between bags. */
  readonly gap: number;
  readonly points: number;
  readonly tick: number;
}

/** Roomiest row and the least one that still holds a line of 7 points and a box to tick. */
const ROOMIEST = 9;
const CLOSEST = 3.8;
const STEP = 0.1;
/** Below this, body places may be cut by a column's end. */
const WHOLE_GROUPS_DOWN_TO = 6.6;

const between = (value: number, low: number, high: number): number => Math.min(high, Math.max(low, value));

export const densityOf = (row: number): Density => ({
  row,
  head: between(row + 1.6, 6, 8.4),
  kind: between(row * 0.84, 4.1, 7.2),
  gap: between(row * 0.55, 1.5, 5),
  points: row >= 7.2 ? 8.8 : row >= 6.4 ? 8.2 : row >= 5.4 ? 7.6 : 7,
  tick: between(row - 1.5, 2.5, 5.8),
});

/** Every density from roomy to close; the first that fits is taken. */
export const DENSITIES: readonly { readonly density: Density; readonly whole: boolean }[] = [
  ...Array.from({ length: Math.round((ROOMIEST - WHOLE_GROUPS_DOWN_TO) / STEP) + 1 }, (_, step) => ({
    density: densityOf(Math.round((ROOMIEST - step * STEP) * 10) / 10),
    whole: true,
  })),
  ...Array.from({ length: Math.round((7.6 - CLOSEST) / STEP) + 1 }, (_, step) => ({
    density: densityOf(Math.round((7.6 - step * STEP) * 10) / 10),
    whole: false,
  })),
];

/** A stretch of one section in one column. */
export interface Portion {
  readonly section: PackSection;
  readonly groups: readonly PackGroup[];
  /** True when the section began in an earlier column. */
  readonly continued: boolean;
  /** True when the section ends here. */
  readonly last: boolean;
}

export interface Heights {
  line(line: PackGroup['lines'][number], density: Density): number;
  /** What follows the last line of a section: the scale of the liquids. */
  tail(section: PackSection): number;
}

const LEAST_LINES = 2;

/**
 * Fills columns of one height in order; undefined when there are too few. A body place stays whole, or is cut with at
 * least two lines on either side.
 */
export const fillColumns = (
  sections: readonly PackSection[],
  { density, whole }: { density: Density; whole: boolean },
  room: readonly number[],
  heights: Heights,
): readonly (readonly Portion[])[] | undefined => {
  const columns: Portion[][] = [[]];
  let used = 0;
  const limit = (): number => room[columns.length - 1] ?? 0;
  const addGroup = (section: PackSection, group: PackGroup, fresh: boolean, last: boolean): void => {
    const column = columns.at(-1);
    const portion = column?.at(-1);
    if (column === undefined) return;
    if (portion?.section === section && !fresh) {
      column[column.length - 1] = { ...portion, groups: [...portion.groups, group], last };
    } else {
      const begun = columns.some((other) => other.some((earlier) => earlier.section === section));
      column.push({ section, groups: [group], continued: begun, last });
    }
  };
  for (const section of sections) {
    for (const [index, group] of section.groups.entries()) {
      const last = index === section.groups.length - 1;
      let rest = group.lines;
      while (rest.length > 0) {
        const column = columns.at(-1) ?? [];
        const open = column.at(-1)?.section === section;
        const above = (open ? 0 : density.head + (column.length > 0 ? density.gap : 0)) + density.kind;
        const tail = last ? heights.tail(section) : 0;
        const lineHeights = rest.map((line) => heights.line(line, density));
        const all = lineHeights.reduce((sum, height) => sum + height, 0);
        if (used + above + all + tail <= limit() + 1e-6) {
          addGroup(section, { ...group, lines: rest }, !open, last);
          used += above + all + tail;
          break;
        }
        let fitting = 0;
        let height = used + above;
        while (fitting < rest.length && height + (lineHeights[fitting] ?? 0) <= limit()) {
          height += lineHeights[fitting] ?? 0;
          fitting++;
        }
        const kept = Math.min(fitting, rest.length - LEAST_LINES);
        if (!whole && kept >= LEAST_LINES) {
          addGroup(section, { ...group, lines: rest.slice(0, kept) }, !open, false);
          rest = rest.slice(kept);
        } else if (column.length === 0) {
          if (whole || fitting === 0) return undefined;
          addGroup(section, { ...group, lines: rest.slice(0, fitting) }, !open, false);
          rest = rest.slice(fitting);
        }
        if (columns.length >= room.length) return undefined;
        columns.push([]);
        used = 0;
      }
    }
  }
  return columns;
};

const LEVELS = 32;

/** Sections that go on in another column: a reader would rather not look twice for one bag. */
const broken = (columns: readonly (readonly Portion[])[]): number =>
  columns.flat().filter(({ continued }) => continued).length;

/** The lowest even height of the columns that breaks the fewest sections, so that they end about level. */
export const levelColumns = (
  sections: readonly PackSection[],
  how: { density: Density; whole: boolean },
  columns: number,
  room: number,
  heights: Heights,
): readonly (readonly Portion[])[] | undefined => {
  const fill = (height: number) =>
    fillColumns(
      sections,
      how,
      Array.from({ length: columns }, () => height),
      heights,
    );
  let best = fill(room);
  if (best === undefined) return undefined;
  for (let level = 1; level <= LEVELS; level++) {
    const tried = fill(room * (1 - level / (LEVELS + 8)));
    if (tried === undefined) break;
    if (broken(tried) <= broken(best)) best = tried;
  }
  return best;
};
