import type { Guide, GuideLook } from '../../guide/index.ts';
import { DRESS_CODES } from '../../vocabulary/index.ts';
import type { PictureIndex } from '../pictures.ts';
import { CLOTH_TAPE_LABEL_X, CLOTH_TAPE_WIDTH, type ClothTape, clothTape } from '../svg/cloth-tape.ts';
import { type DegreeTape, degreeTape } from '../svg/tape.ts';
import type { SiteVoice } from '../voice.ts';
import { type Frame, frameOf, tryHref } from './frame.ts';
import { type ImageView, imageOf, lookImage, namedPieces } from './pictures.ts';

export interface LookTile {
  readonly number: number;
  readonly title: string;
  readonly href: string;
  readonly image: ImageView | undefined;
  readonly degrees: string;
  readonly dress: string;
  /** Names to stand beside the picture, where its colours alone do not tell the pieces apart for everyone. */
  readonly named: string;
}

/** A look as a tile of a gallery; addresses are below the guide's root. */
export const tileOf = (
  guide: Guide,
  look: GuideLook,
  pictures: PictureIndex,
  voice: SiteVoice,
  atMost = 480,
): LookTile => ({
  number: look.number,
  title: voice.say(look.title),
  href: `looks/${look.slug}/`,
  image: lookImage(guide, look, pictures, voice, atMost),
  degrees: voice.formats.celsiusRange(look.outdoors.lowC, look.outdoors.highC),
  dress: voice.word('dress from to', {
    low: DRESS_CODES[look.dress.low] ?? '',
    high: DRESS_CODES[look.dress.high] ?? '',
  }),
  named: namedPieces(guide, look, voice),
});

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
  readonly words: Readonly<Record<'label' | 'shown' | 'empty' | 'all', string>>;
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
    },
  };
};

export interface LookView {
  readonly frame: Frame;
  readonly number: number;
  readonly kick: string;
  readonly title: string;
  readonly image: ImageView | undefined;
  /** A tape beside the picture, true to its scale, in the picture's own pixels. */
  readonly ruler:
    | (ClothTape & { readonly height: number; readonly labelX: number; readonly width: number })
    | undefined;
  readonly card: { readonly href: string; readonly text: string } | undefined;
  /** The page on which this look can be changed. */
  readonly change: { readonly href: string; readonly text: string };
  readonly wearIt: readonly string[];
  readonly words: Readonly<
    Record<'wearIt' | 'comfort' | 'comfortMeans' | 'layers' | 'trip' | 'pieces' | 'near' | 'swaps' | 'note', string>
  >;
  readonly tape: DegreeTape;
  readonly layers: readonly { readonly what: string; readonly degrees: string }[];
  readonly onTrip: readonly { readonly when: string; readonly what: string }[];
  readonly pieces: readonly {
    readonly name: string;
    readonly fabric: string;
    readonly cloth: string | undefined;
    readonly href: string;
  }[];
  readonly near: readonly (LookTile & { readonly swap: string })[];
  /** Exchanges that make a look of no page: each leads to where it can be tried. */
  readonly swaps: readonly { readonly text: string; readonly href: string; readonly cloth: string | undefined }[];
  readonly note: string;
}

const TAPE: readonly [number, number] = [-5, 35];
const NEAR_SHOWN = 4;

const layersOf = (look: GuideLook, nameOf: (id: string) => string, voice: SiteVoice): LookView['layers'] =>
  look.outdoors.steps.map(({ layers, lowC, highC }) => ({
    what: layers.length === 0 ? voice.word('no layers') : voice.word('with layers', { layers: layers.map(nameOf) }),
    degrees: voice.word('degrees', { low: lowC, high: highC }),
  }));

const rulerOf = ({ studio }: Guide, { slug }: GuideLook, pictures: PictureIndex): LookView['ruler'] => {
  const scale = pictures.scales?.[slug];
  const height = pictures.looks[slug]?.clear[0]?.height;
  return scale === undefined || height === undefined
    ? undefined
    : {
        ...clothTape(studio.length, scale, 0, height),
        height,
        labelX: CLOTH_TAPE_LABEL_X,
        width: CLOTH_TAPE_WIDTH,
      };
};

