import { describe, expect, it } from 'vitest';
import { run } from '../cli/run.ts';
import { enter, planOf, type Written, withContent } from './written.ts';

const WARDROBE: Written['wardrobe'] = {
  shirt: ['shirt', 'white', 'wears: 2'],
  tee: ['t-shirt', 'white', 'wears: 1'],
  jumper: ['crew-neck jumper', 'grey'],
  chinos: ['chinos', 'stone'],
  jeans: ['jeans', 'navy'],
  coat: ['wool coat', 'grey'],
  rain: ['rain jacket', 'navy'],
  shoes: ['walking shoes', 'brown', 'dress: casual to smart casual', 'suits: [long walking, uneven ground, rain]'],
  loafers: ['loafers', 'brown'],
  swimsuit: ['swimsuit', 'navy'],
  bikini: ['bikini', 'black'],
};

const TRIP = [
  'title: Three days',
  'from: 2027-05-01',
  'to: 2027-05-03',
  'travellers: [{name: Ada, wardrobe: ada}]',
  'places: [{name: Graz, from: 2027-05-01, to: 2027-05-03, weather: {low: 8, high: 18}}]',
];
const INDOORS = 'where: indoors 21, activity: sitting';

const written = (occasions: readonly string[], pieces: string, ...more: readonly string[]): Written => ({
  wardrobe: WARDROBE,
  brief: [...TRIP, 'occasions:', ...occasions.map((occasion) => `  - {${occasion}}`)],
  capsule: ['title: Plain', `pieces: [${pieces}]`, ...more],
});

interface Variant extends Written {
  /** The brief's "pieces at most". */
  readonly most?: number;
}

const VARIANTS: Readonly<Record<string, Variant>> = {
  'a swim too many': written(
    [
      'what: Morning swim, on: 2027-05-02, at: "09:00", dress: casual, where: indoors 28, activity: swimming, needs: [swim]',
      'what: Evening swim, on: 2027-05-02, at: "18:00", dress: casual, where: indoors 28, activity: swimming, needs: [swim]',
    ],
    'shirt, chinos, shoes, swimsuit',
  ),
  'a shirt worn out': written(
    [
      'what: First, on: 2027-05-01, at: day, dress: casual, where: indoors 24, activity: strolling indoors',
      'what: Second, on: 2027-05-03, at: evening, dress: casual, where: indoors 24, activity: strolling indoors',
    ],
    'tee, chinos, jeans, shoes',
  ),
  'a dress code too high': written(
    [`what: Dinner, on: 2027-05-02, at: evening, dress: business, ${INDOORS}`],
    'shirt, chinos, shoes',
  ),
  'a dress code too high, and warm': written(
    ['what: Dinner, on: 2027-05-02, at: evening, dress: business, where: indoors 26, activity: sitting'],
    'shirt, chinos, shoes',
  ),
  'a pool that asks for more than swimwear': written(
    [
      'what: Baths, on: 2027-05-02, at: "09:00", dress: casual, where: indoors 28, activity: swimming, needs: [swim, knees covered]',
    ],
    'shirt, chinos, shoes, swimsuit',
  ),
  'rain, rough ground, and neither jacket nor shoes': written(
    [
      'what: Hill, on: 2027-05-02, at: day, dress: casual, where: outdoors, activity: walking, needs: [rain, uneven ground, long walking]',
    ],
    'shirt, jumper, chinos, coat, loafers',
  ),
  'rain and no coat for it': written(
    [
      'what: Hill, on: 2027-05-02, at: day, dress: casual, where: outdoors, activity: walking, needs: [rain, uneven ground]',
    ],
    'shirt, jumper, chinos, coat, shoes',
  ),
  'rain and a full bag': {
    ...written(
      [
        'what: Museum, on: 2027-05-01, at: day, dress: casual, where: indoors 24, activity: strolling indoors',
        'what: Hill, on: 2027-05-02, at: day, dress: casual, where: outdoors, activity: walking, needs: [rain, uneven ground]',
      ],
      'shirt, jumper, chinos, jeans, coat, shoes',
      'favourites:',
      '  - {title: Plain, pieces: [shirt, jeans, shoes]}',
      'never: [[coat, jumper]]',
    ),
    most: 6,
  },
  'cobbles and no shoes for them': written(
    [
      'what: Old town, on: 2027-05-02, at: day, dress: casual, where: indoors 21, activity: strolling indoors, needs: [uneven ground]',
    ],
    'shirt, chinos, jumper, loafers',
  ),
  'too cold by little': written(
    ['what: Market, on: 2027-05-02, at: "05:00", dress: casual, where: outdoors, activity: strolling'],
    'shirt, chinos, jumper, shoes',
  ),
  'too cold by two layers': {
    ...written(
      ['what: Market, on: 2027-05-02, at: "05:00", dress: casual, where: outdoors, activity: strolling'],
      'shirt, chinos, shoes',
    ),
    most: 5,
  },
  'a fixed look that is none': written(
    [`what: Museum, on: 2027-05-02, at: day, dress: casual, ${INDOORS}`],
    'shirt, tee, chinos, shoes',
    'fixed:',
    '  - {occasion: museum, pieces: [shirt, tee]}',
  ),
};

