import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { VERBS } from '../lib/cli/verbs.ts';
import { wordsAsMarkdown } from '../lib/cli/words.ts';
import { readFrontMatter } from '../lib/content/front-matter.ts';
import { readPiece } from '../lib/content/piece.ts';
import { pieceSchema } from '../lib/content/schema/piece.ts';

const README = readFileSync(path.join(import.meta.dirname, '..', 'README.md'), 'utf8');

describe('README.md', () => {
  it('opens with the job in one paragraph and the two commands', () => {
    const [title, job] = README.split('\n\n');
    expect(title).toBe('# Wayfold');
    expect(job).toMatch(/^Wayfold is for a personal stylist/);
    expect(README).toContain('npm ci && npm run guide');
    expect(README).toContain('npm ci && npm test');
  });

  it('names every verb with its words and its summary', () => {
    for (const { name, words, summary } of VERBS) {
      expect(README).toContain(`${name} ${words}`.trim().replaceAll('|', '\\|'));
      expect(README).toContain(summary.replaceAll('|', '\\|'));
    }
  });

  it('lists the words content may use, as the program does', () => {
    expect(README).toContain(wordsAsMarkdown());
  });

  it('shows a piece with every field there is, and the piece can be read', () => {
    const [, example = ''] = /```yaml\n(---\nname: Chestnut[\s\S]*?)```/.exec(README) ?? [];
    for (const field of Object.keys(pieceSchema.entries)) expect(example).toContain(field);
    const front = readFrontMatter({ path: 'overshirt.md', text: example });
    expect(front.ok && readPiece('overshirt', 'x', front.matter).problems).toEqual([]);
  });
});
