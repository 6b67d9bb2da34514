import { describe, expect, it } from 'vitest';
import { stiffBox } from '../../lib/bag/stiff.ts';
import { parse } from '../../lib/content/front-matter.ts';
import { readPiece } from '../../lib/content/piece.ts';
import type { Piece } from '../../lib/model/index.ts';
import { run } from '../cli/run.ts';
import { withContent } from '../plan/written.ts';

const read = (...lines: readonly string[]) => {
  const text = `---\n${['name: A piece', ...lines].join('\n')}\n---\n`;
  return parse({ path: 'wardrobes/ada/piece.md', text }, (matter) => readPiece('piece', 'ada', matter));
};
const pieceOf = (...lines: readonly string[]): Piece => {
  const { value } = read(...lines);
  if (value === undefined) throw new Error('refused');
  return value;
};

describe('measures that no piece has', () => {
  it.each(['length cm: 900', 'length cm: 0', 'length cm: -3', 'heel cm: 60'])('are read: %s', (line) => {
    expect(read('kind: pumps', 'colours: [red]', line).problems).toEqual([]);
  });

  it('are still to be numbers', () => {
    for (const line of ['length cm: long', 'heel cm: .inf', 'heel cm: [3]'])
      expect(read('kind: pumps', 'colours: [red]', line).problems, line).toHaveLength(1);
  });

  it('make no boot that no bag holds', () => {
    const boot = (...lines: readonly string[]) => stiffBox(pieceOf('kind: knee boots', 'colours: [black]', ...lines));
    expect(boot('length cm: 900', 'heel cm: 60')).toEqual(boot('length cm: 60', 'heel cm: 14'));
    expect(boot('length cm: 0', 'heel cm: -5')).toEqual(boot('length cm: 11', 'heel cm: 0'));
  });

  it('are warned of by check, each with file, line and the measure that is used', async () => {
    const written = {
      wardrobe: {
        shirt: ['shirt', 'white', 'length cm: 900'],
        jeans: ['jeans', '', 'length cm: 0'],
        pumps: ['pumps', 'red', 'size: 38', 'heel cm: 60'],
        trainers: ['trainers', 'white'],
        cap: ['cap', 'navy', 'length cm: 900'],
      },
      brief: [
        'title: Day',
        'from: 2027-05-01',
        'to: 2027-05-01',
        'travellers: [{name: Ada, wardrobe: ada}]',
        'places: [{name: Graz, from: 2027-05-01, to: 2027-05-01, weather: {low: 12, high: 18}}]',
      ],
      capsule: ['title: Plain', 'pieces: [shirt, jeans, pumps, cap, trainers]'],
    } as const;
    const { out, err, code } = await withContent(written, (folder) => run(['check', '--content', folder]));
    expect(err).toBe('');
    expect(code).toBe(0);
    const told = out.split('\n').filter((line) => line.startsWith('warning [drawing]'));
    expect(told).toEqual([
      expect.stringMatching(/shirt: 900 cm is no length .* it is drawn at \d+ cm\. \(wardrobes\/ada\/shirt\.md:5\)$/),
      expect.stringMatching(/jeans: 0 cm is no length .* it is drawn at \d+ cm\. \(wardrobes\/ada\/jeans\.md:5\)$/),
      'warning [drawing] jeans: no colour is written; it is drawn and judged as mid grey. (wardrobes/ada/jeans.md:4)',
      'warning [drawing] pumps: a heel of 60 cm is none that is worn; it is drawn at 14 cm. (wardrobes/ada/pumps.md:6)',
      'warning [drawing] cap: 900 cm is no length for this kind of piece; it is drawn at its usual size. (wardrobes/ada/cap.md:5)',
    ]);
  });
});
