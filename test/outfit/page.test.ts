import { gzipSync } from 'node:zlib';
import { build } from 'esbuild';
import { describe, expect, it } from 'vitest';
import { createJudge, createWardrobeEngine } from '../../lib/outfit/index.ts';
import { pieceOf } from './wardrobe.ts';

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

describe('in a page', () => {
  it('the judge fits in the 20 kB that all script of a page may weigh', async () => {
    const script = await bundle('createJudge');
    expect(script.length).toBeGreaterThan(KB);
    expect(gzipSync(script).length).toBeLessThan(19 * KB);
  });

  it('the whole engine needs nothing of Node', async () => {
    expect(await bundle('createWardrobeEngine')).not.toMatch(/\bprocess\.|\brequire\(/);
  });

  it('the judge says what the engine says', () => {
    const pieces = [
      pieceOf('tee', 't-shirt', 'red'),
      pieceOf('skirt', 'mini skirt', 'orange'),
      pieceOf('jeans', 'jeans', 'navy'),
      pieceOf('boots', 'ankle boots', 'black'),
      pieceOf('coat', 'wool coat', 'camel'),
    ];
    const wardrobe = { pieces, rules: {}, never: [['tee', 'coat']], always: [['jeans', 'coat']] };
    const judge = createJudge(wardrobe);
    const engine = createWardrobeEngine(wardrobe);
    for (let mask = 0; mask < 32; mask += 1) {
      const ids = pieces.filter((_, bit) => (mask >> bit) & 1).map(({ id }) => id);
      expect(judge.explain(ids)).toEqual(engine.explain(ids));
    }
  });
});
