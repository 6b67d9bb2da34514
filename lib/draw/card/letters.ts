import { FACES, type Face, type Fonts } from '../../type/index.ts';
import { compactPath, shortNumber } from '../svg-path.ts';

/** A word as satori laid it: where its baseline begins, pixels. */
export interface LaidWord {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly size: number;
  /** Pixels added after every letter. */
  readonly spacing: number;
  readonly colour: string;
  readonly faces: readonly Face[];
  /** `matrix(…)` or empty. */
  readonly transform: string;
}

const EVERY_FACE = [
  ...new Map(
    Object.values(FACES)
      .flat()
      .map((face) => [face.file, face]),
  ).values(),
];

const ENTITIES: Readonly<Record<string, string>> = {
  '&amp;': '&',
  '&lt;': '<',
  '&gt;': '>',
  '&quot;': '"',
  '&#x27;': "'",
  '&#39;': "'",
};
const unescaped = (text: string): string => text.replaceAll(/&[#\w]+;/g, (entity) => ENTITIES[entity] ?? entity);

const facesFor = (families: string, weight: string, style: string): readonly Face[] =>
  families
    .split(',')
    .flatMap((family) =>
      EVERY_FACE.filter(
        ({ name, weight: own, italic }) =>
          name.toLowerCase() === family.trim() && String(own) === weight && italic === (style === 'italic'),
      ),
    );

/** The words of an SVG that satori wrote with its text kept as text. Spaces are left out. */
export const wordsOf = (svg: string): readonly LaidWord[] =>
  [...svg.matchAll(/<text ([^>]*)>([^<]*)<\/text>/g)].flatMap(([, attributes = '', content = '']) => {
    const given = new Map(
      [...attributes.matchAll(/([\w-]+)="([^"]*)"/g)].map(([, name, value]) => [name, value ?? '']),
    );
    const text = unescaped(content);
    if (text.trim() === '') return [];
    const number = (name: string): number => Number(given.get(name) ?? 0);
    return [
      {
        text,
        x: number('x'),
        y: number('y'),
        width: number('width'),
        size: number('font-size'),
        spacing: number('letter-spacing'),
        colour: given.get('fill') ?? '',
        faces: facesFor(given.get('font-family') ?? '', given.get('font-weight') ?? '', given.get('font-style') ?? ''),
        transform: given.get('transform') ?? '',
      },
    ];
  });

/**
 * Words as outlines: every letter is defined once and used wherever it stands, a third of the size of whole paths.
 * `short` takes time to find the shortest outlines, for a file that is kept.
 */
export const wordsMarkup = (words: readonly LaidWord[], fonts: Fonts, prefix: string, short = true): string => {
  const ids = new Map<string, string>();
  let definitions = '';
  const drawn = words.map(({ text, x, y, size, spacing, colour, faces, transform }) => {
    const em = size / 1000;
    const uses = fonts.letters(text, faces, spacing / em).letters.map(({ face, glyph, outline, at }) => {
      if (outline === '') return '';
      const key = `${face.file} ${glyph}`;
      let id = ids.get(key);
      if (id === undefined) {
        id = prefix + ids.size.toString(36);
        ids.set(key, id);
        definitions += `<path id="${id}" d="${short ? compactPath(outline) : outline}"/>`;
      }
      return `<use href="#${id}"${at === 0 ? '' : ` x="${Math.round(at)}"`}/>`;
    });
    const place = `translate(${shortNumber(x)} ${shortNumber(y)})scale(${Number(em.toFixed(5))})`;
    return `<g transform="${transform}${place}" fill="${colour}">${uses.join('')}</g>`;
  });
  return `<defs>${definitions}</defs>${drawn.join('')}`;
};
