import type { CardInput } from './input.ts';
import type { CardColours } from './palette.ts';
import { box, type Node, type TextSetter } from './tree.ts';

/** Breadth of an average letter against its size: Fraunces Light and Noto Sans, measured on English text. */
const LETTER = 0.5;

/** The largest size at which a text is expected to take no more lines than its size allows. */
const stepDown = (text: string, width: number, steps: readonly (readonly [size: number, lines: number])[]): number => {
  const length = [...text].length;
  const fits = steps.find(([size, lines]) => length * size * LETTER <= width * lines * 0.94);
  return (fits ?? steps.at(-1) ?? [16, 1])[0];
};

const TITLE_STEPS = [
  [50, 1],
  [44, 2],
  [36, 2],
  [32, 3],
  [26, 9],
] as const;
const NARROW_TITLE_STEPS = [
  [38, 2],
  [33, 3],
  [28, 3],
  [23, 5],
  [19, 12],
] as const;

const longest = (texts: readonly string[]): number => Math.max(0, ...texts.map((text) => [...text].length));

/** More pieces than this take two columns on a landscape card. */
const TWO_COLUMNS = 7;

/** Letters of a name that take more than two lines of a column. */
const LONG_NAME = 60;

/** Size of the names beside the swatches: 19 is as large as three columns of usual names bear. */
const nameSize = ({ format, pieces }: CardInput, letters: number): number => {
  const usual = format === 'portrait' ? 19 : pieces.length > TWO_COLUMNS ? 14 : 15.5;
  return letters <= 90 ? usual : letters <= 160 ? 13 : 11.5;
};
/** Size of a long name in a row of its own. */
const LONG_SIZE = { portrait: 16, landscape: 13 } as const;

/** A name and room for its swatch; the swatch itself is cut from the cloth after the layout. */
const legendLine = (input: CardInput, index: number, size: number, colours: CardColours, text: TextSetter): Node => {
  const name = input.pieces[index]?.name ?? '';
  const [width, height] = input.format === 'portrait' ? [32, 24] : [25, 18];
  return box({ alignItems: 'flex-start', marginBottom: size * 0.6, paddingRight: 12 }, [
    box({ width, height, marginTop: 1, marginRight: 12, flexShrink: 0 }, [], `swatch ${index}`),
    text.set(name, 'text', {
      fontSize: size,
      lineHeight: 1.3,
      color: colours.ink,
      flexGrow: 1,
      flexShrink: 1,
      flexBasis: 0,
    }),
  ]);
};

/** Names by their place among the pieces: those for the columns, and the few long ones, each for a row of its own. */
const parted = ({ pieces }: CardInput): { readonly short: readonly number[]; readonly long: readonly number[] } => {
  const all = pieces.map((_, index) => index);
  const isLong = (index: number): boolean => [...(pieces[index]?.name ?? '')].length > LONG_NAME;
  const long = all.filter(isLong);
  // where most are long, columns hold them as well as rows
  return long.length * 2 > all.length
    ? { short: all, long: [] }
    : { short: all.filter((index) => !isLong(index)), long };
};

const legend = (input: CardInput, columns: number, colours: CardColours, text: TextSetter): Node => {
  const { short, long } = parted(input);
  const size = nameSize(input, longest(short.map((index) => input.pieces[index]?.name ?? '')));
  const rows = Math.ceil(short.length / columns);
  const used = Math.ceil(short.length / Math.max(1, rows));
  const width = `${100 / columns}%`;
  return box(
    { flexShrink: 0, flexDirection: 'column' },
    [
      box(
        {},
        Array.from({ length: used }, (_, column) =>
          box(
            { flexDirection: 'column', width },
            short
              .slice(column * rows, (column + 1) * rows)
              .map((index) => legendLine(input, index, size, colours, text)),
          ),
        ),
      ),
      ...long.map((index) => legendLine(input, index, LONG_SIZE[input.format], colours, text)),
    ],
    'legend',
  );
};

const footer = (input: CardInput, colours: CardColours, text: TextSetter): Node =>
  box({ justifyContent: 'space-between', alignItems: 'baseline' }, [
    text.set(input.studio, 'serif italic', {
      fontSize: input.format === 'portrait' ? 17 : 13.5,
      lineHeight: 1.25,
      color: colours.soft,
      maxWidth: '66%',
    }),
    text.set(input.footer, 'text', {
      fontSize: input.format === 'portrait' ? 14.5 : 12.5,
      lineHeight: 1.25,
      letterSpacing: 0.6,
      color: colours.soft,
      maxWidth: '32%',
      textAlign: 'right',
    }),
  ]);

const note = (input: CardInput, colours: CardColours, text: TextSetter): Node | undefined =>
  text.set(input.note, 'text', {
    fontSize: input.format === 'portrait' ? 13.5 : 11.5,
    lineHeight: 1.3,
    color: colours.soft,
    marginBottom: input.format === 'portrait' ? 12 : 8,
  });

