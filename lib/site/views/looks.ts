import type { Guide } from '../../guide/index.ts';
import { DRESS_CODES } from '../../vocabulary/index.ts';
import type { PictureIndex } from '../pictures.ts';
import type { SiteVoice } from '../voice.ts';
import { type Frame, frameOf } from './frame.ts';
import { namedNote, namedPieces } from './pictures.ts';
import { type LookTile, tileOf } from './tile.ts';

export interface Choice {
  readonly value: string;
  readonly text: string;
}

export interface LooksView {
  readonly frame: Frame;
  readonly kick: string;
  readonly heading: string;
  readonly tiles: readonly (LookTile & {
    readonly pieces: string;
    readonly occasions: string;
    readonly low: number;
    readonly high: number;
    readonly codes: string;
  })[];
  readonly filters: readonly { readonly name: string; readonly label: string; readonly choices: readonly Choice[] }[];
  /** The looks of the same traveller's other moods. */
  readonly moods: readonly { readonly text: string; readonly href: string }[];
  readonly words: Readonly<Record<'label' | 'shown' | 'empty' | 'all' | 'named', string>>;
}

/** Air temperatures to choose from, °C: a frost, and about every six degrees to a hot day. */
const DAYS_OF = [-2, 4, 10, 16, 22, 28] as const;

const filtersOf = (guide: Guide, { word, formats }: SiteVoice): LooksView['filters'] => {
  const worn = new Set(guide.looks.flatMap(({ look }) => look.worn.map(({ piece }) => piece)));
  const codes = new Set(guide.looks.flatMap(({ dress }) => [dress.low, dress.high]));
  const used = new Set(guide.looks.flatMap(({ occasions }) => occasions));
  const warm = DAYS_OF.filter((celsius) =>
    guide.looks.some(({ outdoors }) => outdoors.lowC <= celsius && celsius <= outdoors.highC),
  );
  return [
    {
      name: 'piece',
      label: word('filter piece'),
      choices: [
        { value: '', text: word('any piece') },
        ...guide.pieces.filter(({ id }) => worn.has(id)).map(({ id, name }) => ({ value: id, text: name })),
      ],
    },
    {
      name: 'occasion',
      label: word('filter occasion'),
      choices: [
        { value: '', text: word('any occasion') },
        ...guide.brief.occasions.filter(({ id }) => used.has(id)).map(({ id, what }) => ({ value: id, text: what })),
      ],
    },
    {
      name: 'warmth',
      label: word('filter warmth'),
      choices: [
        { value: '', text: word('any warmth') },
        ...warm.map((celsius) => ({ value: String(celsius), text: formats.celsius(celsius) })),
      ],
    },
    {
      name: 'dress',
      label: word('filter dress'),
      choices: [
        { value: '', text: word('any dress') },
        ...DRESS_CODES.flatMap((code, index) =>
          index >= Math.min(...codes) && index <= Math.max(...codes)
            ? [{ value: String(index), text: word('dress from to', { low: code, high: code }) }]
            : [],
        ),
      ],
    },
  ];
};

export const looksView = (
  guide: Guide,
  family: readonly Guide[],
  pictures: PictureIndex,
  voice: SiteVoice,
): LooksView => {
  const heading = voice.word('all looks', { count: guide.looks.length });
  return {
    frame: frameOf({ guide, voice, page: 'looks', path: 'looks/', title: heading, description: guide.capsule.title }),
    kick: guide.capsule.title,
    heading,
    tiles: guide.looks.map((look) => ({
      ...tileOf(guide, look, pictures, voice),
      pieces: look.look.worn.map(({ piece }) => piece).join(' '),
      occasions: look.occasions.join(' '),
      low: look.outdoors.lowC,
      high: look.outdoors.highC,
      codes: DRESS_CODES.flatMap((_, index) =>
        index >= look.dress.low && index <= look.dress.high ? [index] : [],
      ).join(' '),
    })),
    filters: filtersOf(guide, voice),
    moods: family
      .filter(({ id, capsule }) => id !== guide.id && capsule.traveller === guide.capsule.traveller)
      .map(({ capsule }) => ({
        text: voice.word('same in mood', { mood: capsule.title }),
        href: `../${capsule.id}/looks/`,
      })),
    words: {
      label: voice.word('filters label'),
      shown: voice.word('looks shown'),
      empty: voice.word('none shown'),
      all: voice.word('show all'),
      named: namedNote(
        guide.looks.map((look) => namedPieces(guide, look, voice)),
        voice,
      ),
    },
  };
};
