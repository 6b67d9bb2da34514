import { type Guide, type GuideLook, isForWater } from '../../guide/index.ts';
import { DRESS_CODES } from '../../vocabulary/index.ts';
import type { PictureIndex } from '../pictures.ts';
import type { SiteVoice } from '../voice.ts';
import { type ImageView, lookImage, namedPieces } from './pictures.ts';

export interface LookTile {
  readonly number: number;
  readonly title: string;
  readonly href: string;
  readonly image: ImageView | undefined;
  /** The air it is good for outdoors; where it is worn, when it is swimwear. */
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
  degrees: isForWater(look.look)
    ? voice.word('by the water')
    : voice.formats.celsiusRange(look.outdoors.lowC, look.outdoors.highC),
  dress: voice.word('dress from to', {
    low: DRESS_CODES[look.dress.low] ?? '',
    high: DRESS_CODES[look.dress.high] ?? '',
  }),
  named: namedPieces(guide, look, voice),
});
