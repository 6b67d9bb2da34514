import { type SideBySide, type Together, tellBag, tellMove } from '../../capsule/index.ts';
import type { Guide } from '../../guide/index.ts';
import { phrase } from '../../words/index.ts';
import type { PictureIndex } from '../pictures.ts';
import type { SiteVoice } from '../voice.ts';
import { type Frame, frameOf } from './frame.ts';
import { prefixOf } from './moods.ts';
import { type ImageView, lookImage, namedNote, namedPieces } from './pictures.ts';

/** One traveller's look in a picture of two. */
export interface BesideLook {
  readonly traveller: string;
  readonly number: number;
  readonly href: string;
  readonly image: ImageView | undefined;
  readonly named: string;
  /** Prefix of the picture's addresses, below the guide's root. */
  readonly root: string;
}

export interface TogetherView {
  readonly frame: Frame;
  readonly kick: string;
  readonly heading: string;
  readonly lede: string;
  /** What names beside a picture are for; empty where there are none. */
  readonly named: string;
  readonly days: readonly {
    readonly heading: string;
    readonly occasions: readonly {
      readonly time: string;
      readonly what: string;
      readonly looks: readonly BesideLook[];
      readonly goes: boolean;
      readonly verdict: string;
      readonly reasons: readonly string[];
    }[];
  }[];
  readonly lend: { readonly heading: string; readonly rows: readonly string[]; readonly empty: string };
  readonly bags: { readonly heading: string; readonly rows: readonly string[]; readonly notes: readonly string[] };
}

type Member = { readonly guide: Guide; readonly pictures: PictureIndex };

const WIDEST = 240;

const memberOf = (family: readonly Member[], traveller: string): Member | undefined =>
  family.find(({ guide }) => guide.capsule.traveller === traveller);

const besideLook = (
  guide: Guide,
  family: readonly Member[],
  traveller: string,
  occasion: string,
  voice: SiteVoice,
): readonly BesideLook[] => {
  const member = memberOf(family, traveller);
  const look = member?.guide.looks.find(({ occasions }) => occasions.includes(occasion));
  if (member === undefined || look === undefined) return [];
  const root = prefixOf(guide, member.guide);
  return [
    {
      traveller,
      number: look.number,
      href: `${root}looks/${look.slug}/`,
      image: lookImage(member.guide, look, member.pictures, voice, WIDEST),
      named: namedPieces(member.guide, look, voice),
      root,
    },
  ];
};

const occasionView = (guide: Guide, family: readonly Member[], day: SideBySide, voice: SiteVoice) => {
  const { say, word, formats } = voice;
  const occasion = guide.brief.occasions.find(({ id }) => id === day.occasion);
  const nameOf = (traveller: string, id: string): string =>
    memberOf(family, traveller)?.guide.pieces.find((piece) => piece.id === id)?.name ?? id;
  const { instead } = day;
  return {
    time:
      occasion === undefined
        ? ''
        : occasion.at === undefined
          ? word(`part ${occasion.part}`)
          : formats.time(occasion.at),
    what: occasion?.what ?? '',
    looks: day.travellers.flatMap((traveller) => besideLook(guide, family, traveller, day.occasion, voice)),
    goes: day.goes,
    verdict: say(day.goes ? phrase('compare', 'sits well said', {}) : phrase('compare', 'sits badly said', {})),
    reasons: [
      ...day.reasons.map(say),
      ...(instead === undefined
        ? []
        : [
            say(
              phrase('compare', 'instead', {
                traveller: instead.traveller,
                pieces: instead.look.worn.map(({ piece }) => nameOf(instead.traveller, piece)),
              }),
            ),
          ]),
    ],
  };
};

const bagsOf = ({ bags }: Together, family: readonly Member[], { say }: SiteVoice): TogetherView['bags'] => {
  const nameOf = (id: string): string =>
    family.flatMap(({ guide }) => guide.pieces).find((piece) => piece.id === id)?.name ?? id;
  const over = bags.bags.some(({ gramsLeft = 0 }) => gramsLeft < 0);
  return {
    heading: say(phrase('compare', 'bags heading', {})),
    rows: bags.bags.map((bag) => say(tellBag(bag))),
    notes: [
      bags.fits ? phrase('compare', 'bags fit', {}) : phrase('compare', 'bags over', {}),
      ...(bags.gramsAtMost === undefined
        ? []
        : [
            phrase('compare', 'bags weigh', {
              grams: bags.grams.value,
              most: bags.gramsAtMost,
              left: bags.gramsAtMost - bags.grams.value,
            }),
          ]),
      ...bags.moves.map((move) => tellMove(move, nameOf(move.piece))),
      ...(over && bags.moves.length === 0 ? [phrase('compare', 'no moves', {})] : []),
      phrase('compare', 'estimates in weights', {}),
      phrase('compare', 'ask about sharing', {}),
    ].map(say),
  };
};

/** Two or more travellers side by side; undefined where one travels alone. `family` holds one guide a traveller. */
export const togetherView = (
  guide: Guide,
  family: readonly Member[],
  together: Together | undefined,
  voice: SiteVoice,
): TogetherView | undefined => {
  if (together === undefined) return undefined;
  const { say, formats } = voice;
  const heading = say(phrase('compare', 'travellers heading', {}));
  const good = together.days.filter(({ goes }) => goes).length;
  const lede = [
    phrase('compare', 'travellers lede', { good, of: together.days.length, travellers: together.travellers }),
    phrase('compare', 'travellers taken', {
      of: family.map(({ guide: { capsule } }) =>
        phrase('compare', 'capsule of', { capsule: capsule.title, traveller: capsule.traveller }),
      ),
    }),
  ]
    .map(say)
    .join(' ');
  return {
    frame: frameOf({ guide, voice, page: 'cover', path: 'together/', title: heading, description: lede }),
    kick: guide.brief.title,
    heading,
    lede,
    named: namedNote(
      family.flatMap((member) =>
        member.guide.looks
          .filter(({ occasions }) => together.days.some(({ occasion }) => occasions.includes(occasion)))
          .map((look) => namedPieces(member.guide, look, voice)),
      ),
      voice,
    ),
    days: [...new Set(together.days.map(({ date }) => date))].map((date) => ({
      heading: formats.date(date),
      occasions: together.days.filter((day) => day.date === date).map((day) => occasionView(guide, family, day, voice)),
    })),
    lend: {
      heading: say(phrase('compare', 'lend heading', {})),
      rows: together.lendable.map(({ piece, from, to, goesWith, planned, why }) =>
        `${say(
          phrase('compare', 'lend', {
            piece: piece.name,
            from,
            to,
            goesWith,
            planned,
          }),
        )} ${say(phrase('compare', 'why so', { why: say(why) }))}`.trim(),
      ),
      empty: together.lendable.length === 0 ? say(phrase('compare', 'no lend', {})) : '',
    },
    bags: bagsOf(together, family, voice),
  };
};
