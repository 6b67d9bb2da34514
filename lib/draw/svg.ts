import type { Drawing, Mark, MarkGroup, Matrix, Paint, Tile } from './drawing.ts';
import { compactPath, shortNumber } from './svg-path.ts';

const isGroup = (mark: Mark | MarkGroup): mark is MarkGroup => 'marks' in mark;
const isOnlyClip = ({ clip, transform, opacity }: MarkGroup): boolean =>
  clip !== undefined && transform === undefined && opacity === undefined;
const matrixText = ([a, b, c, d, e, f]: Matrix): string =>
  a === 1 && b === 0 && c === 0 && d === 1
    ? `translate(${shortNumber(e)} ${shortNumber(f)})`
    : `matrix(${[a, b, c, d].map((v) => String(Math.round(v * 1e5) / 1e5)).join(' ')} ${shortNumber(e)} ${shortNumber(f)})`;

/** Neighbours that are clipped to the same path become one group: every clip costs a layer of its own. */
const joined = (marks: readonly (Mark | MarkGroup)[]): readonly (Mark | MarkGroup)[] => {
  const result: (Mark | MarkGroup)[] = [];
  for (const mark of marks) {
    if (isGroup(mark) && mark.marks.length === 0) continue;
    const last = result.at(-1);
    if (last !== undefined && isGroup(last) && isGroup(mark) && isOnlyClip(last) && isOnlyClip(mark)) {
      if (last.clip === mark.clip) {
        result[result.length - 1] = { ...last, marks: [...last.marks, ...mark.marks] };
        continue;
      }
    }
    result.push(mark);
  }
  return result;
};

/** Writes marks; a path that is used twice is defined once, and so is a tile that only differs in its turn. */
class Writer {
  private readonly prefix: string;
  private readonly uses = new Map<string, number>();
  private readonly shared = new Map<string, string>();
  private readonly clips = new Map<string, string>();
  private readonly tileIds = new Map<string, string>();
  private definitions = '';
  private ids = 0;

  private readonly pathText: (path: string) => string;

  constructor(prefix: string, short: boolean) {
    this.prefix = prefix;
    this.pathText = short ? compactPath : (path) => path;
  }

  private id(): string {
    return this.prefix + (this.ids++).toString(36);
  }

  count(marks: readonly (Mark | MarkGroup)[]): void {
    for (const mark of marks) {
      const path = isGroup(mark) ? mark.clip : mark.path;
      if (path !== undefined) this.uses.set(path, (this.uses.get(path) ?? 0) + 1);
      if (isGroup(mark)) this.count(mark.marks);
    }
  }

  /** The element that draws a path: itself, or a use of the one defined before. */
  private element(path: string, attributes: string): string {
    if ((this.uses.get(path) ?? 0) < 2 || path.length < 60) return `<path d="${this.pathText(path)}"${attributes}/>`;
    let id = this.shared.get(path);
    if (id === undefined) {
      id = this.id();
      this.shared.set(path, id);
      this.definitions += `<path id="${id}" d="${this.pathText(path)}"/>`;
    }
    return `<use href="#${id}"${attributes}/>`;
  }

  private paint(paint: Paint): string {
    return typeof paint === 'string' ? paint : `url(#${this.tileIds.get(paint.tile) ?? ''})`;
  }

  private mark(mark: Mark, transform?: Matrix): string {
    let attributes = transform ? ` transform="${matrixText(transform)}"` : '';
    if (mark.fill === undefined) attributes += ' fill="none"';
    else attributes += ` fill="${this.paint(mark.fill)}"`;
    if (mark.evenOdd) attributes += ' fill-rule="evenodd"';
    if (mark.stroke !== undefined) {
      attributes += ` stroke="${mark.stroke}" stroke-width="${shortNumber(mark.width ?? 0.1)}"`;
      if (mark.round) attributes += ' stroke-linecap="round" stroke-linejoin="round"';
      if (mark.dash) attributes += ` stroke-dasharray="${mark.dash.map(shortNumber).join(' ')}"`;
    }
    if (mark.opacity !== undefined && mark.opacity < 1) {
      const opacity = shortNumber(mark.opacity);
      if (mark.fill !== undefined) attributes += ` fill-opacity="${opacity}"`;
      if (mark.stroke !== undefined) attributes += ` stroke-opacity="${opacity}"`;
    }
    return this.element(mark.path, attributes);
  }

