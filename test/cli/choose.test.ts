import { cp, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { PROJECT, run } from './run.ts';

const TRIP = 'wedding-in-the-alentejo';
const SLOW_MS = 180_000;
let folder = '';
let trip = '';

beforeAll(async () => {
  folder = await mkdtemp(path.join(tmpdir(), 'wayfold-choose-'));
  await cp(path.join(PROJECT, 'content'), path.join(folder, 'content'), { recursive: true });
  trip = path.join(folder, 'content', 'trips', TRIP);
});
afterAll(() => rm(folder, { recursive: true, force: true }));

/** A capsule of the demo's guest that leaves pieces out. */
const leaveOut = (name: string, pieces: readonly string[]): Promise<void> =>
  writeFile(
    path.join(trip, `${name}.md`),
    [
      '---',
      'title: Asked',
      'traveller: Livia',
      'list: long-weekend-in-heat',
      'mood: {palette: [terracotta, sage, cream, sand, olive]}',
      `choose: {leave out: [${pieces.join(', ')}]}`,
      '---',
      '',
    ].join('\n'),
  );

describe('the choose verb', () => {
  it(
    'proposes bags for the demo: how good, what fills each line, what differs, and the capsule file',
    async () => {
      const { code, out } = await run(['choose', 'october-by-rail']);
      expect(code).toBe(0);
      const [, two, three] = out.split(/^Proposal \d: /m).slice(1);
      expect(three).toBeDefined();
      expect(out).toMatch(/layered looks, (the most possible|at most \d+% from the best possible)/);
      expect(out).toContain('17 of 17 occasions dressed');
      expect(out).toMatch(/\n {2}swimwear, one to wear while the other dries: .+ and .+\n/);
      expect(two).toContain('unlike proposal 1: ');
      expect(out).toContain('---\ntitle: "Chestnut and rain, proposal 1"');
      expect(out).not.toMatch(/undefined|NaN|\[object/);
    },
    SLOW_MS,
  );

  it(
    'proposes the first capsule of a trip, whose list the list verb has made',
    async () => {
      const fresh = path.join(folder, 'fresh');
      await cp(path.join(PROJECT, 'content'), path.join(fresh, 'content'), { recursive: true });
      for (const at of ['trips/october-by-rail', TRIP.replace(/^/, 'trips/'), 'lists']) {
        for (const file of await readdir(path.join(fresh, 'content', at)))
          if (file !== 'brief.md') await rm(path.join(fresh, 'content', at, file));
      }
      const list = await run(['list', 'october-by-rail', '--write', 'rail'], fresh);
      expect(list.code).toBe(0);
      const file = path.join(fresh, 'content', 'lists', 'rail.md');
      expect(await readFile(file, 'utf8')).toBe(list.out);
      const again = await run(['list', 'october-by-rail', '--write', 'rail'], fresh);
      expect(again.code).toBe(2);
      expect(again.err).toContain('rail.md is there already; nothing was written');
      const { code, out, err } = await run(['choose', 'october-by-rail', '--list', 'rail'], fresh);
      expect(err).toBe('');
      expect(code).toBe(0);
      expect(out).toMatch(/^For Nora, from the wardrobe "nora"\.\n/);
      expect(out).toContain('traveller: "Nora"\nwardrobe: nora\nlist: rail\n');
      expect((await run(['choose', 'october-by-rail', '--list', 'rial'], fresh)).code).toBe(2);
    },
    SLOW_MS,
  );

  it(
    'gives everything as JSON, the same every time',
    async () => {
      const args = ['choose', TRIP, '--mood', 'linen-and-ink', '--json'];
      const first = await run(args, folder);
      expect(first.code).toBe(0);
      const choice = JSON.parse(first.out) as {
        possible: boolean;
        proposals: { pieces: unknown[]; counts: Record<string, string>; bound: number; gapAtMost: number }[];
      };
      expect(choice.possible).toBe(true);
      expect(choice.proposals[0]?.counts).toHaveProperty('layered');
      expect(choice.proposals[0]?.bound).toBeGreaterThanOrEqual(Number(choice.proposals[0]?.counts.layered));
      expect((await run(args, folder)).out).toBe(first.out);
    },
    SLOW_MS,
  );

  it(
    'writes a new capsule when asked, which checks out, and never over one that is there',
    async () => {
      const before = await readdir(trip);
      const args = ['choose', TRIP, '--mood', 'linen-and-ink'];
      await run(args, folder);
      expect(await readdir(trip)).toEqual(before);
      const wrote = await run([...args, '--write', 'lighter-linen'], folder);
      expect(wrote.code).toBe(0);
      expect(wrote.err).toContain('lighter-linen.md');
      const file = path.join(trip, 'lighter-linen.md');
      const text = await readFile(file, 'utf8');
      expect(wrote.out).toContain(text.trim());
      expect(text).toContain('title: "Lighter linen"\n');
      expect((await run(['check', TRIP], folder)).code).toBe(0);
      await writeFile(file, `${text}Mine.\n`);
      const again = await run([...args, '--write', 'lighter-linen'], folder);
      expect(again.code).toBe(2);
      expect(again.err).toContain('lighter-linen.md is there already; nothing was written');
      expect(await readFile(file, 'utf8')).toBe(`${text}Mine.\n`);
      await rm(file);
      for (const name of ['../outside', 'Two words', 'a/b']) {
        const refused = await run([...args, '--write', name], folder);
        expect(refused.code).toBe(2);
        expect(refused.err).toContain('small letters, digits and hyphens');
      }
    },
    SLOW_MS,
  );

  it.each([
    [['choose', 'october-by-rial'], 'october-by-rail'],
    [['choose', TRIP, '--mood', 'teracotta'], 'it has'],
    [['choose', TRIP, '--most', 'complete'], 'core or layered'],
    [['choose', TRIP, '--pieces', 'few'], 'whole number'],
    [['choose', TRIP, '--pieces', '0'], 'at least 1'],
    [['choose', TRIP, '--traveller', 'Livya'], 'write "Livia"'],
    [['choose', TRIP, '--traveller', 'Livia', '--mood', 'linen-and-ink'], 'Livia has no capsule "linen-and-ink"'],
    [['list', `${TRIP}/linen-and-ink`, '--write', 'x'], 'name the trip alone'],
    [['choose'], 'wants <trip>'],
  ])('exits with 2 and says what would be right: %j', async (args, says) => {
    const { code, err, out } = await run(args as string[], folder);
    expect(code).toBe(2);
    expect(`${err}${out}`).toContain(says);
  });

  it('exits with 1 and a clear sentence when nothing can be chosen', async () => {
    const tooLight = await run(['choose', TRIP, '--grams', '900'], folder);
    expect(tooLight.code).toBe(1);
    expect(tooLight.err).toMatch(/Even the lightest pieces that fill the list put .+ in the bags; 900 g are allowed\./);
    expect(tooLight.err).toMatch(/Allow .+ more/);
    const tooSmall = await run(['choose', TRIP, '--litres', '3'], folder);
    expect(tooSmall.code).toBe(1);
    expect(tooSmall.err).toMatch(/Even the smallest pieces that fill the list take .+; the bags hold 3 l\./);
    const tooFew = await run(['choose', TRIP, '--pieces', '5'], folder);
    expect(tooFew.code).toBe(1);
    expect(tooFew.err).toContain('at most 5 may be packed');
  });

  it('says which line cannot be filled, and that everything is left out', async () => {
    const pieces = (await readdir(path.join(folder, 'content', 'wardrobes', 'livia')))
      .filter((name) => name.endsWith('.md'))
      .map((name) => name.slice(0, -3));
    await leaveOut('nothing', pieces);
    const nothing = await run(['choose', TRIP, '--mood', 'nothing'], folder);
    expect(nothing.code, nothing.err).toBe(1);
    expect(nothing.err).toMatch(/All \d+ pieces of the wardrobe are left out or refused\./);
    const swimwear = pieces.filter((id) => /swim|bikini/.test(id));
    await leaveOut('dry', swimwear);
    const dry = await run(['choose', TRIP, '--mood', 'dry'], folder);
    expect(dry.code, dry.err).toBe(1);
    expect(dry.err).toMatch(
      /The list asks for 2 pieces under “swimwear”; none can be found\.\n.*Let in 2 of the pieces that are left out/,
    );
    expect(dry.err).not.toMatch(/\bat .*\.ts:/);
  });
});
