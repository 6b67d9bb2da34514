import { type Area, inset } from '../paper.ts';
import type { Surface } from '../pdf/surface.ts';
import type { Role, Tag, TagProperties } from '../pdf/tags.ts';

/** Something that can be set at a width, then painted where it falls. All lengths in millimetres. */
export interface Block {
  height(width: number): number;
  paint(surface: Surface, area: Area): void;
  /** The part that fits in the room, and the rest; undefined when it cannot be broken there. */
  split?(width: number, room: number): readonly [Block, Block] | undefined;
}

export type Align = 'left' | 'centre' | 'right';
export type Stand = 'top' | 'middle' | 'bottom';

export const shiftOf = (align: Align, room: number): number =>
  align === 'left' ? 0 : align === 'right' ? room : room / 2;

const standOf = (stand: Stand, room: number): number => (stand === 'top' ? 0 : stand === 'bottom' ? room : room / 2);

export const space = (height: number): Block => ({ height: () => height, paint: () => undefined });

/** Anything drawn by hand in a known height. */
export const drawn = (height: number, paint: (surface: Surface, area: Area) => void): Block => ({
  height: () => height,
  paint,
});

export const padded = (block: Block, edge: { top?: number; right?: number; bottom?: number; left?: number }): Block => {
  const { top = 0, right = 0, bottom = 0, left = 0 } = edge;
  return {
    height: (width) => block.height(width - left - right) + top + bottom,
    paint: (surface, area) => block.paint(surface, inset(area, edge)),
  };
};

/** A block in a band of at least this height. */
export const banded = (block: Block, least: number, stand: Stand = 'middle'): Block => ({
  height: (width) => Math.max(least, block.height(width)),
  paint: (surface, area) => {
    const height = block.height(area.width);
    block.paint(surface, { ...area, y: area.y + standOf(stand, area.height - height), height });
  },
});

/** One element that several blocks are painted into, on one page or on many. */
export interface SharedTag {
  tag?: Tag;
}

/** Painted inside an element of the structure; the halves of a broken block stay in one. */
export const tagged = (role: Role, block: Block, properties: TagProperties = {}, shared: SharedTag = {}): Block => ({
  height: block.height,
  paint: (surface, area) => {
    shared.tag ??= surface.openTag(role, properties);
    surface.inTag(shared.tag, () => block.paint(surface, area));
  },
  split: (width, room) => {
    const halves = block.split?.(width, room);
    if (halves === undefined) return undefined;
    return [tagged(role, halves[0], properties, shared), tagged(role, halves[1], properties, shared)];
  },
});

/** Painted without being read. */
export const unread = (block: Block): Block => ({
  height: block.height,
  paint: (surface, area) => surface.artifact(() => block.paint(surface, area)),
});

/** One block above another. Breaks between them, or inside one that can be broken. */
export const stack = (blocks: readonly Block[], gap = 0): Block => {
  const heights = (width: number): readonly number[] => blocks.map((block) => block.height(width));
  return {
    height: (width) => heights(width).reduce((sum, height) => sum + height, 0) + gap * Math.max(0, blocks.length - 1),
    paint: (surface, area) => {
      let y = area.y;
      heights(area.width).forEach((height, index) => {
        blocks[index]?.paint(surface, { ...area, y, height });
        y += height + gap;
      });
    },
    split: (width, room) => {
      let used = 0;
      for (const [index, height] of heights(width).entries()) {
        const before = blocks.slice(0, index);
        if (used + height > room + 1e-6) {
          const halves = blocks[index]?.split?.(width, room - used);
          if (halves !== undefined)
            return [stack([...before, halves[0]], gap), stack([halves[1], ...blocks.slice(index + 1)], gap)];
          return index === 0 ? undefined : [stack(before, gap), stack(blocks.slice(index), gap)];
        }
        used += height + gap;
      }
      return undefined;
    },
  };
};

/** A cell of a row: a fixed width, or a share of what the fixed ones leave. */
export interface Cell {
  readonly width: number | { readonly share: number };
  readonly block: Block;
  readonly stand?: Stand;
}

const widthsOf = (cells: readonly Cell[], gap: number, width: number): readonly number[] => {
  const fixed = cells.reduce((sum, cell) => sum + (typeof cell.width === 'number' ? cell.width : 0), 0);
  const shares = cells.reduce((sum, cell) => sum + (typeof cell.width === 'number' ? 0 : cell.width.share), 0);
  const free = width - fixed - gap * Math.max(0, cells.length - 1);
  return cells.map((cell) => (typeof cell.width === 'number' ? cell.width : (free * cell.width.share) / shares));
};

/** Blocks side by side, at least so high. */
export const row = (cells: readonly Cell[], { gap = 0, least = 0 }: { gap?: number; least?: number } = {}): Block => ({
  height: (width) => {
    const widths = widthsOf(cells, gap, width);
    return Math.max(least, ...cells.map((cell, index) => cell.block.height(widths[index] ?? 0)));
  },
  paint: (surface, area) => {
    let x = area.x;
    widthsOf(cells, gap, area.width).forEach((width, index) => {
      const cell = cells[index];
      if (cell === undefined) return;
      const height = cell.block.height(width);
      const y = area.y + standOf(cell.stand ?? 'top', area.height - height);
      cell.block.paint(surface, { x, y, width, height });
      x += width + gap;
    });
  },
});

/** Blocks in a grid of equal columns, each row as high as its highest block. */
export const grid = (blocks: readonly Block[], columns: number, gap: { across: number; down: number }): Block => {
  const rows: Block[] = [];
  for (let at = 0; at < blocks.length; at += columns) {
    const some = blocks.slice(at, at + columns);
    const cells = Array.from(
      { length: columns },
      (_, k): Cell => ({ width: { share: 1 }, block: some[k] ?? space(0) }),
    );
    rows.push(row(cells, { gap: gap.across }));
  }
  return stack(rows, gap.down);
};
