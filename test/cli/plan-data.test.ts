import { describe, expect, it } from 'vitest';
import { type Written, withContent } from '../plan/written.ts';
import { run } from './run.ts';

const WARDROBE: Written['wardrobe'] = {
  shirt: ['shirt', 'white', 'wears: 1', 'care: {wash: 40, dry hours: 6}'],
  jumper: ['crew-neck jumper', 'grey'],
  chinos: ['chinos', 'stone'],
  coat: ['wool coat', 'grey'],
  boots: ['lace-up boots', 'brown', 'dress: casual to smart casual'],
};
const BRIEF = [
  'title: Three days',
  'from: 2027-06-18',
  'to: 2027-06-20',
  'travellers: [{name: Ada, wardrobe: ada, feels: cold}]',
  'places: [{name: Here, from: 2027-06-18, to: 2027-06-20, at: [48.2, 16.4], time zone: Europe/Vienna, weather: {low: 8, high: 18}}]',
  'occasions:',
  '  - {what: Walk, on: 2027-06-18, at: "11:00", dress: casual, where: outdoors, activity: walking, needs: [long walking]}',
  '  - {what: Lunch, on: 2027-06-18, at: "14:00", dress: casual, where: indoors 21, activity: sitting}',
  '  - {what: Ball, on: 2027-06-19, at: evening, dress: formal, where: indoors 21, activity: dancing}',
  '  - {what: Museum, on: 2027-06-19, at: "12:00", dress: casual, where: indoors 21, activity: strolling indoors}',
  '  - {what: Breakfast, on: 2027-06-20, at: "02:00", dress: casual, where: indoors 21, activity: sitting}',
  'wash days: [2027-06-18, 2027-06-19]',
  'pieces at most: 3',
];
const CAPSULE = ['title: Plain', 'pieces: [shirt, jumper, chinos, coat, boots]'];

interface Told {
  readonly notes: readonly string[];
  readonly findings: readonly Readonly<Record<string, unknown>>[];
  readonly weakPoints: readonly { readonly what: string }[];
  readonly days: readonly {
    readonly occasions: readonly Readonly<Record<string, unknown>>[];
    readonly wash: readonly { readonly piece: string; readonly dryBy: string; readonly dryAt: string }[];
  }[];
}

/** What `plan` says of one trip, as text and as data. */
const both = (): Promise<{ readonly text: string; readonly data: Told; readonly strings: ReadonlySet<string> }> =>
  withContent({ wardrobe: WARDROBE, brief: BRIEF, capsule: CAPSULE }, async (folder) => {
    const text = (await run(['plan', 'trip/plain', '--content', folder])).out;
    const data = JSON.parse((await run(['plan', 'trip/plain', '--json', '--content', folder])).out) as Told;
    const strings = new Set<string>();
    JSON.stringify(data, (_, value: unknown) => {
      if (typeof value === 'string') strings.add(value);
      return value;
    });
    return { text, data, strings };
  });

