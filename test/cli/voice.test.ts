import { describe, expect, it } from 'vitest';
import { findingLines, voiceOf } from '../../lib/cli/voice.ts';
import type { Finding, Studio } from '../../lib/model/index.ts';
import { phrase } from '../../lib/words/index.ts';

const voice = voiceOf({ language: 'en-GB', temperature: 'C', length: 'cm', weight: 'kg' } as Studio);
const written = (text: string) => phrase('guide', 'as written', { text });
const finding = (what: string, mend: string | undefined, change: Partial<Finding> = {}): Finding => ({
  level: 'error',
  rule: 'unserved-occasion',
  message: written(what),
  ...(mend === undefined ? {} : { mend: written(mend) }),
  about: [],
  ...change,
});

describe('findings as text', () => {
  it('say once what mends several, and for how many it is', () => {
    const told = [
      finding('One.', 'Pack it.', { reason: written('Why.') }),
      finding('Two.', 'Pack it.'),
      finding('Three.', 'Pack it.'),
    ];
    expect(findingLines(told, voice).join('\n').split('\n')).toEqual([
      'error [unserved-occasion] One.',
      '    Why.',
      'error [unserved-occasion] Two.',
      'error [unserved-occasion] Three.',
      '    For all 3: Pack it.',
    ]);
    expect(findingLines(told.slice(1), voice).at(-1)).toContain('    For both: Pack it.');
    expect(findingLines(told.slice(2), voice).at(-1)).toContain('    Pack it.');
  });

  it('keep apart what is mended in different ways', () => {
    const other = [written('Wash it.')];
    const lines = findingLines(
      [
        finding('One.', 'Pack it.', { orElse: other }),
        finding('Two.', 'Pack it.'),
        finding('Three.', 'Leave it.'),
        finding('Four.', undefined),
        finding('Five.', undefined),
        finding('Six.', 'Pack it.', { rule: 'other' }),
      ],
      voice,
    );
    expect(lines.join('\n')).not.toMatch(/For (both|all)/);
    expect(lines[0]).toMatch(/Pack it\.\n {4}or: Wash it\.$/);
    expect(lines.slice(3, 5)).toEqual(['error [unserved-occasion] Four.', 'error [unserved-occasion] Five.']);
  });
});