  private clip(path: string): string {
    let id = this.clips.get(path);
    if (id === undefined) {
      id = this.id();
      this.clips.set(path, id);
      const clip = `<clipPath id="${id}">${this.element(path, '')}</clipPath>`;
      this.definitions += clip;
    }
    return id;
  }

  marks(marks: readonly (Mark | MarkGroup)[]): string {
    return joined(marks)
      .map((mark) => (isGroup(mark) ? this.group(mark) : this.mark(mark)))
      .join('');
  }

  private group({ marks, clip, transform, opacity }: MarkGroup): string {
    if (marks.length === 0) return '';
    const only = marks[0];
    if (marks.length === 1 && only && !isGroup(only) && clip === undefined && opacity === undefined)
      return this.mark(only, transform);
    const inner = this.marks(marks);
    if (clip === undefined && transform === undefined && opacity === undefined) return inner;
    const attributes =
      (transform ? ` transform="${matrixText(transform)}"` : '') +
      (clip === undefined ? '' : ` clip-path="url(#${this.clip(clip)})"`) +
      (opacity === undefined ? '' : ` opacity="${shortNumber(opacity)}"`);
    return `<g${attributes}>${inner}</g>`;
  }

  tiles(tiles: readonly Tile[]): void {
    const bodies = new Map<Tile['marks'], string>();
    for (const tile of tiles) this.tileIds.set(tile.name, this.id());
    for (const tile of tiles) {
      const id = this.tileIds.get(tile.name) ?? '';
      const transform = tile.transform ? ` patternTransform="${matrixText(tile.transform)}"` : '';
      const same = tile.ground === undefined ? bodies.get(tile.marks) : undefined;
      if (same !== undefined) {
        this.definitions += `<pattern id="${id}" href="#${same}"${transform}/>`;
        continue;
      }
      if (tile.ground === undefined) bodies.set(tile.marks, id);
      const [width, height] = [shortNumber(tile.width), shortNumber(tile.height)];
      const ground =
        tile.ground === undefined ? '' : `<path d="M0 0h${width}v${height}h-${width}z" fill="${tile.ground}"/>`;
      const body = ground + this.marks(tile.marks);
      this.definitions += `<pattern id="${id}" patternUnits="userSpaceOnUse" width="${width}" height="${height}"${transform}>${body}</pattern>`;
    }
  }

  defs(): string {
    return this.definitions === '' ? '' : `<defs>${this.definitions}</defs>`;
  }
}

/**
 * The drawing as SVG elements in centimetres, without the outer `svg`, to be put into a group that scales and places
 * it. Every id starts with `prefix`, which must be unique on the page or card and a valid start of an XML name.
 * `short` takes time to find the shortest paths, for a file that is kept.
 */
export const drawingMarkup = (drawing: Drawing, prefix: string, short = true): string => {
  const writer = new Writer(prefix, short);
  writer.count(drawing.marks);
  for (const tile of drawing.tiles) writer.count(tile.marks);
  writer.tiles(drawing.tiles);
  const marks = writer.marks(drawing.marks);
  return writer.defs() + marks;
};

/** The drawing as a whole SVG document, its box filling the picture; `width` in pixels. */
export const drawingSvg = (
  drawing: Drawing,
  options: { readonly prefix: string; readonly width?: number; readonly title?: string },
): string => {
  const { x, y, width, height } = drawing.box;
  const size =
    options.width === undefined
      ? ''
      : ` width="${options.width}" height="${shortNumber((options.width * height) / (width || 1))}"`;
  const title = options.title === undefined ? '' : `<title>${escapeText(options.title)}</title>`;
  const view = [x, y, width, height].map(shortNumber).join(' ');
  return `<svg xmlns="http://www.w3.org/2000/svg"${size} viewBox="${view}">${title}${drawingMarkup(drawing, options.prefix)}</svg>`;
};

const escapeText = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
