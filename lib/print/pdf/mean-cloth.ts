import type { Mark, MarkGroup, Tile } from '../../draw/drawing.ts';
import { pathRings, readPath, ringArea, ringLength } from './path.ts';

type Channels = readonly [number, number, number];

const channels = (hex: string): Channels =>
  [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16)) as unknown as Channels;

const mix = (under: Channels, over: Channels, share: number): Channels => [
  under[0] + (over[0] - under[0]) * share,
  under[1] + (over[1] - under[1]) * share,
  under[2] + (over[2] - under[2]) * share,
];

const isGroup = (mark: Mark | MarkGroup): mark is MarkGroup => 'marks' in mark;

const flatten = (
  marks: readonly (Mark | MarkGroup)[],
  opacity: number,
): readonly (Mark & { readonly opacity: number })[] =>
  marks.flatMap((mark) =>
    isGroup(mark)
      ? flatten(mark.marks, opacity * (mark.opacity ?? 1))
      : [{ ...mark, opacity: opacity * (mark.opacity ?? 1) }],
  );

/** The colour a tile has when it is too fine to be resolved: its ground, covered by its marks in the shares they cover. */
export const meanCloth = (tile: Tile): string => {
  const area = tile.width * tile.height;
  let mean = channels(tile.ground ?? '#ffffff');
  for (const mark of flatten(tile.marks, 1)) {
    const rings = pathRings(readPath(mark.path));
    const filled = rings.reduce((sum, ring) => sum + ringArea(ring), 0);
    if (typeof mark.fill === 'string') mean = mix(mean, channels(mark.fill), Math.min(1, filled / area) * mark.opacity);
    const drawn = rings.reduce((sum, ring) => sum + ringLength(ring), 0) * (mark.width ?? 0);
    if (mark.stroke !== undefined) mean = mix(mean, channels(mark.stroke), Math.min(1, drawn / area) * mark.opacity);
  }
  return `#${mean.map((value) => Math.round(value).toString(16).padStart(2, '0')).join('')}`;
};
