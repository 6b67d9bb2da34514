import { spawnSync } from 'node:child_process';
import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { VERBS } from '../../lib/cli/verbs.ts';
import { PROJECT, run } from './run.ts';

const RAIL = 'october-by-rail/chestnut-and-rain';
const CASES = path.join(PROJECT, 'test', 'content', 'cases');

describe('the command line', () => {
  it('lists its verbs, and helps with each', async () => {
    const all = await run(['--help']);
    expect(all.code).toBe(0);
    for (const { name, options } of VERBS) {
      expect(all.out).toContain(name);
      const one = await run([name, '--help']);
      expect(one.code).toBe(0);
      for (const option of Object.keys(options)) expect(one.out).toContain(`--${option}`);
    }
  });

  it.each([
    [[], 'wayfold <verb>'],
    [['biuld'], 'write "build"'],
    [['check', '--contnet', 'x'], '--content'],
    [['looks'], 'wants <trip>/<capsule>'],
    [['looks', 'october-by-rail/chestnut-and-rian'], 'chestnut-and-rain'],
    [['looks', RAIL, '--level', 'deep'], 'core, layered, complete'],
    [['looks', RAIL, '--first', 'many'], 'whole number'],
    [['explain', RAIL, 'striped-boat-nekc'], 'striped-boat-neck'],
    [['palette', 'burgundi'], 'burgundy'],
    [['check', 'october', 'extra'], 'does not know what to do'],
  ])('exits with 2 and says what would be right: %j', async (args, says) => {
    const { code, err, out } = await run(args as string[]);
    expect(code).toBe(2);
    expect(`${err}${out}`).toContain(says);
    expect(err).not.toMatch(/\bat .*\.ts:/);
  });

  it('exits with 1 and every problem when the content is wrong', async () => {
    const { code, err } = await run(['check', '--content', path.join(CASES, 'misspelt-words', 'content')]);
    expect(code).toBe(1);
    expect(err).toContain('wardrobes/ada/shirt.md:3: "kind": there is no kind "overshrt"');
    expect(err).toContain('9 problems in 2 files. Nothing was written.');
  });

  it('counts under three names', async () => {
    const { code, out } = await run(['looks', RAIL, '--count']);
    expect(code).toBe(0);
    expect(out).toMatch(/core looks: .*\n.*layered looks: .*\n.*complete looks: /);
    const json = JSON.parse((await run(['looks', RAIL, '--count', '--json'])).out) as {
      counts: Record<string, string>;
    };
    expect(Object.keys(json.counts)).toEqual(['core', 'layered', 'complete']);
  });

  it('names the house rule that rules out every look', async () => {
    const folder = await mkdtemp(path.join(tmpdir(), 'wayfold-rules-'));
    await cp(path.join(CASES, 'valid', 'content'), folder, { recursive: true });
    const colours: Readonly<Record<string, string>> = { shirt: 'red', chinos: 'green', shoes: 'purple' };
    for (const [id, colour] of Object.entries(colours)) {
      const file = path.join(folder, 'wardrobes', 'ada', `${id}.md`);
      await writeFile(file, (await readFile(file, 'utf8')).replace(/colours: .*/, `colours: [${colour}]`));
    }
    await writeFile(path.join(folder, 'house-rules.md'), '---\nrules:\n  hue-families: 0\n---\n');
    const { out } = await run(['looks', 'graz/plain', '--count', '--content', folder]);
    expect(out).toContain('"hue-families"');
    const { code, out: checked } = await run(['check', '--content', folder]);
    expect(code).toBe(1);
    expect(checked).toMatch(/^error \[no-looks\].*"hue-families".*\(trips\/graz\/plain\.md\)$/m);
    await rm(folder, { recursive: true });
  });

  it('lists looks page by page in one order', async () => {
    const all = JSON.parse((await run(['looks', RAIL, '--json', '--first', '30'])).out) as { looks: { id: string }[] };
    const first = JSON.parse((await run(['looks', RAIL, '--json', '--first', '10'])).out) as typeof all;
    const after = first.looks.at(-1)?.id ?? '';
    const next = JSON.parse(
      (await run(['looks', RAIL, '--json', '--first', '20', '--after', after])).out,
    ) as typeof all;
    expect([...first.looks, ...next.looks]).toEqual(all.looks);
  });

  it('explains that what the client refuses does not go, whatever the rules say', async () => {
    const folder = await mkdtemp(path.join(tmpdir(), 'wayfold-refused-'));
    await cp(path.join(CASES, 'valid', 'content'), folder, { recursive: true });
    const asked = ['explain', 'graz/plain', 'shirt', 'chinos', 'shoes', '--content', folder];
    expect((await run(asked)).out).toMatch(/^Yes:/);
    const brief = path.join(folder, 'trips', 'graz', 'brief.md');
    await writeFile(brief, (await readFile(brief, 'utf8')).replace(/^---\n/, '---\navoid: {fabrics: [cotton]}\n'));
    const { out } = await run(asked);
    expect(out).toMatch(/^No:.*\n {2}no {2}.*“cotton”, which the client does not wear\. \[fabric-refused\]/);
    const { goes, refused } = JSON.parse((await run([...asked, '--json'])).out) as {
      goes: boolean;
      refused: unknown[];
    };
    expect([goes, refused.length > 0]).toEqual([false, true]);
    await rm(folder, { recursive: true });
  });

  it('lists and counts no look with a piece that the client does not wear, and says so', async () => {
    const folder = await mkdtemp(path.join(tmpdir(), 'wayfold-not-worn-'));
    await cp(path.join(CASES, 'valid', 'content'), folder, { recursive: true });
    const ada = path.join(folder, 'wardrobes', 'ada');
    await writeFile(
      path.join(ada, 'tee.md'),
      '---\nname: Linen tee\nkind: t-shirt\ncolours: [navy]\nfabric: linen\n---\n',
    );
    const capsule = path.join(folder, 'trips', 'graz', 'plain.md');
    await writeFile(capsule, (await readFile(capsule, 'utf8')).replace('[shirt,', '[tee, shirt,'));
    const brief = path.join(folder, 'trips', 'graz', 'brief.md');
    const plain = await readFile(brief, 'utf8');
    const looks = async (avoid: string) => {
      await writeFile(brief, plain.replace(/^---\n/, `---\navoid: ${avoid}\n`));
      const asked = ['looks', 'graz/plain', '--content', folder];
      const data = JSON.parse((await run([...asked, '--json'])).out) as {
        counts: Record<string, string>;
        refused: unknown[];
      };
      return { text: (await run(asked)).out, ...data };
    };
    const all = await looks('{colours: [orange]}');
    expect([all.counts.core, all.refused.length]).toEqual(['2', 0]);
    const worn = await looks('{fabrics: [linen]}');
    expect([worn.counts.core, worn.refused.length]).toEqual(['1', 1]);
    expect(worn.text.split('\n')[0]).not.toContain('Linen tee');
    expect(worn.text).toMatch(/keep to what the client wears:\n {2}Linen tee.*“linen”.*\[fabric-refused\]/);
    const skin = await looks('{against skin: [linen]}');
    expect(skin.counts.core).toBe('1');
    expect(skin.text).toContain('[against-skin]');
    const rules = await readFile(capsule, 'utf8');
    await writeFile(capsule, rules.replace(/^---\n/, '---\nrules: {off-the-skin: off}\n'));
    const lifted = await looks('{against skin: [linen]}');
    expect([lifted.counts.core, lifted.refused.length]).toEqual(['2', 0]);
    await writeFile(capsule, rules);
    const none = await looks('{heel cm over: 0}');
    expect(none.counts.complete).toBe('0');
    expect(none.text).toContain('Every look of these pieces has a piece in it that the client does not wear.');
    await rm(folder, { recursive: true });
  });

  it('says beside the words themselves that a piece adds to its kind with them, and takes away', async () => {
    expect((await run(['words', 'needs'])).out).toMatch(/`suits` they add to .* kind .*`not rain` takes rain away/);
    expect((await run(['words', 'cover'])).out).toMatch(/`covers` they add to .* kind .*`not forearms` takes/);
  });

  it('explains a look that goes, one that does not, and a piece', async () => {
    const yes = await run(['explain', RAIL, 'rust-fine-roll-neck', 'charcoal-wide-trousers', 'brown-lace-up-boots']);
    expect(yes.out).toMatch(/^Yes:/);
    const no = await run(['explain', RAIL, 'striped-boat-neck', 'tartan-pleated-skirt', 'chestnut-loafers']);
    expect(no.out).toMatch(/^No:/);
    expect(no.out).toContain('two prints');
    const outside = await run(['explain', RAIL, 'mustard-henley', 'charcoal-wide-trousers', 'brown-lace-up-boots']);
    expect(outside.out).toContain('is in the wardrobe and not in this capsule');
    const half = await run(['explain', RAIL, 'rust-fine-roll-neck', 'charcoal-wide-trousers']);
    expect(half.out).toMatch(/^Yes, as far as it goes:.*\n.*it needs shoes/);
    const stripes = await run(['explain', RAIL, 'striped-boat-neck']);
    expect(stripes.out).toMatch(/is in \d+ of [\d,]+ complete looks\. It goes with/);
    expect(stripes.out).toContain('bottom: 2 of 3');
    expect(stripes.out).toContain('two prints');
    expect((await run(['explain', RAIL, 'gold-hoops'])).out).toContain('Nothing stands between');
  });

  it('says which dress codes a look spans, and which pieces set the ends', async () => {
    const asked = ['explain', RAIL, 'copper-slip-dress', 'brown-lace-up-boots'];
    const { out } = await run(asked);
    expect(out).toContain('Dress code: smart casual only.');
    expect(out).toContain('No plainer than smart casual: Copper slip dress.');
    expect(out).toContain('No dressier than smart casual: Brown lace-up boots.');
    const { dress } = JSON.parse((await run([...asked, '--json'])).out) as { dress: unknown };
    expect(dress).toMatchObject({
      low: 'smart casual',
      high: 'smart casual',
      meets: true,
      lowSetBy: ['copper-slip-dress'],
      highSetBy: ['brown-lace-up-boots'],
    });
  });

  it('explains as the README shows it', async () => {
    const readme = await readFile(path.join(PROJECT, 'README.md'), 'utf8');
    const shown = [...readme.matchAll(/^\$ npm run -s wayfold -- (explain .*)\n((?:.+\n)+)/gm)];
    expect(shown).toHaveLength(2);
    for (const [, words = '', answer = ''] of shown) {
      const { out } = await run(words.split(' '));
      expect(answer.replace(/```\n$/, '').trim()).toBe(out.trim());
    }
  });

  it('ends quietly when its reader has seen enough', () => {
    const shell = spawnSync('sh', ['-c', `npx tsx lib/cli.ts looks ${RAIL} | head -1`], {
      cwd: PROJECT,
      encoding: 'utf8',
    });
    expect(shell.stderr).toBe('');
    expect(shell.stdout.split('\n')).toHaveLength(2);
  });

  it('says once what mends several findings in a row', async () => {
    const { out } = await run(['check', 'october-by-rail']);
    const told = out.split('\n').filter((line) => line.startsWith('advice [weak-point]'));
    const mended = out.split('\n').filter((line) => line.includes('Pack something that can take its place'));
    expect(told.length).toBeGreaterThan(mended.length);
    expect(mended.length).toBeGreaterThan(0);
  });

  it('finds nothing wrong with the demo', async () => {
    const { code, out } = await run(['check']);
    expect(out).not.toContain('error [');
    expect(code).toBe(0);
  });

  it('plans every day, with reasons', async () => {
    const { code, out } = await run(['plan', RAIL]);
    expect(code).toBe(0);
    expect(out).toMatch(
      /^All 17 occasions have their look\.\n(?:\S.*\.\n)*\nSaturday 2 October, Vienna: 7–14°C, showers possible\n/,
    );
    expect(out).toMatch(
      /\n {2}19:30 {3}Chamber concert\n {10}Copper slip dress, .*\n {10}Wear on the way: Herringbone wool coat\. .*\n {10}Fixed by your stylist\.\n/,
    );
    expect(out).toMatch(/\nSunday 10 October, homeward\n/);
    const json = JSON.parse((await run(['plan', RAIL, '--json'])).out) as {
      days: { occasions: { reasons: string[]; cautions: string[] }[] }[];
      weakPoints: { what: string }[];
    };
    const said = json.days.flatMap(({ occasions }) =>
      occasions.flatMap(({ reasons, cautions }) => [...reasons, ...cautions]),
    );
    for (const sentence of [...said, ...json.weakPoints.map(({ what }) => what)])
      expect(sentence).toMatch(/^\p{Lu}.*\.$/u);
    expect(json.days).toHaveLength(9);
  });

  it('says what README.md shows of an occasion without a look', async () => {
    const folder = await mkdtemp(path.join(tmpdir(), 'wayfold-rain-'));
    try {
      await cp(path.join(PROJECT, 'content'), folder, { recursive: true });
      const file = path.join(folder, 'trips', 'october-by-rail', 'chestnut-and-rain.md');
      const text = await readFile(file, 'utf8');
      const dry = text
        .replace('  - olive-rain-jacket\n', '')
        .replace(/ {2}- occasion: Hill walk in rain\n( {4}.*\n)+/, '');
      await writeFile(file, dry);
      const { code, out } = await run(['plan', RAIL, '--content', folder]);
      expect(code).toBe(1);
      expect(out).toMatch(/^16 of 17 occasions have their look\. No plan with these pieces serves more\.\n/);
      const shown = /```\n(No look serves “Hill walk[\s\S]*?)```/.exec(
        await readFile(path.join(PROJECT, 'README.md'), 'utf8'),
      );
      expect(out).toContain(shown?.[1] ?? 'no sample');
    } finally {
      await rm(folder, { recursive: true, force: true });
    }
  });

  it('suggests palettes round a colour', async () => {
    const { code, out } = await run(['palette', 'rust']);
    expect(code).toBe(0);
    expect(out).toMatch(/#[0-9a-f]{6} +\d+ ?% +(base|support|accent)/);
  });
});
