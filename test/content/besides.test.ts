import { describe, expect, it } from 'vitest';
import { parse } from '../../lib/content/front-matter.ts';
import { readPiece } from '../../lib/content/piece.ts';
import type { Piece } from '../../lib/model/index.ts';
import { dressIndex, KINDS } from '../../lib/vocabulary/index.ts';

const written = (fields: string): Piece | undefined =>
  parse({ path: 'wardrobes/ada/it.md', text: `---\nname: It\ncolours: [navy]\n${fields}\n---\n` }, (matter) =>
    readPiece('it', 'ada', matter),
  ).value;

describe('what a piece covers and suits', () => {
  it('is what its kind does, and what is written besides', () => {
    const boots = written('kind: hiking boots\nsuits: [rain, swim]');
    expect(boots?.suits).toEqual([...KINDS['hiking boots'].suits, 'swim']);
    const dress = written('kind: sheath dress\ncovers: [shoulders, upper arms, forearms]');
    expect(dress?.covers).toEqual(expect.arrayContaining([...KINDS['sheath dress'].covers, 'upper arms', 'forearms']));
    expect(dress?.covers).toContain('torso');
  });

  it('is less what is written with not before it', () => {
    expect(written('kind: hiking boots\nsuits: [not snow]')?.suits).toEqual(
      KINDS['hiking boots'].suits.filter((need) => need !== 'snow'),
    );
    expect(written('kind: shirt\ncovers: [not forearms]')?.covers).not.toContain('forearms');
    expect(written('kind: shirt')?.covers).toContain('forearms');
  });

  it('is asked for in known words', () => {
    expect(written('kind: shirt\ncovers: [not sleeves]')).toBeUndefined();
  });
});

describe('how dressy shoes are', () => {
  it('evening shoes of suede go to cocktails, others as far as their cloth: common practice, no source', () => {
    expect(written('kind: block heels\nfabric: suede')?.dress.high).toBe(dressIndex('cocktail'));
    expect(written('kind: loafers\nfabric: suede')?.dress.high).toBe(dressIndex('business'));
  });
});
