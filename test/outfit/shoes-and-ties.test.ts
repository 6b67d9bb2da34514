import { describe, expect, it } from 'vitest';
import { createWardrobeEngine } from '../../lib/outfit/index.ts';
import { pieceOf } from './wardrobe.ts';

/** Common practice, no source. */
const all = [
  pieceOf('dress-shirt', 'dress shirt'),
  pieceOf('thermal', 'thermal top'),
  pieceOf('tee', 't-shirt'),
  pieceOf('chinos', 'chinos'),
  pieceOf('shorts', 'tailored shorts'),
  pieceOf('cardigan', 'cardigan'),
  pieceOf('tie', 'tie', 'navy', { dress: { low: 0, high: 4 } }),
  pieceOf('trainers', 'trainers'),
  pieceOf('derbies', 'derby shoes'),
  pieceOf('loafers', 'loafers'),
];
const engine = createWardrobeEngine({ pieces: all, rules: {}, never: [], always: [] });
const rulesOf = (severity: string, ...ids: string[]): readonly string[] =>
  engine
    .explain(ids)
    .reasons.filter((reason) => reason.severity === severity)
    .map(({ rule }) => rule);

describe('shoes and ties', () => {
  it('a tie wants leather shoes', () => {
    expect(rulesOf('rules out', 'dress-shirt', 'chinos', 'cardigan', 'tie', 'trainers')).toContain('tie-suits');
    expect(rulesOf('rules out', 'dress-shirt', 'chinos', 'cardigan', 'tie', 'loafers')).not.toContain('tie-suits');
    const withTie = [...engine.enumerate({ restriction: { pieces: ['tie'] } })];
    expect(withTie.length).toBeGreaterThan(0);
    expect(withTie.some(({ worn }) => worn.some(({ piece }) => piece === 'trainers'))).toBe(false);
  });

  it('shorts want light shoes', () => {
    expect(rulesOf('lowers the score', 'dress-shirt', 'shorts', 'derbies')).toContain('shorts-shoes');
    expect(rulesOf('lowers the score', 'dress-shirt', 'shorts', 'loafers')).not.toContain('shorts-shoes');
    expect(rulesOf('lowers the score', 'dress-shirt', 'chinos', 'derbies')).not.toContain('shorts-shoes');
  });

  it('a thermal top goes under long sleeves, and under nothing that shows it', () => {
    const under = (...ids: readonly string[]) => engine.explain(['thermal', ...ids, 'chinos', 'trainers']);
    const { goes, look } = under('dress-shirt', 'cardigan');
    expect(goes).toBe(true);
    expect(look?.worn).toContainEqual({ piece: 'thermal', slot: 'base layer' });
    expect(under('tee').goes).toBe(false);
    expect(under('tee').reasons.map(({ rule }) => rule)).toContain('underlayer-hidden');
  });

  it('a thermal top is worn under something', () => {
    expect(rulesOf('lowers the score', 'thermal', 'chinos', 'trainers')).toContain('underlayer-alone');
    expect(rulesOf('lowers the score', 'thermal', 'cardigan', 'chinos', 'trainers')).not.toContain('underlayer-alone');
  });
});
