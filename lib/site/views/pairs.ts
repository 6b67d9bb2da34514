import type { Guide, GuidePair } from '../../guide/index.ts';
import type { PictureIndex } from '../pictures.ts';
import type { SiteVoice } from '../voice.ts';
import { type Frame, frameOf, tryHref } from './frame.ts';
import { type PieceTile, pieceHref, pieceToScale } from './pieces.ts';

export interface PairHead {
  readonly name: string;
  readonly href: string;
  readonly image: PieceTile['image'];
}

export interface PairCell {
  readonly goes: boolean;
  readonly looks: readonly { readonly number: number; readonly href: string }[];
  /** Why not, every reason; empty when it goes. */
  readonly reasons: readonly string[];
  /** The same in a few words, for the narrow cells of a phone. */
  readonly brief: string;
  readonly spare: string;
  /** Where the two can be tried, with what else one likes. */
  readonly trial: { readonly href: string; readonly text: string };
}

export interface PairsView {
  readonly frame: Frame;
  readonly kick: string;
  readonly heading: string;
  readonly lede: string;
  readonly bottoms: readonly PairHead[];
  readonly rows: readonly { readonly top: PairHead; readonly cells: readonly PairCell[] }[];
  readonly words: Readonly<
    Record<'tops' | 'bottoms' | 'table' | 'goes' | 'looks' | 'spare' | 'spareMeans' | 'nothing', string>
  >;
}

const PX_PER_CM = 0.95;

const nameOf = (guide: Guide, id: string | undefined): string =>
  guide.pieces.find((piece) => piece.id === id)?.name ?? id ?? '';

const headOf = (guide: Guide, id: string, pictures: PictureIndex): PairHead => ({
  name: nameOf(guide, id),
  href: pieceHref(id),
  image: pieceToScale(id, pictures, PX_PER_CM),
});

const cellOf = (guide: Guide, pair: GuidePair | undefined, { say, word, formats }: SiteVoice): PairCell => ({
  goes: pair?.goes ?? false,
  looks: (pair?.looks ?? []).flatMap((number) => {
    const look = guide.looks[number - 1];
    return look === undefined ? [] : [{ number, href: `looks/${look.slug}/` }];
  }),
  reasons: pair?.goes === true ? [] : (pair?.reasons ?? []).map(say),
  brief: pair?.goes === true ? '' : formats.list((pair?.rules ?? []).map((rule) => word('short reason', { rule }))),
  spare: word('spare'),
  trial: {
    href: tryHref(pair === undefined ? [] : [pair.top, pair.bottom]),
    text: word('try these two', { top: nameOf(guide, pair?.top), bottom: nameOf(guide, pair?.bottom) }),
  },
});

/** The grid of tops and bottoms, the reason in every cell where a pair does not go. */
export const pairsView = (guide: Guide, pictures: PictureIndex, voice: SiteVoice): PairsView => {
  const { word } = voice;
  const tops = [...new Set(guide.pairs.map(({ top }) => top))];
  const bottoms = [...new Set(guide.pairs.map(({ bottom }) => bottom))];
  const going = guide.pairs.filter(({ goes }) => goes).length;
  return {
    frame: frameOf({
      guide,
      voice,
      page: 'pairs',
      path: 'pairs/',
      title: word('pairs heading'),
      description: word('pairs lede', { going, of: guide.pairs.length }),
    }),
    kick: word('tops by bottoms', { tops: tops.length, bottoms: bottoms.length }),
    heading: word('pairs heading'),
    lede: word('pairs lede', { going, of: guide.pairs.length }),
    bottoms: bottoms.map((id) => headOf(guide, id, pictures)),
    rows: tops.map((top) => ({
      top: headOf(guide, top, pictures),
      cells: bottoms.map((bottom) =>
        cellOf(
          guide,
          guide.pairs.find((pair) => pair.top === top && pair.bottom === bottom),
          voice,
        ),
      ),
    })),
    words: {
      tops: word('group tops'),
      bottoms: word('group bottoms'),
      table: word('pairs heading'),
      goes: word('goes'),
      looks: word('looks heading'),
      spare: word('spare'),
      spareMeans: word('spare means'),
      nothing: word('no pairs'),
    },
  };
};
