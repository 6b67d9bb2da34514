import type { Mark, MarkGroup, Tile } from '../../draw/drawing.ts';
import { pathRings, readPath, ringArea, ringLength } from './path.ts';

type Channels = readonly [number, number, number];

const channels = (hex: string): Channels =>
  [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16)) as unknown as Channels;

/** A colour and how much of it covers what is under it. */
interface Cover {
  readonly channels: Channels;
  readonly opacity: number;
}

/** One cover over another (Porter and Duff 1984, "over"). */
const over = (under: Cover, colour: Channels, share: number): Cover => {
  const opacity = share + under.opacity * (1 - share);
  if (opacity === 0) return under;
  const part = share / opacity;
  const mixed = colour.map((value, at) => value * part + (under.channels[at] ?? 0) * (1 - part));
  return { channels: mixed as unknown as Channels, opacity };
};

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

/** What a tile looks like when it is too fine to be resolved: its ground, covered by its marks in the shares they cover. */
export const meanCloth = (tile: Tile): { readonly colour: string; readonly opacity: number } => {
  const area = tile.width * tile.height;
  let mean: Cover =
    tile.ground === undefined ? { channels: [0, 0, 0], opacity: 0 } : { channels: channels(tile.ground), opacity: 1 };
  for (const mark of flatten(tile.marks, 1)) {
    const rings = pathRings(readPath(mark.path));
    const filled = rings.reduce((sum, ring) => sum + ringArea(ring), 0);
    if (typeof mark.fill === 'string') {
      mean = over(mean, channels(mark.fill), Math.min(1, filled / area) * mark.opacity);
    }
    const drawn = rings.reduce((sum, ring) => sum + ringLength(ring), 0) * (mark.width ?? 0);
    if (mark.stroke !== undefined) mean = over(mean, channels(mark.stroke), Math.min(1, drawn / area) * mark.opacity);
  }
  const hex = mean.channels.map((value) => Math.round(value).toString(16).padStart(2, '0')).join('');
  return { colour: `#${hex}`, opacity: mean.opacity };
};
