import { describe, expect, it } from 'vitest';
import { drawingFindings } from '../../lib/draw/index.ts';
import type { Piece } from '../../lib/model/index.ts';
import { createFormats, languageOf, say } from '../../lib/words/index.ts';
import { samplePiece } from '../specimen/sample.ts';

const piece = (kind: Piece['kind'], changes: Partial<Piece>): Piece =>
  ({ ...samplePiece(kind), photo: undefined, estimated: [], file: `wardrobes/ada/${kind}.md`, ...changes }) as Piece;

describe('findings of the drawings', () => {
  it('says nothing of usual measures', () => {
    const usual = [piece('shirt', { lengthCm: 76 }), piece('pumps', { heelCm: 7 }), piece('tote', {})];
    expect(drawingFindings(usual)).toEqual([]);
  });

  it('names the piece, its file and both measures when one is held', () => {
    const [long, high, ...more] = drawingFindings([
      piece('shirt', { name: 'White shirt', lengthCm: 760 }),
      piece('pumps', { name: 'Red courts', heelCm: 31 }),
    ]);
    expect(more).toEqual([]);
    expect(long).toMatchObject({ level: 'warning', file: 'wardrobes/ada/shirt.md', about: ['specimen shirt'] });
    const formats = createFormats({ language: 'en-GB', length: 'cm' } as Parameters<typeof createFormats>[0]);
    const told = [long, high].map((finding) => finding && say(languageOf('en-GB'), formats, finding.message));
    expect(told[0]).toMatch(/^White shirt: 760 cm is no length .* drawn at \d+ cm\.$/);
    expect(told[1]).toBe('Red courts: a heel of 31 cm is none that is worn; it is drawn at 14 cm.');
  });

  it('does not speak of a piece that is shown by its photo, nor of the heel of what is not a shoe', () => {
    expect(drawingFindings([piece('shirt', { lengthCm: 760, photo: 'photos/shirt.jpg' })])).toEqual([]);
    expect(drawingFindings([piece('tote', { heelCm: 40 })])).toEqual([]);
  });
});
