import type { Guide } from '../../guide/index.ts';
import { KIND_GROUPS, KINDS } from '../../vocabulary/index.ts';
import type { PictureIndex } from '../pictures.ts';
import type { SiteVoice } from '../voice.ts';
import { type Frame, frameOf } from './frame.ts';
import { pieceImage } from './looks.ts';
import type { ImageView } from './pictures.ts';

export interface PieceTile {
  readonly id: string;
  readonly name: string;
  readonly fabric: string;
  readonly image: (ImageView & { readonly shown: number; readonly shownHeight: number }) | undefined;
  readonly cloth: string | undefined;
  readonly colours: string;
  readonly shown: string;
  readonly brings: string;
  readonly note: string;
  readonly looks: readonly { readonly number: number; readonly href: string; readonly text: string }[];
}

export interface PiecesView {
  readonly frame: Frame;
  readonly kick: string;
  readonly heading: string;
  readonly rationale: string;
  readonly groups: readonly {
    readonly heading: string;
    readonly count: number;
    readonly pieces: readonly PieceTile[];
  }[];
}

/** Page pixels a centimetre: one scale for every piece of the page; tiny things are shown at least this wide. */
const PX_PER_CM = 1.75;
const LEAST_WIDTH = 30;

const tileOf = (guide: Guide, id: string, pictures: PictureIndex, voice: SiteVoice): PieceTile | undefined => {
  const piece = guide.pieces.find((candidate) => candidate.id === id);
  if (piece === undefined) return undefined;
  const { word, formats } = voice;
  const earned = guide.earnings.find((entry) => entry.piece === id);
  const image = pieceImage(id, pictures);
  const shown = image === undefined ? 0 : Math.max(LEAST_WIDTH, Math.round(image.widthCm * PX_PER_CM));
  return {
    id,
    name: piece.name,
    fabric: piece.fabricText,
    image:
      image === undefined
        ? undefined
        : { ...image, shown, shownHeight: Math.round((shown * image.height) / image.width) },
    cloth: pictures.cloth[id]?.address,
    colours: formats.list(piece.colours.map(({ name }) => name)),
    shown: word('in shown looks', { count: earned?.shownIn.length ?? 0 }),
    brings: word('looks with it', { count: formats.count(earned?.layeredLooks ?? 0n) }),
    note: voice.markdown(piece.note),
    looks: (earned?.shownIn ?? []).flatMap((number) => {
      const look = guide.looks[number - 1];
      return look === undefined ? [] : [{ number, href: `looks/${look.slug}/`, text: word('look number', { number }) }];
    }),
  };
};

export const piecesView = (guide: Guide, pictures: PictureIndex, voice: SiteVoice): PiecesView => ({
  frame: frameOf({
    guide,
    voice,
    page: 'pieces',
    path: 'pieces/',
    title: voice.word('pieces heading'),
    description: guide.capsule.title,
  }),
  kick: voice.word('capsule pieces', { pieces: guide.pieces.length }),
  heading: guide.capsule.title,
  rationale: voice.markdown(guide.capsule.rationale),
  groups: KIND_GROUPS.flatMap((group) => {
    const pieces = guide.pieces
      .filter(({ kind }) => KINDS[kind].group === group)
      .flatMap(({ id }) => tileOf(guide, id, pictures, voice) ?? []);
    return pieces.length === 0 ? [] : [{ heading: voice.word(`group ${group}`), count: pieces.length, pieces }];
  }),
});
