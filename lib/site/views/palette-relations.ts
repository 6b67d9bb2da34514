import type { PaletteRelation, PaletteReport } from '../../colour/index.ts';
import type { Guide } from '../../guide/index.ts';
import { phrase } from '../../words/index.ts';
import type { PictureIndex } from '../pictures.ts';
import type { SiteVoice } from '../voice.ts';
import { pieceHref } from './pieces.ts';

/** Two swatches, what they are to each other, and why. */
export interface RelationView {
  readonly one: string;
  readonly two: string;
  readonly names: string;
  readonly relation: string;
  readonly reason: string;
  /** How far apart they are, in words. */
  readonly apart: string;
}

export interface RelationsView {
  /** Colours that need no reasons: swatches and one sentence. */
  readonly plain: readonly { readonly hexes: readonly string[]; readonly relation: string; readonly text: string }[];
  readonly telling: readonly RelationView[];
  readonly all: readonly RelationView[];
  readonly words: Readonly<Record<'heading' | 'means' | 'all' | 'two' | 'relation' | 'why' | 'apart', string>>;
}

/** Pairs that have something to say are drawn, the others stand in the table. */
const MOST_TELLING = 12;

const isTelling = ({ relation: { relation } }: PaletteRelation): boolean =>
  relation !== 'neutral' && relation !== 'metal';

/** The relations of a palette: what does not go first, then the pairs of which most is seen. */
export const relationsOf = ({ colours, relations }: PaletteReport, voice: SiteVoice): RelationsView => {
  const { say, word, formats } = voice;
  const told = (
    key: 'relations heading' | 'relations means' | 'every two' | 'two colours' | 'relation' | 'why' | 'apart',
  ) => say(phrase('palette', key, {}));
  const view = ({ one, two, relation, said }: PaletteRelation): RelationView => ({
    one: one.hex,
    two: two.hex,
    names: formats.list([one, two].map(({ name }) => word('colour name', { colour: name }))),
    relation: say(phrase('colour', 'relation name', { relation: relation.relation })),
    reason: say(relation.reason),
    apart: say(said),
  });
  const neutrals = colours.filter(({ neutral, metal }) => neutral && !metal).map(({ colour }) => colour);
  const metals = colours.filter(({ metal }) => metal).map(({ colour }) => colour);
  const telling = relations.filter(isTelling);
  return {
    plain: [['neutrals go', 'neutral', neutrals] as const, ['metals go', 'metal', metals] as const].flatMap(
      ([key, relation, of]) =>
        of.length === 0
          ? []
          : [
              {
                hexes: of.map(({ hex }) => hex),
                relation: say(phrase('colour', 'relation name', { relation })),
                text: say(phrase('palette', key, { colours: of.map(({ name }) => name) })),
              },
            ],
    ),
    telling: [...telling.filter(({ relation }) => !relation.goes), ...telling.filter(({ relation }) => relation.goes)]
      .slice(0, MOST_TELLING)
      .map(view),
    all: relations.map(view),
    words: {
      heading: told('relations heading'),
      means: told('relations means'),
      all: told('every two'),
      two: told('two colours'),
      relation: told('relation'),
      why: told('why'),
      apart: told('apart'),
    },
  };
};

interface Cloth {
  readonly name: string;
  readonly href: string;
  readonly cloth: string | undefined;
}

/** Tops by bottoms, by colour alone. */
export interface PairGrid {
  readonly bottoms: readonly Cloth[];
  readonly rows: readonly {
    readonly top: Cloth;
    readonly cells: readonly {
      /** Absent where a piece meets itself. */
      readonly goes: boolean | undefined;
      readonly relation: string;
      readonly reason: string;
      readonly bottom: string | undefined;
    }[];
  }[];
  readonly said: string;
  readonly words: Readonly<Record<'heading' | 'means' | 'full' | 'tops' | 'bottoms' | 'goes' | 'not', string>>;
}

export const pairGridOf = (guide: Guide, pictures: PictureIndex, { say }: SiteVoice): PairGrid => {
  const { pairs, summary } = guide.palette;
  const told = (
    key: 'pairs heading' | 'pairs means' | 'pairs in full' | 'tops' | 'bottoms' | 'goes' | 'does not go',
  ): string => say(phrase('palette', key, {}));
  const cloth = (id: string): Cloth => ({
    name: guide.pieces.find((piece) => piece.id === id)?.name ?? id,
    href: pieceHref(id),
    cloth: pictures.cloth[id]?.address,
  });
  const bottoms = [...new Set(pairs.map(({ bottom }) => bottom))];
  const tops = [...new Set(pairs.map(({ top }) => top))];
  const share = summary.find(({ key }) => key === 'palette pairs');
  return {
    bottoms: bottoms.map(cloth),
    rows: tops.map((top) => ({
      top: cloth(top),
      cells: bottoms.map((bottom) => {
        const relation = pairs.find((pair) => pair.top === top && pair.bottom === bottom)?.relation;
        return {
          goes: relation?.goes,
          relation:
            relation === undefined ? '' : say(phrase('colour', 'relation name', { relation: relation.relation })),
          reason: relation === undefined ? '' : say(relation.reason),
          bottom: pictures.cloth[bottom]?.address,
        };
      }),
    })),
    said: share === undefined ? '' : say(share),
    words: {
      heading: told('pairs heading'),
      means: told('pairs means'),
      full: told('pairs in full'),
      tops: told('tops'),
      bottoms: told('bottoms'),
      goes: told('goes'),
      not: told('does not go'),
    },
  };
};
