import { describe, expect, it } from 'vitest';
import { wardrobeOn } from '../../lib/content/index.ts';
import type { Brief, Piece } from '../../lib/model/index.ts';
import { createWardrobeEngine, wornOffSkin } from '../../lib/outfit/index.ts';
import { createFormats, english, say } from '../../lib/words/index.ts';
import { pieceOf } from './wardrobe.ts';

const formats = createFormats({ language: 'en-GB', temperature: 'C', length: 'cm', weight: 'kg' });
const wool = { fabric: 'fine wool', fabricText: 'merino' } as const;

/** What a client in contact with wool wears: the usual advice for wool on sensitive skin is a cotton layer beneath. common practice, no source */
const WARDROBE: readonly Piece[] = [
  pieceOf('tee', 't-shirt', 'white'),
  pieceOf('long-tee', 'long-sleeved tee', 'white'),
  pieceOf('fine-knit', 'fine roll-neck', 'grey', wool),
  pieceOf('trousers', 'chinos', 'navy'),
  pieceOf('wool-trousers', 'tailored trousers', 'grey', { fabric: 'wool cloth', fabricText: 'worsted' }),
  pieceOf('cardigan', 'cardigan', 'grey', wool),
  pieceOf('blazer', 'blazer', 'navy', { fabric: 'wool cloth', fabricText: 'wool twill' }),
  pieceOf('coat', 'wool coat', 'grey', { fabric: 'felt', fabricText: 'melton wool' }),
  pieceOf('scarf', 'scarf', 'grey', wool),
  pieceOf('loafers', 'loafers', 'brown'),
];

const brief: Pick<Brief, 'avoid'> = { avoid: { colours: [], fabrics: [], againstSkin: ['wool'] } };
const pieces = wardrobeOn(new Map([['test', WARDROBE]]), brief, { wardrobe: 'test' });
const engine = createWardrobeEngine({ pieces, rules: {}, never: [], always: [] });
const looks = [...engine.enumerate()].map(({ worn }) => worn.map(({ piece }) => piece));
const together = (...ids: readonly string[]): boolean => looks.some((worn) => ids.every((id) => worn.includes(id)));
const reasons = (...ids: string[]): string =>
  engine
    .explain(ids)
    .reasons.map(({ message }) => say(english, formats, message))
    .join(' ');

describe('cloth that is kept off the skin', () => {
  it('is known by its fibre, and only where the brief asks', () => {
    expect(pieces.filter(({ offSkin }) => offSkin).map(({ id }) => id)).toEqual([
      'fine-knit',
      'wool-trousers',
      'cardigan',
      'blazer',
      'coat',
      'scarf',
    ]);
    const free = wardrobeOn(
      new Map([['test', WARDROBE]]),
      { avoid: { colours: [], fabrics: [] } },
      { wardrobe: 'test' },
    );
    expect(free).toEqual(WARDROBE);
  });

  it('is in no look where it would touch', () => {
    for (const id of ['wool-trousers', 'scarf']) expect(together(id)).toBe(false);
    expect(looks.length).toBeGreaterThan(0);
    expect(reasons('tee', 'wool-trousers', 'loafers')).toContain(
      'Wool trousers would touch the skin, and the brief keeps that cloth off it.',
    );
    expect(pieces.filter((piece) => piece.offSkin && !wornOffSkin(piece)).map(({ id }) => id)).toContain('scarf');
  });

  it('goes over sleeves as long, and over anything when it is lined', () => {
    expect(together('cardigan', 'long-tee')).toBe(true);
    expect(together('cardigan', 'tee')).toBe(false);
    expect(reasons('tee', 'trousers', 'cardigan', 'loafers')).toContain('Cardigan would touch what Tee leaves bare');
    expect(together('blazer', 'tee')).toBe(true);
    expect(together('coat', 'tee')).toBe(true);
  });

  it('is worn as usual by everybody else', () => {
    const usual = createWardrobeEngine({ pieces: WARDROBE, rules: {}, never: [], always: [] });
    const worn = new Set([...usual.enumerate()].flatMap((look) => look.worn.map(({ piece }) => piece)));
    for (const id of ['fine-knit', 'wool-trousers', 'cardigan', 'scarf']) expect(worn.has(id)).toBe(true);
  });
});
