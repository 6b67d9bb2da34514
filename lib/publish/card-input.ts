import type { CardFormat, CardInput } from '../draw/card/index.ts';
import { drawnLarger } from '../draw/index.ts';
import { dayOf, type Guide, type GuideLook, wearItInShort } from '../guide/index.ts';
import type { Fonts } from '../type/index.ts';
import { type Formats, type Phrase, phrase } from '../words/index.ts';
import type { Motifs } from './items.ts';

export interface CardVoice {
  readonly formats: Formats;
  say(phrase: Phrase): string;
}

/** What a card says and shows, in the studio's language. */
export const cardInput = (
  guide: Guide,
  look: GuideLook,
  format: CardFormat,
  motifs: Motifs,
  { say, formats }: CardVoice,
): CardInput => {
  const { studio, brief } = guide;
  const byId = new Map(guide.pieces.map((piece) => [piece.id, piece]));
  const pieces = look.look.worn.flatMap(({ piece }) => byId.get(piece) ?? []);
  const occasion = brief.occasions.find(({ id }) => id === look.occasions[0]);
  const planned = guide.plan.days
    .flatMap(({ occasions }) => occasions)
    .find((entry) => entry.occasion === occasion?.id);
  const larger = pieces.filter(({ kind }) => drawnLarger(kind)).map(({ name }) => name);
  return {
    format,
    number: formats.count(look.number),
    title: say(look.title),
    eyebrow: say(occasion === undefined ? phrase('guide', 'any day', {}) : dayOf(occasion, planned)),
    wear: [...wearItInShort(look), ...look.outInShort].map(say).join(' '),
    studio: studio.name,
    footer: brief.title,
    note: larger.length === 0 ? '' : say(phrase('draw', 'drawn larger', { pieces: larger })),
    pieces: motifs.itemsOf(look.look, 'full').map((item) => {
      const piece = byId.get(item.id);
      return { ...item, name: piece?.name ?? item.id, colour: piece?.colours[0]?.hex ?? '#888888' };
    }),
    accent: guide.accent.light,
    ...(studio.paperColour === undefined ? {} : { paper: studio.paperColour }),
    ...(studio.inkColour === undefined ? {} : { ink: studio.inkColour }),
    tape: { unit: studio.length, label: studio.length },
    grain: say(phrase('guide', 'straight grain', {})),
  };
};

/** The same card with only what the fonts can set; findings say which names are shown without letters. */
export const settableCard = (input: CardInput, { settable }: Fonts): CardInput => ({
  ...input,
  title: settable(input.title),
  eyebrow: settable(input.eyebrow),
  wear: settable(input.wear),
  studio: settable(input.studio),
  footer: settable(input.footer),
  note: settable(input.note),
  pieces: input.pieces.map((piece) => ({ ...piece, name: settable(piece.name) })),
});
