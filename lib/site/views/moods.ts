import type { Guide } from '../../guide/index.ts';
import type { PictureIndex } from '../pictures.ts';
import type { SiteVoice } from '../voice.ts';
import { type Frame, frameOf } from './frame.ts';
import { type Bolt, boltsOf } from './pieces.ts';

export interface MoodsView {
  readonly frame: Frame;
  readonly kick: string;
  readonly heading: string;
  readonly lede: string;
  readonly moods: readonly {
    readonly title: string;
    readonly href: string;
    readonly words: string;
    readonly bolts: readonly Bolt[];
    readonly only: readonly { readonly name: string; readonly cloth: string | undefined }[];
  }[];
  readonly rows: readonly { readonly name: string; readonly values: readonly string[] }[];
  readonly shared: readonly { readonly name: string; readonly cloth: string | undefined }[];
  readonly words: Readonly<Record<'compared' | 'shared' | 'only' | 'noneShared' | 'mood', string>>;
}

type Member = { readonly guide: Guide; readonly pictures: PictureIndex };

const BOLTS_SHOWN = 6;
/** Width of half a wide page, pixels. */
const HALF = 528;

const kilogramsOf = ({ packing }: Guide): number =>
  (packing.bags.reduce((sum, { grams }) => sum + grams.value, 0) + packing.wornGrams.value) / 1000;

/** The moods of one trip side by side, and what both hold; undefined for a trip with one. */
export const moodsView = (guide: Guide, family: readonly Member[], voice: SiteVoice): MoodsView | undefined => {
  if (family.length < 2) return undefined;
  const { word, formats } = voice;
  const prefix = (other: Guide): string => (other.id === guide.id ? '' : `../${other.capsule.id}/`);
  const idsOf = (member: Member): ReadonlySet<string> =>
    new Set(member.guide.pieces.map(({ id, wardrobe }) => `${wardrobe}/${id}`));
  const sets = family.map(idsOf);
  const inAll = [...(sets[0] ?? [])].filter((id) => sets.every((set) => set.has(id)));
  const together = new Set(sets.flatMap((set) => [...set]));
  const swatchesOf = (member: Member, wanted: (id: string) => boolean): MoodsView['shared'] =>
    member.guide.pieces
      .filter(({ id, wardrobe }) => wanted(`${wardrobe}/${id}`))
      .map(({ id, name }) => {
        const cloth = member.pictures.cloth[id]?.address;
        return { name, cloth: cloth === undefined ? undefined : prefix(member.guide) + cloth };
      });
  const [first] = family;
  const row = (name: string, value: (other: Guide) => string): MoodsView['rows'][number] => ({
    name,
    values: family.map((member) => value(member.guide)),
  });
  return {
    frame: frameOf({
      guide,
      voice,
      page: 'cover',
      path: 'moods/',
      title: word('moods heading'),
      description: guide.brief.title,
    }),
    kick: guide.brief.title,
    heading: word('moods heading'),
    lede: word('moods lede', { shared: inAll.length, together: together.size }),
    moods: family.map((member) => ({
      title: member.guide.capsule.title,
      href: member.guide.id === guide.id ? './' : prefix(member.guide),
      words: formats.list(member.guide.capsule.mood.words),
      bolts: boltsOf(member.guide.palette.colours.slice(0, BOLTS_SHOWN), voice, HALF),
      only: swatchesOf(member, (id) => !inAll.includes(id)),
    })),
    rows: [
      row(word('pieces heading'), (other) => formats.count(other.pieces.length)),
      row(word('core looks'), (other) => formats.count(other.counts.core)),
      row(word('layered looks'), (other) => formats.count(other.counts.layered)),
      row(word('complete looks'), (other) => formats.count(other.counts.complete)),
      row(word('occasions served'), ({ plan }) =>
        word('so many of', { count: formats.count(plan.served), of: formats.count(plan.of) }),
      ),
      row(word('all weight'), (other) => formats.kilograms(kilogramsOf(other))),
    ],
    shared: first === undefined ? [] : swatchesOf(first, (id) => inAll.includes(id)),
    words: {
      compared: word('moods compared'),
      shared: word('in every mood'),
      only: word('only in this mood'),
      noneShared: word('none shared'),
      mood: word('column mood'),
    },
  };
};