describe('mends, written as they say, serve the occasion', () => {
  const fields = new Set<string>();

  it.each(Object.keys(VARIANTS))('%s', async (name) => {
    const { most, ...plain } = VARIANTS[name] as Variant;
    const variant: Written =
      most === undefined ? plain : { ...plain, brief: [...plain.brief, `pieces at most: ${most}`] };
    const before = Object.keys((await withContent(variant, planOf)).wears).length;
    const [unserved] = (await withContent(variant, planOf)).unserved;
    expect(unserved).toBeDefined();
    expect(unserved?.mends.length).toBeGreaterThan(0);
    for (const { what, entries, serves } of unserved?.mends ?? []) {
      expect(serves).toContain(unserved?.occasion);
      // every entry is told with its file and line
      for (const { file, line, value } of entries) {
        expect(String(what)).toContain(line === undefined ? file : `${file}:${line}`);
        expect(String(what)).toContain(value);
      }
      const after = await withContent(variant, async (folder) => {
        await enter(folder, entries);
        return planOf(folder);
      });
      expect(
        after.unserved.map(({ occasion }) => occasion),
        String(what),
      ).not.toContain(unserved?.occasion);
      expect(Object.keys(after.wears).length, String(what)).toBeLessThanOrEqual(
        most ?? before + entries.filter(({ field, action }) => field === 'pieces' && action === 'add').length,
      );
      for (const { field } of entries) fields.add(field);
    }
  });

  it('a full bag gives up what is worn least and is named nowhere else', async () => {
    const { most: _, ...full } = VARIANTS['rain and a full bag'] as Variant;
    const mendIn = async (most: number): Promise<readonly string[]> => {
      const trip = { ...full, brief: [...full.brief, `pieces at most: ${most}`] };
      const [unserved] = (await withContent(trip, planOf)).unserved;
      return (
        unserved?.mends.map(({ entries }) => entries.map(({ action, value }) => `${action} ${value}`).join(', ')) ?? []
      );
    };
    expect(await mendIn(6)).toContain('add rain, take out chinos');
    expect(await mendIn(7)).toContain('add rain');
  });

  it('are first a warmer piece where warmth is lacking, two where one is not enough, and less warmth only after', async () => {
    const kindsOf = async (variant: Written): Promise<readonly string[]> => {
      const [unserved] = (await withContent(variant, planOf)).unserved;
      expect(unserved?.lacks.map(String).join()).toMatch(/not warm enough/);
      return (unserved?.mends ?? []).map(({ entries }) => entries.map(({ field }) => field).join('+'));
    };
    expect((await kindsOf(VARIANTS['too cold by little'] as Variant))[0]).toBe('pieces');
    const cold: Written['wardrobe'] = { ...WARDROBE, fleece: ['fleece jacket', 'grey'], parka: ['parka', 'navy'] };
    const bare = written(
      ['what: Market, on: 2027-05-02, at: "05:00", dress: casual, where: outdoors, activity: strolling'],
      'tee, jeans, shoes',
    );
    const kinds = await kindsOf({ ...bare, wardrobe: cold });
    expect(kinds[0]).toBe('pieces+pieces');
  });

  it('pack two pieces together where two things lack, and waive no ground', async () => {
    const variant = VARIANTS['rain, rough ground, and neither jacket nor shoes'] as Variant;
    const [unserved] = (await withContent(variant, planOf)).unserved;
    const told = unserved?.mends.map(({ entries }) => entries.map(({ action, value }) => `${action} ${value}`)) ?? [];
    expect(told[0]?.toSorted()).toEqual(['add rain', 'add shoes']);
    expect(told.flat().filter((entry) => entry.startsWith('take out'))).toEqual([]);
  });

  it('are sought for the first ten occasions, and the others say so', async () => {
    const many = written(
      Array.from({ length: 12 }, (_, index) => {
        const [day, hour] = [1 + Math.floor(index / 4), 8 + 3 * (index % 4)];
        return `what: Tea ${index}, on: 2027-05-0${day}, at: "${String(hour).padStart(2, '0')}:00", dress: formal, where: indoors 24, activity: sitting`;
      }),
      'shirt, chinos, shoes',
    );
    const { out } = await withContent(many, (folder) => run(['plan', 'trip/plain', '--content', folder]));
    expect(out).toContain('Too many occasions have no look to seek a mend for each');
    const { unserved } = await withContent(many, planOf);
    expect(unserved.map(({ untried }) => untried ?? false)).toEqual([...Array(10).fill(false), true, true]);
  });

  it('stand beside why the pieces fixed to an occasion make no look, in one sentence', async () => {
    const { out } = await withContent(VARIANTS['a fixed look that is none'] as Variant, (folder) =>
      run(['plan', 'trip/plain', '--content', folder]),
    );
    expect(out).toMatch(/^ {4}The pieces fixed to it do not make a look \(.+[^.]\)\.$/mu);
  });

  it('waive no weather, since it does not obey', async () => {
    for (const name of ['rain and no coat for it', 'rain and a full bag']) {
      const { unserved } = await withContent(VARIANTS[name] as Variant, planOf);
      const entries = unserved.flatMap(({ mends }) => mends.flatMap((mend) => mend.entries));
      expect(entries.map(({ value }) => value)).toContain('rain'); // the jacket of that name
      expect(entries.filter(({ field, value }) => field === 'needs' && value === 'rain')).toEqual([]);
    }
  });

  it('has tried every field a mend can name', () => {
    expect([...fields].sort()).toEqual(['degrees off', 'dress', 'fixed', 'needs', 'pieces', 'wash days']);
  });
});
