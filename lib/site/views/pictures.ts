import { type Guide, type GuideLook, piecesToName } from '../../guide/index.ts';
import type { Picture, PictureIndex, PictureSet } from '../pictures.ts';
import type { SiteVoice } from '../voice.ts';

/** An image element, light and dark: addresses relative to the guide's root, to be put behind the page's `base`. */
export interface ImageView {
  readonly alt: string;
  readonly width: number;
  readonly height: number;
  readonly src: string;
  readonly clear: readonly { readonly address: string; readonly width: number }[];
  readonly night: readonly { readonly address: string; readonly width: number }[];
}

const sources = (pictures: readonly Picture[]): ImageView['clear'] =>
  pictures.map(({ address, width }) => ({ address, width }));

/** Turns a set into an image; `atMost` leaves out widths that the place on the page never needs. */
export const imageOf = (set: PictureSet, alt: string, atMost = Number.POSITIVE_INFINITY): ImageView | undefined => {
  const narrowed = (pictures: readonly Picture[]): readonly Picture[] => {
    const small = pictures.filter(({ width }) => width <= atMost);
    return small.length > 0 ? small : pictures.slice(-1);
  };
  const clear = narrowed(set.clear);
  const [first] = clear;
  if (first === undefined) return undefined;
  return {
    alt,
    width: first.width,
    height: first.height,
    src: first.address,
    clear: sources(clear),
    night: sources(narrowed(set.night)),
  };
};

/** A shown look's picture, with its pieces named in words. */
export const lookImage = (
  guide: Guide,
  look: GuideLook,
  pictures: PictureIndex,
  voice: SiteVoice,
  atMost?: number,
): ImageView | undefined => {
  const names = look.look.worn.map(({ piece }) => guide.pieces.find(({ id }) => id === piece)?.name ?? piece);
  const set = pictures.looks[look.slug];
  return set === undefined
    ? undefined
    : imageOf(set, voice.word('look picture', { number: look.number, pieces: names }), atMost);
};

/**
 * The pieces of a look that some people cannot tell apart by colour, in words, to stand beside its picture; empty when
 * everyone can.
 */
export const namedPieces = (guide: Guide, look: GuideLook, { word }: SiteVoice): string => {
  const pieces = piecesToName(look).map((piece) => guide.pieces.find(({ id }) => id === piece)?.name ?? piece);
  return pieces.length === 0 ? '' : word('with pieces', { pieces });
};

/** What such names are for, told once on a page; empty where the page has none. */
export const namedNote = (named: readonly string[], { word }: SiteVoice): string =>
  named.some((names) => names !== '') ? word('with pieces note') : '';

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
