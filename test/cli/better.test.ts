import { cp, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { PROJECT, run } from './run.ts';

const RAIL = 'october-by-rail';
const WEDDING = 'wedding-in-the-alentejo';

describe('wayfold improve', () => {
  it('says the best swap, addition and purchase in sentences', async () => {
    const { code, out } = await run(['improve', `${RAIL}/chestnut-and-rain`]);
    expect(code).toBe(0);
    const [now, , ...rest] = out.split('\n');
    expect(now).toMatch(/^The capsule makes \d+ layered looks now\.$/);
    const said = rest.join('\n');
    expect(said).toMatch(/To swap\n {2}.+ in place of .+ makes \d+ layered looks? more\./);
    expect(said).toMatch(/To add from the wardrobe\n {2}.+ would add \d+ layered looks?\.\n {6}Good for .+/);
    expect(said).toMatch(/Worth buying\n {2}An? .+ would add \d+ layered looks?\./);
    expect(said).toMatch(/About \d+ g, estimated\./);
    expect(said).toMatch(
      /Copper slip dress, €180: €\d+\.\d\d a look \(\d+ layered looks\), €180\.00 a wear \(worn once\)\./,
    );
  });

  it('says the same as data', async () => {
    const { out } = await run(['improve', `${RAIL}/chestnut-and-rain`, '--json']);
    const told = JSON.parse(out) as {
      looks: string;
      swaps: { out: { id: string }; in: { id: string }; adds: string; says: string[] }[];
      purchases: { piece: { kind: string; status: string }; adds: string; wornFor: string[] }[];
      tried: number;
    };
    expect(Number(told.looks)).toBeGreaterThan(0);
    const [swap] = told.swaps;
    // counted anew on the capsule with the swap made, by the verb that counts
    const content = await mkdtemp(path.join(tmpdir(), 'wayfold-swap-'));
    await cp(path.join(PROJECT, 'content'), path.join(content, 'content'), { recursive: true });
    const file = path.join(content, 'content', 'trips', RAIL, 'chestnut-and-rain.md');
    const text = await readFile(file, 'utf8');
    await writeFile(file, text.replace(`  - ${swap?.out.id}\n`, `  - ${swap?.in.id}\n`));
    const counted = await run(['looks', `${RAIL}/chestnut-and-rain`, '--count', '--json'], content);
    await rm(content, { recursive: true });
    const after = (JSON.parse(counted.out) as { counts: { layered: string } }).counts.layered;
    expect(Number(after) - Number(told.looks)).toBe(Number(swap?.adds));
    for (const { piece } of told.purchases) expect(piece.status).toBe('to buy');
    expect(told.tried).toBeGreaterThan(1000);
  });
});

describe('wayfold compare', () => {
  it('sets the two moods side by side and adds them up', async () => {
    const { code, out } = await run(['compare', RAIL]);
    expect(code).toBe(0);
    expect(out).toContain('Chestnut and rain, 19 pieces');
    expect(out).toContain('Ink and rose, 19 pieces');
    expect(out).toContain('19 and 19 pieces, of which 4 are shared, make 34 pieces together.');
    expect(out).toMatch(/dress: 1\n {4}Chestnut and rain: Copper slip dress\n {4}Ink and rose: Ink knitted dress/);
    expect(out).toContain('occasions dressed: all 17');
  });

  it('says the same as data, whichever comes first', async () => {
    const told = async (...ids: string[]) =>
      JSON.parse((await run(['compare', RAIL, ...ids, '--json'])).out) as {
        sides: { id: string; counts: { layered: string } }[];
        shared: string[];
        together: { pieces: string[]; counts: { core: string }; cross: { core: string } };
      };
    const [one, two] = [await told(), await told('ink-and-rose', 'chestnut-and-rain')];
    expect(one.together.pieces).toHaveLength(34);
    expect(two.sides.map(({ id }) => id)).toEqual(one.sides.map(({ id }) => id).toReversed());
    expect(two.shared.toSorted()).toEqual(one.shared.toSorted());
    expect(two.together.counts).toEqual(one.together.counts);
    expect(two.together.cross).toEqual(one.together.cross);
  });

  it.each([
    [['compare', WEDDING], 'no two capsules of one wardrobe'],
    [['compare', RAIL, 'ink-and-rose'], 'name one more'],
    [['compare', RAIL, 'ink-and-rose', 'ink-and-rose'], 'cannot be compared with itself'],
    [['compare', RAIL, 'ink-and-rose', 'chestnut-and-rian'], 'chestnut-and-rain'],
    [['compare', WEDDING, 'linen-and-ink', 'terracotta-and-sage'], 'wayfold together'],
    [['together', RAIL], 'wayfold compare'],
    [['together', RAIL, 'ink-and-rose', 'chestnut-and-rain'], 'both for Nora'],
    [['together', WEDDING, 'linen-and-imk'], 'linen-and-ink'],
    [['improve', RAIL], 'write "october-by-rail/chestnut-and-rain"'],
    [['list', 'october-by-rial'], 'october-by-rail'],
  ])('exits with 2 and says what would be right: %j', async (args, says) => {
    const { code, err } = await run(args as string[]);
    expect(code).toBe(2);
    expect(err).toContain(says);
  });
});

describe('wayfold together', () => {
  it('sets the travellers side by side, day by day, with what they lend and carry', async () => {
    const { code, out } = await run(['together', WEDDING]);
    expect(code).toBe(0);
    expect(out).toMatch(/^Jonas and Livia: at \d of 8 occasions their looks sit well together\./);
    expect(out).toContain('\nShown: “Linen and ink” for Jonas and “Terracotta and sage” for Livia.\n');
    expect(out).toMatch(/Saturday 12 June\n {2}Pool before the heat \(Jonas and Livia\): sits well/);
    expect(out).toContain('The bags together');
    expect(out).toMatch(/Together [\d.]+ kg of 16 kg: room for [\d.]+ kg more\./);
    expect(out).toContain('the carrier’s own rule');
  });

  it('packs a bag that the brief says is shared as one, with one limit', async () => {
    const content = await mkdtemp(path.join(tmpdir(), 'wayfold-shared-'));
    await cp(path.join(PROJECT, 'content'), path.join(content, 'content'), { recursive: true });
    const file = path.join(content, 'content', 'trips', WEDDING, 'brief.md');
    const shared = 'bags:\n  - {name: Suitcase, role: hold, kg: 23, own kg: 4, shared by: [Livia, Jonas]}\n';
    await writeFile(file, (await readFile(file, 'utf8')).replace('bags:\n', shared));
    const { out, code } = await run(['together', WEDDING], content);
    const alone = await run(['bag', `${WEDDING}/linen-and-ink`], content);
    await rm(content, { recursive: true });
    expect(code).toBe(0);
    expect(out).toMatch(/(Livia and Jonas|Jonas and Livia), Suitcase, shared: [\d.]+ kg.* of 23 kg\./);
    expect(out).toMatch(/Together [\d.]+ kg of 39 kg: room for [\d.]+ kg more\./);
    expect(alone.out).toContain(
      'Suitcase is packed by Livia and Jonas together; the figures here are for one equal share',
    );
  });

  it('says the same as data', async () => {
    const told = JSON.parse((await run(['together', WEDDING, '--json'])).out) as {
      days: { goes: boolean; reasons: string[] }[];
      bags: { bags: { grams: { value: number }; gramsAtMost?: number }[]; grams: { value: number } };
    };
    expect(told.days).toHaveLength(8);
    for (const { reasons } of told.days) expect(reasons.length).toBeGreaterThan(0);
    const limited = told.bags.bags.filter(({ gramsAtMost }) => gramsAtMost !== undefined);
    expect(told.bags.grams.value).toBeCloseTo(
      limited.reduce((sum, { grams }) => sum + grams.value, 0),
      6,
    );
  });
});

describe('wayfold list', () => {
  let folder: string;
  beforeAll(async () => {
    folder = await mkdtemp(path.join(tmpdir(), 'wayfold-list-'));
    await cp(path.join(PROJECT, 'content'), path.join(folder, 'content'), { recursive: true });
  });
  afterAll(() => rm(folder, { recursive: true, force: true }));

  it('prints a list that can be saved and read as it is, each line with its reason', async () => {
    const before = await readdir(path.join(folder, 'content', 'lists'));
    const { code, out } = await run(['list', RAIL], folder);
    expect(code).toBe(0);
    expect(out).toContain(
      '  # There is swimming twice on this trip, too close together for one to dry: two, so that one dries while the other is worn.\n  - what: "swimwear"',
    );
    expect(await readdir(path.join(folder, 'content', 'lists'))).toEqual(before);
    await writeFile(path.join(folder, 'content', 'lists', 'from-the-trip.md'), out);
    const capsule = path.join(folder, 'content', 'trips', RAIL, 'ink-and-rose.md');
    await writeFile(capsule, (await readFile(capsule, 'utf8')).replace('list: rail-in-autumn', 'list: from-the-trip'));
    const checked = await run(['check', RAIL], folder);
    expect(checked.code).toBe(0);
    expect(checked.out).toContain('[list-underfilled] The list asks for 2 pieces under “layers”; there is 1.');
  });

  it('says the same as data', async () => {
    const { lines } = JSON.parse((await run(['list', WEDDING, '--json'])).out) as {
      lines: { what: string; count: number; why: string }[];
    };
    expect(lines.find(({ what }) => what === 'tops')).toMatchObject({ count: 3 });
    for (const { why } of lines) expect(why).not.toBe('');
  });

  it('lays a capsule beside its list, line by line', async () => {
    const { code, out } = await run(['list', `${RAIL}/ink-and-rose`]);
    expect(code).toBe(0);
    expect(out).toContain('dress: 1\n    Ink knitted dress\n');
    expect(out).not.toContain('[list-');
    const { lines, filled } = JSON.parse((await run(['list', `${RAIL}/ink-and-rose`, '--json'])).out) as {
      lines: { wanted: number; pieces: string[] }[];
      filled: boolean;
    };
    expect(filled).toBe(true);
    for (const { wanted, pieces } of lines) expect(pieces).toHaveLength(wanted);
    expect((await run(['list', `${RAIL}/ink-and-rsoe`])).err).toContain('ink-and-rose');
  });
});