describe('plan --json', async () => {
  const { text, data, strings } = await both();
  const lines = text.split('\n');

  it('has every finding the text prints, with its level, rule, file and line', () => {
    const printed = lines.flatMap((line) => {
      const [, level, rule, message, file, at] =
        /^(error|warning|advice) \[([\w-]+)\] (.*?)(?: \(([\w/.-]+\.md)(?::(\d+))?\))?$/u.exec(line) ?? [];
      return level === undefined
        ? []
        : [{ level, rule, message, file, ...(at === undefined ? {} : { line: Number(at) }) }];
    });
    expect(printed.map(({ rule }) => rule)).toEqual(
      expect.arrayContaining(['unserved-occasion', 'hours-overlap', 'wash-day', 'pieces-at-most']),
    );
    expect(data.findings).toHaveLength(printed.length);
    expect(data.findings).toMatchObject(printed);
    const said = lines
      .filter((line) => /^ {4}\S/u.test(line))
      .map((line) => line.trim().replace(/^(?:or|For both|For all \d+): /u, ''));
    expect(said.length).toBeGreaterThan(3);
    for (const sentence of said) expect(strings).toContain(sentence);
  });

  it('has every sentence of the days, and what is said of the whole trip', () => {
    const told = lines.flatMap((line) => (/^ {10}(\S.*)$/u.exec(line)?.[1] ?? '').match(/^[A-Z].*\.$/u) ?? []);
    const washed = told.filter((sentence) => sentence.includes('dry by'));
    expect(told.length).toBeGreaterThan(6);
    for (const sentence of told) {
      if (!washed.includes(sentence))
        expect([...strings, 'No look serves this.', 'Stay as you are.', 'Change layers only.']).toContain(sentence);
    }
    expect(data.notes.length).toBeGreaterThan(0);
    for (const note of data.notes) expect(lines).toContain(note);
    for (const { what } of data.weakPoints) expect(lines).toContain(`  ${what}`);
    expect(text).toContain('shirt, dry by 19 Jun, 4:00.');
    expect(data.days[0]?.wash).toEqual([{ piece: 'shirt', dryBy: '2027-06-19', dryAt: '04:00' }]);
  });

  it('says of each occasion what was asked, in which air, and how the look answers', () => {
    const [walk, lunch] = data.days[0]?.occasions ?? [];
    expect(walk).toMatchObject({
      what: 'Walk',
      at: '11:00',
      dress: 'casual',
      needs: ['long walking'],
      activity: 'walking',
      setting: { where: 'outdoors', sun: 'shade' },
      comfort: { activity: 'walking', where: 'outdoors' },
    });
    expect(data.days[1]?.occasions.find(({ what }) => what === 'Ball')).toMatchObject({
      part: 'evening',
      dress: 'formal',
    });
    const { comfort, required, uv, reasons, why } = walk as unknown as {
      comfort: { lowC: number; highC: number; clo: { off: number; on: number } };
      required: { minClo: number; maxClo: number; method: string };
      uv: { index: number; band: string };
      reasons: string[];
      why: { reason: string; values: Record<string, unknown> }[];
    };
    expect(reasons.join(' ')).toMatch(/Comfortable outdoors at .* while walking, layer by layer\./);
    expect(why).toHaveLength(reasons.length);
    expect(why).toContainEqual({
      reason: 'comfort/comfortable outdoors',
      values: { low: comfort.lowC, high: comfort.highC, activity: 'walking' },
    });
    // a look serves when all layers on reach the least asked for, and all off do not exceed the most
    expect(comfort.clo.on).toBeGreaterThanOrEqual(required.minClo);
    expect(comfort.clo.off).toBeLessThanOrEqual(required.maxClo);
    expect(['joined', 'ISO 11079', 'ISO 7730']).toContain(required.method);
    // noon in Vienna at midsummer. from memory: clear-sky index about 7 to 8
    expect(uv.index).toBeGreaterThan(6);
    expect(uv.index).toBe(Math.round(uv.index * 10) / 10);
    expect(['high', 'very high']).toContain(uv.band);
    expect(lunch).not.toHaveProperty('uv');
  });

  it('has no figure with more than three digits behind the point', () => {
    const long: number[] = [];
    JSON.stringify(data, (_, value: unknown) => {
      if (typeof value === 'number' && Math.abs(value * 1000 - Math.round(value * 1000)) > 1e-6) long.push(value);
      return value;
    });
    expect(long).toEqual([]);
  });
});

describe('plan', () => {
  it('keeps to what the traveller alone does not wear', async () => {
    const briefWith = (traveller: string): readonly string[] => [
      'title: A day',
      'from: 2027-06-18',
      'to: 2027-06-18',
      `travellers: [${traveller}]`,
      'places: [{name: Here, from: 2027-06-18, to: 2027-06-18, weather: {low: 12, high: 18}}]',
      'occasions: [{what: Lunch, on: 2027-06-18, at: "14:00", dress: business, where: indoors 25, activity: sitting}]',
    ];
    const wardrobe: Written['wardrobe'] = {
      shirt: ['shirt', 'white'],
      trousers: ['tailored trousers', 'navy'],
      pumps: ['pumps', 'black', 'heel cm: 8'],
    };
    const capsule = ['title: Plain', 'pieces: [shirt, trousers, pumps]'];
    const codeOf = (traveller: string) =>
      withContent(
        { wardrobe, brief: briefWith(traveller), capsule },
        async (folder) => (await run(['plan', 'trip/plain', '--content', folder])).code,
      );
    expect(await codeOf('{name: Ada, wardrobe: ada}')).toBe(0);
    expect(await codeOf('{name: Ada, wardrobe: ada, avoid: {heel cm over: 5}}')).toBe(1);
  });
});
