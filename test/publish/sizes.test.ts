import path from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { readContent } from '../../lib/content/index.ts';
import { drawCard } from '../../lib/draw/card/index.ts';
import { createRasteriser, lookPicture } from '../../lib/draw/raster/index.ts';
import { buildGuides, type Guide } from '../../lib/guide/index.ts';
import { cardInput } from '../../lib/publish/card-input.ts';
import { type Motifs, motifsOf } from '../../lib/publish/items.ts';
import { LOOK } from '../../lib/publish/look-pictures.ts';
import { loadSolver } from '../../lib/solver/index.ts';
import { loadFonts } from '../../lib/type/index.ts';
import { createFormats, languageOf, say } from '../../lib/words/index.ts';

const CONTENT = path.join(import.meta.dirname, '..', '..', 'content');

/** Cards of each guide that are weighed: those with the most pieces. */
const FULLEST = 6;

let guides: readonly { readonly guide: Guide; readonly motifs: Motifs }[];
beforeAll(async () => {
  const { content } = await readContent(CONTENT);
  if (content === undefined) throw new Error('the demo has problems');
  const all = await buildGuides(content, await loadSolver());
  guides = await Promise.all(all.map(async (guide) => ({ guide, motifs: await motifsOf(guide.pieces, CONTENT) })));
}, 240_000);

describe('what the demo weighs', () => {
  it('keeps the fullest cards under 700 kB as PNG and under 400 kB as SVG, pictures on a page under 170 kB', async () => {
    const rasteriser = createRasteriser();
    const fonts = loadFonts();
    const heavy: string[] = [];
    const weigh = (what: string, bytes: number, most: number): void => {
      if (bytes >= most) heavy.push(`${what}: ${bytes}`);
    };
    let cards = 0;
    for (const { guide, motifs } of guides) {
      const formats = createFormats(guide.studio);
      const language = languageOf(guide.studio.language);
      const voice = { formats, say: (phrase: Parameters<typeof say>[2]) => say(language, formats, phrase) };
      const fullest = [...guide.looks].sort((a, b) => b.look.worn.length - a.look.worn.length).slice(0, FULLEST);
      for (const [index, look] of fullest.entries()) {
        const name = `${guide.id} ${look.slug}`;
        const card = await drawCard(cardInput(guide, look, 'portrait', motifs, voice), fonts);
        weigh(`${name} as SVG`, Buffer.byteLength(card.svg), 400_000);
        const pixels = await rasteriser.laid(card, { ground: 'paper', sheet: card.sheet });
        weigh(`${name} as PNG`, (await rasteriser.png(pixels)).length, 700_000);
        cards++;
        if (index > 1) continue;
        const picture = await rasteriser.laid(lookPicture(motifs.itemsOf(look.look, 'full'), LOOK), {
          ground: 'clear',
        });
        weigh(`${name} as WebP`, (await rasteriser.webp(picture)).length, 170_000);
      }
    }
    expect(cards).toBe(guides.length * FULLEST);
    expect(heavy).toEqual([]);
  }, 300_000);
});