const number = (input: CardInput, size: number, colours: CardColours, text: TextSetter): Node | undefined =>
  text.set(input.number, 'title italic', {
    fontSize: size,
    lineHeight: 1.1,
    color: colours.accent,
    marginLeft: 36,
    flexShrink: 0,
  });

const eyebrow = (input: CardInput, size: number, colours: CardColours, text: TextSetter): Node | undefined =>
  text.set(input.eyebrow, 'text', {
    fontSize: size,
    lineHeight: 1.35,
    letterSpacing: size * 0.11,
    color: colours.soft,
  });

/** Breadth of a space in Fraunces Light Italic, measured. */
const SPACE = 0.2055;
/** A figure with another after a dash, 17–28: one word, though the rules of Unicode would let a line end in it. */
const RANGE = /\d[–-][\d−]/u;

/** A sentence; where it holds a range of figures, as words in a row that wraps, so that the range is not torn. */
const wear = (input: CardInput, size: number, colours: CardColours, text: TextSetter): Node | undefined => {
  const css = { fontSize: size, lineHeight: 1.35, color: colours.soft };
  if (!RANGE.test(input.wear)) return text.set(input.wear, 'title italic', { ...css, marginTop: 5 });
  return box(
    { flexWrap: 'wrap', marginTop: 5 },
    input.wear.split(' ').map((word) =>
      text.set(word, 'title italic', {
        ...css,
        marginRight: size * SPACE,
        maxWidth: '100%',
        ...(RANGE.test(word) ? { whiteSpace: 'nowrap' } : {}),
      }),
    ),
  );
};

/** The portrait card from top to bottom; `art` is what the texts leave. */
export const portraitTree = (input: CardInput, colours: CardColours, text: TextSetter): Node => {
  const size = stepDown(input.title, 830, TITLE_STEPS);
  const columns = input.pieces.length > 12 ? 4 : 3;
  return box(
    {
      flexDirection: 'column',
      width: 1080,
      height: 1350,
      paddingTop: 50,
      paddingLeft: 72,
      paddingRight: 72,
      paddingBottom: 24,
    },
    [
      eyebrow(input, 16, colours, text),
      box({ marginTop: 4, justifyContent: 'space-between', alignItems: 'flex-start' }, [
        text.set(input.title, 'title', {
          fontSize: size,
          lineHeight: 1.14,
          letterSpacing: size * -0.011,
          color: colours.ink,
          marginLeft: -2,
          flexGrow: 1,
          flexShrink: 1,
          flexBasis: 0,
        }),
        number(input, 50, colours, text),
      ]),
      wear(input, 22, colours, text),
      box({ height: 34, flexShrink: 0 }, [], 'stitch'),
      box({ flexGrow: 1, flexShrink: 1, flexBasis: 0, marginTop: 6, marginBottom: 8 }, [], 'art'),
      box({ height: 36, flexShrink: 0 }, [], 'rule'),
      legend(input, columns, colours, text),
      box({ height: 22, flexShrink: 0, marginTop: -4 }, [], 'notch'),
      box({ flexDirection: 'column', marginTop: 3 }, [note(input, colours, text), footer(input, colours, text)]),
    ],
  );
};

/** The landscape card: words on the left, clothes on the right. */
export const landscapeTree = (input: CardInput, colours: CardColours, text: TextSetter): Node => {
  const size = stepDown(input.title, 320, NARROW_TITLE_STEPS);
  const columns = input.pieces.length > TWO_COLUMNS ? 2 : 1;
  const column = box(
    { flexDirection: 'column', width: 410, paddingTop: 38, paddingBottom: 22, justifyContent: 'space-between' },
    [
      box({ flexDirection: 'column' }, [
        eyebrow(input, 12.5, colours, text),
        box({ marginTop: 4, justifyContent: 'space-between', alignItems: 'flex-start' }, [
          text.set(input.title, 'title', {
            fontSize: size,
            lineHeight: 1.16,
            letterSpacing: size * -0.01,
            color: colours.ink,
            marginLeft: -2,
            flexGrow: 1,
            flexShrink: 1,
            flexBasis: 0,
          }),
          number(input, 42, colours, text),
        ]),
        wear(input, 17, colours, text),
        box({ height: 34, flexShrink: 0 }, [], 'stitch'),
      ]),
      box({ flexDirection: 'column' }, [
        legend(input, columns, colours, text),
        box({ height: 22, flexShrink: 0, marginTop: 2 }, [], 'notch'),
        box({ flexDirection: 'column', marginTop: 3 }, [note(input, colours, text), footer(input, colours, text)]),
      ]),
    ],
  );
  return box({ width: 1200, height: 630, paddingLeft: 58 }, [
    column,
    box(
      { flexGrow: 1, flexShrink: 1, flexBasis: 0, marginTop: 30, marginBottom: 26, marginLeft: 30, marginRight: 26 },
      [],
      'art',
    ),
  ]);
};
