/** The scripts Wayfold can set, in the order a character is looked for. */
export const SCRIPTS = ['latin', 'latin-ext', 'vietnamese', 'greek', 'greek-ext', 'cyrillic', 'cyrillic-ext'] as const;
export type Script = (typeof SCRIPTS)[number];

const SERIF_SCRIPTS: readonly Script[] = ['latin', 'latin-ext', 'vietnamese'];

/** How text looks. `serif` styles fall back to the sans for the scripts the serif does not have. */
export const STYLES = {
  title: { serif: true, weight: 300, italic: false },
  'title italic': { serif: true, weight: 300, italic: true },
  serif: { serif: true, weight: 400, italic: false },
  'serif italic': { serif: true, weight: 400, italic: true },
  text: { serif: false, weight: 400, italic: false },
  'text italic': { serif: false, weight: 400, italic: true },
  'text medium': { serif: false, weight: 500, italic: false },
  'text semibold': { serif: false, weight: 600, italic: false },
} as const satisfies Record<string, { serif: boolean; weight: number; italic: boolean }>;
export type FontStyle = keyof typeof STYLES;

/** One font file: a family, one script, one weight, upright or italic. */
export interface Face {
  /** Unique for every script of a family, because satori falls back only between different names. */
  readonly name: string;
  readonly serif: boolean;
  readonly script: Script;
  readonly weight: 300 | 400 | 500 | 600;
  readonly italic: boolean;
  /** Module path of the WOFF file. */
  readonly file: string;
}

const face = (serif: boolean, script: Script, weight: Face['weight'], italic: boolean): Face => {
  const family = serif ? 'fraunces' : 'noto-sans';
  return {
    name: `${serif ? 'Fraunces' : 'Noto Sans'} ${script}`,
    serif,
    script,
    weight,
    italic,
    file: `@fontsource/${family}/files/${family}-${script}-${weight}-${italic ? 'italic' : 'normal'}.woff`,
  };
};

const listFaces = ({ serif, weight, italic }: (typeof STYLES)[FontStyle]): readonly Face[] => {
  const sans = SCRIPTS.map((script) => face(false, script, weight, italic));
  return serif ? [...SERIF_SCRIPTS.map((script) => face(true, script, weight, italic)), ...sans] : sans;
};

/** The faces of each style in the order in which a character is looked for in them. */
export const FACES = Object.fromEntries(
  Object.entries(STYLES).map(([style, look]) => [style, listFaces(look)]),
) as unknown as Readonly<Record<FontStyle, readonly Face[]>>;
