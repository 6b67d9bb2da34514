import { gzipSync } from 'node:zlib';
import { build } from 'esbuild';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createJudge, createWardrobeEngine, packRules, type Verdict } from '../../lib/outfit/index.ts';
import { createFormats, english, type Phrase, say } from '../../lib/words/index.ts';
import { wardrobes } from './random-wardrobe.ts';

/** Bundles one export of the outfit room as a page would. Fails on any import that only Node has. */
const bundle = async (name: string): Promise<string> => {
  const { outputFiles } = await build({
    stdin: { contents: `export { ${name} } from './lib/outfit/index.ts';`, resolveDir: process.cwd(), loader: 'ts' },
    bundle: true,
    platform: 'browser',
    format: 'esm',
    minify: true,
    write: false,
    logLevel: 'silent',
  });
  return outputFiles[0]?.text ?? '';
};
const KB = 1000;

const formats = createFormats({ language: 'en-GB', temperature: 'C', length: 'cm', weight: 'kg' });
const said = (phrase: Phrase): string => say(english, formats, phrase);
/** A verdict with its phrases said, as a reader sees it. */
const read = ({ reasons, missing, ...rest }: Verdict) => ({
  ...rest,
  reasons: reasons.map((reason) => ({ ...reason, message: said(reason.message) })),
  missing: missing.map(said),
});

describe('in a page', () => {
  it('the judge carries no rule, colour or table: a small part of the 20 kB that all script of a page may weigh', async () => {
    const script = await bundle('createJudge');
    expect(script.length).toBeGreaterThan(KB);
    expect(gzipSync(script).length).toBeLessThan(4 * KB);
  });

  it('the whole engine needs nothing of Node', async () => {
    expect(await bundle('createWardrobeEngine')).not.toMatch(/\bprocess\.|\brequire\(/);
  });

  it('the judge says what the engine says, of any pieces under any rules, after a journey as text', () => {
    let compared = 0;
    const against = new Set<string>();
    fc.assert(
      fc.property(
        wardrobes.chain((wardrobe) =>
          fc.tuple(
            fc.constant(wardrobe),
            fc.array(fc.subarray([...wardrobe.pieces.map(({ id }) => id), 'stranger']), { minLength: 6, maxLength: 6 }),
          ),
        ),
        ([wardrobe, sets]) => {
          const engine = createWardrobeEngine(wardrobe);
          const judge = createJudge(JSON.parse(JSON.stringify(packRules(wardrobe, said))));
          for (const ids of sets) {
            const verdict = read(engine.explain(ids));
            expect(read(judge.explain(ids))).toEqual(verdict);
            // unknown pieces are told in the order asked about
            if (!ids.includes('stranger')) expect(read(judge.explain(ids.toReversed()))).toEqual(verdict);
            compared += 1;
            for (const { rule } of verdict.reasons) against.add(rule);
          }
        },
      ),
      { numRuns: 150, seed: 7 },
    );
    expect(compared).toBe(900);
    expect(against.size).toBeGreaterThan(15);
  });
});
