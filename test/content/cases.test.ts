import { readdirSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { problemText } from '../../lib/cli/content.ts';
import { readContent } from '../../lib/content/index.ts';

const CASES = path.join(import.meta.dirname, 'cases');

describe('each folder of content gives the problems written beside it', () => {
  it.each(readdirSync(CASES))('%s', async (name) => {
    const { content, problems } = await readContent(path.join(CASES, name, 'content'));
    const text = problems.map(problemText).join('\n');
    await expect(`${text}\n`).toMatchFileSnapshot(path.join(CASES, name, 'problems.txt'));
    expect(content === undefined).toBe(problems.length > 0);
    expect(problems.length > 0).toBe(name !== 'valid');
  });
});
