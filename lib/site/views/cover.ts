import type { Family, Guide } from '../../guide/index.ts';
import { phrase } from '../../words/index.ts';
import type { Download, PictureIndex } from '../pictures.ts';
import type { SiteVoice } from '../voice.ts';
import { type DayView, dayViews } from './days.ts';
import { type Frame, frameOf } from './frame.ts';
import { type BagView, bagViews } from './packing.ts';
import { type PaperView, papersOf } from './papers.ts';
import { hasShopping } from './shopping.ts';
import { type LookTile, tileOf } from './tile.ts';

export interface CoverView {
  readonly frame: Frame;
  readonly kick: string;
  readonly places: readonly string[];
  readonly route: readonly {
    readonly date: string;
    readonly number: string;
    readonly weekday: string;
    readonly place: string;
    readonly href: string;
  }[];
  readonly introduction: string;
  /** Every day; a script shows the one it is, without it the first is shown. */
  readonly days: readonly DayView[];
  readonly links: readonly { readonly text: string; readonly href: string }[];
  readonly tiles: readonly LookTile[];
  readonly counts: readonly { readonly count: string; readonly name: string; readonly means: string }[];
  readonly siblings: readonly {
    readonly numeral: string;
    readonly title: string;
    readonly who: string;
    readonly href: string;
    readonly cloths: readonly string[];
  }[];
  readonly bags: readonly BagView[];
  /** The sheets to print, a row a paper. */
  readonly papers: readonly PaperView[];
  readonly cautions: readonly string[];
  readonly words: Readonly<
    Record<
      | 'day'
      | 'looks'
      | 'allLooks'
      | 'packing'
      | 'openList'
      | 'openBag'
      | 'counts'
      | 'siblings'
      | 'print'
      | 'cautions'
      | 'cautionNote'
      | 'today'
      | 'tonight'
      | 'more',
      string
    >
  >;
}

const TILES_SHOWN = 5;
const NUMERALS = ['I', 'II', 'III', 'IV', 'V', 'VI', 'VII', 'VIII', 'IX', 'X'];

export interface CoverQuestion {
  readonly guide: Guide;
  readonly pictures: PictureIndex;
  readonly downloads: readonly Download[];
  readonly edition: 'client' | 'stylist';
  /** Every guide of the same trip, this one too. */
  readonly family: readonly { readonly guide: Guide; readonly pictures: PictureIndex }[];
  /** What the guides of the trip say about one another. */
  readonly beside: Family | undefined;
}

const siblingsOf = ({ guide, family }: CoverQuestion, voice: SiteVoice): CoverView['siblings'] =>
  family.map(({ guide: other, pictures }, index) => ({
    numeral: NUMERALS[index] ?? String(index + 1),
    title: other.capsule.title,
    who: `${voice.word('capsule for', { traveller: other.capsule.traveller })}, ${voice.word('capsule pieces', { pieces: other.pieces.length })}`,
    href: other.id === guide.id ? './' : `../${other.capsule.id}/`,
    cloths: other.pieces.flatMap(({ id }) => {
      const cloth = pictures.cloth[id]?.address;
      return cloth === undefined ? [] : [`${other.id === guide.id ? '' : `../${other.capsule.id}/`}${cloth}`];
    }),
  }));

const countsOf = (guide: Guide, { formats, word }: SiteVoice): CoverView['counts'] => [
  { count: formats.count(guide.counts.core), name: word('core looks'), means: word('core means') },
  { count: formats.count(guide.counts.layered), name: word('layered looks'), means: word('layered means') },
  { count: formats.count(guide.counts.complete), name: word('complete looks'), means: word('complete means') },
];

const linksOf = ({ guide, beside, edition }: CoverQuestion, { word, say }: SiteVoice): CoverView['links'] => [
  { text: word('palette heading'), href: 'palette/' },
  { text: word('wear heading'), href: 'wear/' },
  { text: word('numbers heading'), href: 'numbers/' },
  ...(beside?.moods.some(({ of }) => of.includes(guide.capsule.id)) === true
    ? [{ text: word('moods heading'), href: 'moods/' }]
    : []),
  ...(beside === undefined || beside.parties.length === 0
    ? []
    : [{ text: say(phrase('compare', 'travellers heading', {})), href: 'together/' }]),
  ...(hasShopping(guide, edition)
    ? [
        {
          text: say(phrase('improve', edition === 'stylist' ? 'shopping link' : 'shopping heading', {})),
          href: 'shopping/',
        },
      ]
    : []),
  ...(edition === 'stylist' ? [{ text: word('findings heading'), href: 'findings/' }] : []),
];

export const coverView = (question: CoverQuestion, voice: SiteVoice): CoverView => {
  const { guide, pictures, downloads } = question;
  const { brief } = guide;
  const { word } = voice;
  const days = dayViews(guide, pictures, voice, 960);
  return {
    frame: frameOf({
      guide,
      voice,
      page: 'cover',
      path: '',
      title: guide.capsule.title,
      description: brief.title,
    }),
    kick: `${brief.title}, ${word('trip dates', { from: brief.from, to: brief.to })}`,
    places: [...new Set(brief.places.map(({ name }) => name))],
    route: days.map(({ id, date, number, weekday, place }, index) => ({
      date,
      number,
      weekday: weekday.slice(0, 2),
      place: place === days[index - 1]?.place ? '' : place,
      href: `days/#${id}`,
    })),
    introduction: voice.markdown(brief.introduction),
    days,
    links: linksOf(question, voice),
    tiles: guide.looks.slice(0, TILES_SHOWN).map((look) => tileOf(guide, look, pictures, voice, 240)),
    counts: countsOf(guide, voice),
    siblings: siblingsOf(question, voice),
    bags: bagViews(guide, pictures, voice),
    papers: papersOf(downloads, voice),
    cautions: brief.cautions,
    words: {
      day: word('the day'),
      looks: word('looks heading'),
      allLooks: word('all looks', { count: guide.looks.length }),
      packing: word('packing heading'),
      openList: word('open the list'),
      openBag: voice.say(phrase('bag', 'to the bag', {})),
      counts: word('counts heading'),
      siblings: word('capsules of the trip'),
      print: word('to print'),
      cautions: word('cautions heading'),
      cautionNote: word('caution note'),
      today: word('today'),
      tonight: word('tonight'),
      more: word('more heading'),
    },
  };
};
