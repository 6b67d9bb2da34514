import type { FontStyle } from '../type/index.ts';
import type { Inks } from './ink.ts';
import type { Type } from './set/setter.ts';

/** The types of a sheet, by their task. */
export interface Types {
  readonly title: Type;
  readonly section: Type;
  readonly panel: Type;
  readonly kind: Type;
  readonly fact: Type;
  readonly factStrong: Type;
  readonly text: Type;
  readonly prose: Type;
  readonly key: Type;
  readonly keyStrong: Type;
}

const MILLIMETRES_OF_LEADING = 0.46;

export const typesFor = (inks: Inks): Types => {
  const type = (style: FontStyle, points: number, colour: string, leading = points * MILLIMETRES_OF_LEADING): Type => ({
    style,
    points,
    colour,
    leading,
  });
  return {
    title: type('title', 27, inks.ink, 11),
    section: type('serif', 14, inks.ink),
    panel: type('serif', 11, inks.ink),
    kind: type('serif italic', 8.6, inks.soft),
    fact: type('text', 8.8, inks.ink, 3.7),
    factStrong: type('text medium', 8.8, inks.ink, 3.7),
    text: type('text', 8, inks.ink, 3.6),
    prose: type('title', 10.5, inks.ink, 5),
    key: type('text', 7, inks.soft, 3.1),
    keyStrong: type('text medium', 7, inks.ink, 3.1),
  };
};

/** The same type at another size, its leading in proportion; never under the legible least. */
export const resized = (type: Type, points: number): Type => ({
  ...type,
  points,
  leading: (type.leading * points) / type.points,
});

export const inked = (type: Type, colour: string): Type => ({ ...type, colour });