export const lookView = (guide: Guide, look: GuideLook, pictures: PictureIndex, voice: SiteVoice): LookView => {
  const { word, say, formats } = voice;
  const byId = new Map(guide.pieces.map((piece) => [piece.id, piece]));
  const nameOf = (id: string): string => byId.get(id)?.name ?? id;
  const title = say(look.title);
  const occasions = guide.brief.occasions.filter(({ id }) => look.occasions.includes(id));
  const [first] = occasions;
  const card = pictures.cards[look.slug];
  const { lowC, highC } = look.outdoors;
  const notes = look.look.worn.flatMap(({ piece }) => {
    const found = byId.get(piece);
    return found === undefined || found.note === '' ? [] : [`**${found.name}.** ${found.note}`];
  });
  return {
    frame: frameOf({
      guide,
      voice,
      page: 'looks',
      path: `looks/${look.slug}/`,
      title: `${word('look number', { number: look.number })}: ${title}`,
      description: look.wearIt.map(say).join(' '),
      ...(card === undefined
        ? {}
        : { preview: { ...card.landscape, alt: word('look number', { number: look.number }) } }),
    }),
    number: look.number,
    kick:
      first === undefined
        ? word('look of any day')
        : word('look for', { date: first.on, time: first.at === undefined ? '' : formats.time(first.at) }),
    title,
    image: lookImage(guide, look, pictures, voice),
    ruler: rulerOf(guide, look, pictures),
    card: card === undefined ? undefined : { href: card.portrait.address, text: word('card to keep') },
    change: { href: tryHref(look.look.worn.map(({ piece }) => piece)), text: word('try this') },
    wearIt: look.wearIt.map(say),
    words: {
      wearIt: word('wear it when'),
      comfort: word('comfortable between', { low: lowC, high: highC }),
      comfortMeans: word('comfort means'),
      layers: word('layers heading'),
      trip: word('on this trip'),
      pieces: word('pieces heading'),
      near: word('one piece away'),
      swaps: word('one piece swaps'),
      note: word('note heading'),
    },
    tape: degreeTape(TAPE, [lowC, highC], (celsius) =>
      formats.number(Math.round(guide.studio.temperature === 'F' ? (celsius * 9) / 5 + 32 : celsius), 0),
    ),
    layers: layersOf(look, nameOf, voice),
    onTrip: occasions.map(({ what, on }) => ({ when: formats.date(on), what })),
    pieces: look.look.worn.map(({ piece }) => ({
      name: nameOf(piece),
      fabric: byId.get(piece)?.fabricText ?? '',
      cloth: pictures.cloth[piece]?.address,
      href: `pieces/${piece}/`,
    })),
    near: look.neighbours.slice(0, NEAR_SHOWN).flatMap((neighbour) => {
      const other = guide.looks[neighbour.number - 1];
      return other === undefined
        ? []
        : [
            {
              ...tileOf(guide, other, pictures, voice, 240),
              swap: word('swap', { out: nameOf(neighbour.out), in: nameOf(neighbour.in) }),
            },
          ];
    }),
    swaps: look.swaps
      .filter((swap) => !look.neighbours.some((near) => near.out === swap.out && near.in === swap.in))
      .map((swap) => ({
        text: word('swap', { out: nameOf(swap.out), in: nameOf(swap.in) }),
        href: tryHref(swap.pieces),
        cloth: pictures.cloth[swap.in]?.address,
      })),
    note: voice.markdown([look.note, ...notes].filter((text) => text !== '').join('\n\n')),
  };
};

/** Leaves every width out but the narrowest. */
const NARROWEST = 0;

/** The image of one piece: small where it stands among others, with every width where it is looked at alone. */
export const pieceImage = (
  id: string,
  pictures: PictureIndex,
  alt = '',
  alone = false,
): (ImageView & { readonly widthCm: number }) | undefined => {
  const set = pictures.pieces[id];
  const image = set === undefined ? undefined : imageOf(set, alt, alone ? undefined : NARROWEST);
  return set === undefined || image === undefined ? undefined : { ...image, widthCm: set.widthCm };
};
