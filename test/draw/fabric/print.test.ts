import { expect, test } from 'vitest';
import { print } from '../../../lib/draw/fabric/print.ts';

/** Distance between two lines of a herringbone, centimetres: its tile holds eight. */
const pitchOf = (scale: 'small' | 'medium', detail: 'full' | 'small'): number => {
  const tile = print({ type: 'herringbone', scale }, ['#9a9284', '#4c463d'], detail, 'ada/coat', true);
  if (tile?.transform === undefined) throw new Error('no tile');
  return (tile.height / 8) * tile.transform[3];
};

/** Pixels a centimetre: the least of a card of the demo, and a small picture on a page. */
const [CARD, SMALL] = [4.3, 2.5];

test('a herringbone is one cloth in every size: its lines never run into each other, nor grow to a zig-zag', () => {
  for (const scale of ['small', 'medium'] as const) {
    const [full, small] = [pitchOf(scale, 'full'), pitchOf(scale, 'small')];
    // two pixels a line are the least that can be told apart: Nyquist
    expect(full * CARD).toBeGreaterThan(2);
    expect(small * SMALL).toBeGreaterThan(2);
    expect(small / full).toBeLessThan(1.5);
  }
});
