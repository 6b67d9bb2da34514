import { CARD_SIZES, type Card, type CardFormat, drawCard } from '../draw/card/index.ts';
import type { Guide, GuideLook } from '../guide/index.ts';
import type { CardPictures } from '../site/pictures.ts';
import { cardInput, settableCard } from './card-input.ts';
import type { Easel, Job } from './easel.ts';
import { lookKey, type Motifs } from './items.ts';

/** The cards of a look: the tall one as PNG and SVG, the wide one as PNG. */
export const cardJobs = (
  guide: Guide,
  look: GuideLook,
  motifs: Motifs,
  { fonts, voice, rasteriser }: Easel,
): { readonly cards: CardPictures; readonly jobs: readonly Job[] } => {
  const stem = `cards/${look.slug}`;
  const draw = (format: CardFormat) =>
    drawCard(settableCard(cardInput(guide, look, format, motifs, voice), fonts), fonts, { onLaid: rasteriser.prepare });
  const pngOf = async (card: Card): Promise<Uint8Array> =>
    rasteriser.png(await rasteriser.laid(card, { ground: 'paper', sheet: card.sheet }));
  const keyFor = (format: CardFormat): readonly unknown[] => {
    const { pieces, ...words } = cardInput(guide, look, format, motifs, voice);
    return ['card', words, pieces.map(({ name, colour }) => [name, colour]), lookKey(look.look, guide)];
  };
  return {
    cards: {
      portrait: { address: `${stem}.png`, ...CARD_SIZES.portrait },
      landscape: { address: `${stem}-wide.png`, ...CARD_SIZES.landscape },
      svg: `${stem}.svg`,
    },
    jobs: [
      {
        outputs: [
          { file: `${stem}.svg`, key: [...keyFor('portrait'), 'svg'] },
          { file: `${stem}.png`, key: [...keyFor('portrait'), 'png'] },
        ],
        make: async () => {
          const card = await draw('portrait');
          return [new TextEncoder().encode(card.svg), await pngOf(card)];
        },
      },
      {
        outputs: [{ file: `${stem}-wide.png`, key: [...keyFor('landscape'), 'png'] }],
        make: async () => [await pngOf(await draw('landscape'))],
      },
    ],
  };
};
