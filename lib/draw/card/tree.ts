import { type FontStyle, type Fonts, plainText, STYLES } from '../../type/index.ts';

/** A node as satori reads it. */
export interface Node {
  readonly type: string;
  readonly key: string | null;
  readonly props: {
    readonly style: Readonly<Record<string, string | number>>;
    readonly children?: string | readonly Node[];
  };
}

type Style = Readonly<Record<string, string | number>>;

/** A box without text; a named one is found again after the layout. */
export const box = (style: Style, children: readonly (Node | undefined)[] = [], key: string | null = null): Node => ({
  type: 'div',
  key,
  props: {
    style: { display: 'flex', boxSizing: 'border-box', ...style },
    children: children.filter((child) => child !== undefined),
  },
});

/** Collects the texts of a card, so that the right fonts are loaded for all of them. */
export interface TextSetter {
  readonly texts: { readonly text: string; readonly style: FontStyle }[];
  /** A block of text that wraps, breaking even a word that is longer than the line; undefined for none. Throws `UncoveredTextError`. */
  set(text: string, style: FontStyle, css: Style): Node | undefined;
}

/** `shrink` makes every text that much smaller, for cards with more words than usual. */
export const createTextSetter = (fonts: Fonts, shrink = 1): TextSetter => {
  const texts: { text: string; style: FontStyle }[] = [];
  return {
    texts,
    set: (raw, style, css) => {
      const text = plainText(raw).trim();
      if (text === '') return undefined;
      texts.push({ text, style });
      const { weight, italic } = STYLES[style];
      return {
        type: 'div',
        key: null,
        props: {
          style: {
            display: 'block',
            fontFamily: fonts.stack(text, style),
            fontWeight: weight,
            fontStyle: italic ? 'italic' : 'normal',
            wordBreak: 'break-word',
            ...css,
            ...(typeof css.fontSize === 'number' ? { fontSize: css.fontSize * shrink } : {}),
          },
          children: text,
        },
      };
    },
  };
};
