import { feelsInWords, SOCKS_CLO, UNDERTHINGS_CLO } from '../../comfort/index.ts';
import { dayOf, type Guide, type GuideLook, isForWater } from '../../guide/index.ts';
import { type Phrase, phrase } from '../../words/index.ts';
import type { PictureIndex } from '../pictures.ts';
import { CLOTH_TAPE_LABEL_X, CLOTH_TAPE_WIDTH, type ClothTape, clothTape } from '../svg/cloth-tape.ts';
import { type DegreeTape, degreeTape } from '../svg/tape.ts';
import type { SiteVoice } from '../voice.ts';
import { type Frame, frameOf, tryHref } from './frame.ts';
import { type ImageView, lookImage, namedNote } from './pictures.ts';
import { type LookTile, tileOf } from './tile.ts';

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
    Record<
      'wearIt' | 'comfort' | 'comfortMeans' | 'layers' | 'trip' | 'pieces' | 'near' | 'swaps' | 'note' | 'named',
      string
    >
  >;
  /** Undefined for swimwear, of which degrees say nothing. */
  readonly tape: DegreeTape | undefined;
  /** How the degrees are found, and the insulation behind them. */
  readonly found: { readonly heading: string; readonly sentences: readonly string[] };
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
  /** True where what is one piece away has room beside the note on a wide page. */
  readonly nearBeside: boolean;
}

const NEAR_SHOWN = 4;
/** Letters of a note from which its column is much longer than the one beside it. */
const LONG_NOTE = 420;

const layersOf = (look: GuideLook, nameOf: (id: string) => string, voice: SiteVoice): LookView['layers'] =>
  look.outdoors.steps.length < 2 || isForWater(look.look)
    ? []
    : look.outdoors.steps.map(({ layers, lowC, highC }) => ({
        what: layers.length === 0 ? voice.word('no layers') : voice.word('with layers', { layers: layers.map(nameOf) }),
        degrees: voice.word('degrees', { low: lowC, high: highC }),
      }));

/** What the tape of degrees says already. */
const isOnTape = ({ outdoors }: GuideLook, { key, values }: Phrase): boolean =>
  key === 'wear it outdoors' && values.activity === outdoors.activity;

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

/** The air expected out of doors where the look is planned for what its degrees are told of, °C. */
const expectedOf = ({ brief, plan }: Guide, look: GuideLook): readonly [low: number, high: number] | undefined => {
  const outside = new Set(
    brief.occasions
      .filter(({ id, setting }) => look.occasions.includes(id) && setting.where === 'outdoors')
      .filter(({ activity }) => activity === look.outdoors.activity)
      .map(({ id }) => id),
  );
  const airs = plan.days
    .flatMap(({ occasions }) => occasions)
    .flatMap(({ occasion, airC }) => (airC !== undefined && outside.has(occasion) ? [airC] : []));
  return airs.length === 0
    ? undefined
    : [Math.min(...airs.map(({ low }) => low)), Math.max(...airs.map(({ high }) => high))];
};

export const lookView = (guide: Guide, look: GuideLook, pictures: PictureIndex, voice: SiteVoice): LookView => {
  const { word, say, formats } = voice;
  const byId = new Map(guide.pieces.map((piece) => [piece.id, piece]));
  const nameOf = (id: string): string => byId.get(id)?.name ?? id;
  const title = say(look.title);
  const occasions = guide.brief.occasions.filter(({ id }) => look.occasions.includes(id));
  const planned = new Map(guide.plan.days.flatMap((day) => day.occasions.map((entry) => [entry.occasion, entry])));
  const [first] = occasions;
  const expected = expectedOf(guide, look);
  const card = pictures.cards[look.slug];
  const { lowC, highC, activity } = look.outdoors;
  const notes = look.look.worn.flatMap(({ piece }) => {
    const found = byId.get(piece);
    return found === undefined || found.note === '' ? [] : [`**${found.name}.** ${found.note}`];
  });
  const note = [look.note, ...notes].filter((text) => text !== '').join('\n\n');
  const near: LookView['near'] = look.neighbours.slice(0, NEAR_SHOWN).flatMap((neighbour) => {
    const other = guide.looks[neighbour.number - 1];
    return other === undefined
      ? []
      : [
          {
            ...tileOf(guide, other, pictures, voice, 240),
            swap: word('swap', { out: nameOf(neighbour.out), in: nameOf(neighbour.in) }),
          },
        ];
  });
  const swaps: LookView['swaps'] = look.swaps
    .filter((swap) => !look.neighbours.some((near) => near.out === swap.out && near.in === swap.in))
    .map((swap) => ({
      text: word('swap', { out: nameOf(swap.out), in: nameOf(swap.in) }),
      href: tryHref(swap.pieces),
      cloth: pictures.cloth[swap.in]?.address,
    }));
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
    wearIt: look.wearIt.filter((said) => !isOnTape(look, said)).map(say),
    words: {
      wearIt: word('wear it when'),
      comfort: word('comfortable between', { low: lowC, high: highC, activity }),
      comfortMeans: [
        word('comfort means'),
        ...(expected === undefined ? [] : [word('expected on the tape', { low: expected[0], high: expected[1] })]),
      ].join(' '),
      layers: word('layers heading'),
      trip: word('on this trip'),
      pieces: word('pieces heading'),
      near: word('one piece away'),
      swaps: word(occasions.length > 0 ? 'one piece swaps planned' : 'one piece swaps'),
      note: word('note heading'),
      named: namedNote(
        near.map(({ named }) => named),
        voice,
      ),
    },
    tape: isForWater(look.look)
      ? undefined
      : degreeTape([lowC, highC], expected, (celsius) =>
          formats.number(Math.round(guide.studio.temperature === 'F' ? (celsius * 9) / 5 + 32 : celsius), 0),
        ),
    found: {
      heading: word('about degrees'),
      sentences: [
        ...feelsInWords(guide.brief, guide.capsule.traveller),
        phrase('comfort', 'how degrees are found', {}),
        phrase('comfort', 'clo range', { ...look.outdoors.clo }),
        ...(isForWater(look.look)
          ? []
          : [phrase('comfort', 'counted as worn', { underthings: UNDERTHINGS_CLO, socks: SOCKS_CLO })]),
      ].map(say),
    },
    layers: layersOf(look, nameOf, voice),
    onTrip: occasions.map((occasion) => ({
      when: say(dayOf(occasion, planned.get(occasion.id))),
      what: occasion.what,
    })),
    pieces: look.look.worn.map(({ piece }) => ({
      name: nameOf(piece),
      fabric: byId.get(piece)?.fabricText ?? '',
      cloth: pictures.cloth[piece]?.address,
      href: `pieces/${piece}/`,
    })),
    near,
    swaps,
    note: voice.markdown(note),
    nearBeside: note.length > LONG_NOTE || near.length + swaps.length < 2,
  };
};
