import { converter } from 'culori';
import { paletteReport } from '../../lib/colour/index.ts';
import type { Guide, GuideLook } from '../../lib/guide/record.ts';
import type {
  Brief,
  Look,
  LookComfort,
  Measure,
  NamedColour,
  Occasion,
  PackedPiece,
  PackedSundry,
  Packing,
  Piece,
  Plan,
  PlannedDay,
  PlannedOccasion,
  Studio,
  Sundry,
  WornPiece,
} from '../../lib/model/index.ts';
import { KINDS, type KindId, type Slot } from '../../lib/vocabulary/index.ts';
import { phrase } from '../../lib/words/index.ts';

const oklch = converter('oklch');

const colour = (name: string, hex: string): NamedColour => {
  const { l, c, h } = oklch(hex) ?? { l: 0, c: 0, h: 0 };
  return { name, hex, oklch: { l, c, h: h ?? 0 } };
};

const measure = (value: number, basis: Measure['basis'] = 'given'): Measure => ({
  value,
  low: basis === 'given' ? value : Math.round(value * 0.85),
  high: basis === 'given' ? value : Math.round(value * 1.15),
  basis,
  source: basis === 'given' ? 'entered by the stylist' : 'the kind',
});

const RUST = colour('rust', '#9e4527');
const NAVY = colour('navy', '#2b3a5c');
const ECRU = colour('ecru', '#e6dcc4');
const CHARCOAL = colour('charcoal', '#3d4046');
const GREEN = colour('bottle green', '#1f4d3a');
const OXBLOOD = colour('oxblood', '#6e1f2a');
const BROWN = colour('chestnut', '#5b3526');
const GOLD = colour('gold', '#b08d3c');
const ROSE = colour('old rose', '#b98382');

const piece = (
  id: string,
  name: string,
  kind: KindId,
  main: NamedColour,
  more: Partial<Piece> & { weighed?: boolean } = {},
): Piece => {
  const { weighed = true, ...rest } = more;
  const known = KINDS[kind];
  const basis = weighed ? 'given' : 'estimated';
  return {
    file: `wardrobes/ada/${id}.md`,
    id,
    wardrobe: 'ada',
    name,
    kind,
    places: known.places,
    ...(known.site === undefined ? {} : { site: known.site }),
    colours: [{ ...main, share: 1 }],
    pattern: { type: 'plain', scale: 'small' },
    cut: known.cut,
    length: known.length,
    heelCm: known.heelCm,
    fabric: known.fabric,
    fabricText: known.fabric,
    grams: measure(known.grams[0], basis),
    litres: measure(known.litres, 'estimated'),
    clo: measure(known.clo[0]),
    dress: { low: 0, high: 2 },
    covers: known.covers,
    suits: known.suits,
    care: { wash: 30, dryHours: measure(known.dryHours, 'estimated') },
    wears: measure(known.wears[0]),
    status: 'owned',
    statement: false,
    note: '',
    estimated: weighed ? [] : ['grams'],
    ...rest,
  };
};

export const PIECES: readonly Piece[] = [
  piece('coat', 'Herringbone wool coat', 'wool coat', CHARCOAL, {
    pattern: { type: 'herringbone', scale: 'small' },
    note: 'Wear it open on the platform. *Collar up* only in wind.',
  }),
  piece('overshirt', 'Rust corduroy overshirt', 'overshirt', RUST, {
    note: 'The hardest worker of the bag: a layer by day, a shirt at dinner.',
  }),
  piece('roll-neck', 'Ecru ribbed roll-neck', 'roll-neck', ECRU),
  piece('navy-roll-neck', 'Navy fine roll-neck', 'fine roll-neck', NAVY),
  piece('boat-neck', 'Striped boat-neck top', 'boat-neck top', ECRU, {
    colours: [
      { ...ECRU, share: 0.7 },
      { ...NAVY, share: 0.3 },
    ],
    pattern: { type: 'stripe', scale: 'medium' },
  }),
  piece('tee', 'Oatmeal long-sleeved tee', 'long-sleeved tee', ECRU, { weighed: false }),
  piece('silk-blouse', 'Old rose silk blouse', 'blouse', ROSE),
  piece('trousers', 'Charcoal wide trousers', 'wide trousers', CHARCOAL),
  piece('navy-trousers', 'Navy twill trousers', 'tailored trousers', NAVY, { weighed: false }),
  piece('pleated-skirt', 'Bottle green pleated midi skirt', 'pleated skirt', GREEN, {
    note: 'Hang it in the bathroom while you shower; the pleats fall back.',
  }),
  piece('satin-skirt', 'Satin slip skirt', 'maxi skirt', GREEN),
  piece('slip-dress', 'Rose bias slip dress', 'slip dress', ROSE),
  piece('boots', 'Chestnut ankle boots', 'ankle boots', BROWN),
  piece('loafers', 'Dark penny loafers', 'loafers', CHARCOAL),
  piece('pumps', 'Oxblood pumps', 'pumps', OXBLOOD),
  piece('tote', 'Tan leather tote', 'tote', BROWN),
  piece('flap-bag', 'Oxblood evening bag', 'flap bag', OXBLOOD, { weighed: false }),
  piece('hoops', 'Gold hoops', 'hoop earrings', GOLD),
  piece('neckerchief', 'Printed silk neckerchief', 'neckerchief', NAVY, {
    pattern: { type: 'floral', scale: 'small' },
  }),
  piece('beret', 'Navy felt beret', 'beret', NAVY),
];

const STUDIO: Studio = {
  name: 'Atelier Vorderlage',
  line: 'Dressing for journeys',
  language: 'en-GB',
  temperature: 'C',
  length: 'cm',
  weight: 'kg',
  paper: 'A4',
  looksShown: 24,
  note: '',
};

const sundry = (
  name: string,
  group: Sundry['group'],
  count: number,
  gramsEach: number,
  more: Partial<Sundry> = {},
): Sundry => ({
  name,
  group,
  count,
  gramsEach,
  litresEach: 0.1,
  basis: 'estimated',
  ...more,
});

const packed = (of: Sundry): PackedSundry => ({ sundry: of, grams: measure(of.count * of.gramsEach, of.basis) });

const CASE_THINGS: readonly Sundry[] = [
  sundry('Knickers', 'underthings', 7, 30),
  sundry('Bras', 'underthings', 2, 70),
  sundry('Socks, pairs', 'underthings', 5, 50),
  sundry('Tights', 'underthings', 2, 55),
  sundry('Pyjamas', 'underthings', 1, 320),
  sundry('Toothbrush and floss', 'wash bag', 1, 40, { basis: 'given' }),
  sundry('Hairbrush', 'wash bag', 1, 90, { basis: 'given' }),
  sundry('Soap bar for laundry', 'wash bag', 1, 60, { basis: 'given' }),
];

const DAY_THINGS: readonly Sundry[] = [
  sundry('Passport', 'papers', 1, 45, { basis: 'given' }),
  sundry('Rail tickets, printed', 'papers', 4, 5, { basis: 'given' }),
  sundry('Cards and coins', 'papers', 1, 120),
  sundry('Charger and lead', 'electrics', 1, 140, { basis: 'given' }),
  sundry('Power bank', 'electrics', 1, 210, { basis: 'given', spareBattery: true, wattHours: 37 }),
  sundry('Medicine pouch', 'medicines', 1, 120),
  sundry('Toothpaste', 'liquids', 1, 95, { millilitres: 75, basis: 'given' }),
  sundry('Shampoo', 'liquids', 1, 118, { millilitres: 100, basis: 'given' }),
  sundry('Face cream', 'liquids', 1, 92, { millilitres: 50, basis: 'given' }),
  sundry('Sun cream', 'liquids', 1, 70, { millilitres: 50, basis: 'given' }),
  sundry('Foundation', 'liquids', 1, 64, { millilitres: 30, basis: 'given' }),
];

const WEATHER = { lowC: 8, highC: 13, windMs: 3, humidityPercent: 78, rainPercent: 30, source: 'monthly normal' };

const occasion = (on: string, what: string, part: Occasion['part'], more: Partial<Occasion> = {}): Occasion => ({
  id: `${on}-${what.toLowerCase().replaceAll(/[^a-z]+/g, '-')}`,
  what,
  on,
  part,
  dress: 'smart casual',
  setting: { where: 'outdoors', sun: 'shade' },
  activity: 'walking',
  needs: [],
  transit: false,
  travellers: [],
  ...more,
});

export const OCCASIONS: readonly Occasion[] = [
  occasion('2027-10-02', 'Night train to Vienna', 'day', { transit: true, at: '07:55' }),
  occasion('2027-10-02', 'Supper near the hotel', 'evening'),
  occasion('2027-10-03', 'Two museums and the long park', 'day'),
  occasion('2027-10-03', 'Chamber concert', 'evening', { dress: 'cocktail', at: '19:30' }),
  occasion('2027-10-04', 'Coffee house and covered market', 'day'),
  occasion('2027-10-05', 'Train to Ljubljana', 'morning', { transit: true, at: '08:25' }),
  occasion('2027-10-05', 'Soup by the river', 'evening'),
  occasion('2027-10-06', 'Hill walk in rain', 'day', { dress: 'casual', needs: ['uneven ground', 'rain'] }),
  occasion('2027-10-07', 'Thermal baths', 'day', { dress: 'casual' }),
  occasion('2027-10-07', 'Reading at the bookshop', 'evening'),
  occasion('2027-10-08', 'Train to Trieste', 'morning', { transit: true, at: '10:10' }),
  occasion('2027-10-08', 'Family dinner', 'evening', { dress: 'business' }),
  occasion('2027-10-09', 'Vineyard lunch', 'day'),
  occasion('2027-10-10', 'Train home', 'day', { transit: true, at: '09:20' }),
];

const JOURNEYS = OCCASIONS.filter(({ transit }) => transit).map(({ on }) => on);

const BRIEF: Brief = {
  file: 'trips/rail/brief.md',
  id: 'rail',
  title: 'Vienna, Ljubljana, Trieste',
  from: '2027-10-02',
  to: '2027-10-10',
  travellers: [{ name: 'Ada', wardrobe: 'ada' }],
  places: [
    {
      name: 'Vienna',
      from: '2027-10-02',
      to: '2027-10-05',
      at: { latitude: 48.21, longitude: 16.37 },
      weather: WEATHER,
      days: {},
    },
    { name: 'Ljubljana', from: '2027-10-05', to: '2027-10-08', weather: { ...WEATHER, rainPercent: 70 }, days: {} },
    {
      name: 'Trieste',
      from: '2027-10-08',
      to: '2027-10-10',
      weather: { ...WEATHER, lowC: 11, highC: 17, rainPercent: 10 },
      days: {},
    },
  ],
  occasions: OCCASIONS,
  bags: [],
  washDays: ['2027-10-05', '2027-10-07'],
  piecesAtMost: 20,
  avoid: { colours: [], fabrics: [] },
  cautions: ['Allergic to lanolin: no untreated wool against the skin.'],
  introduction: 'Nine days by rail through three cities, in the wet and golden part of October.',
};

const slotOf = (of: Piece): Slot => {
  const place = of.places[0] ?? 'top';
  return place === 'jewellery' ? `jewellery ${of.site ?? 'ears'}` : place;
};

const lookOf = (pieces: readonly Piece[], ids: readonly string[]): Look => {
  const worn = ids.map((id): WornPiece => {
    const found = pieces.find((candidate) => candidate.id === id);
    if (found === undefined) throw new Error(`no piece ${id}`);
    return { piece: id, slot: id === 'overshirt' ? 'mid layer' : slotOf(found) };
  });
  return { id: ids.join('+'), worn };
};

const COMFORT: LookComfort = {
  activity: 'walking',
  where: 'outdoors',
  clo: { off: 0.8, on: 1.4 },
  lowC: 6,
  highC: 17,
  steps: [],
};

const LOOKS: readonly (readonly [title: string, ids: readonly string[]])[] = [
  ['Window seat', ['roll-neck', 'trousers', 'coat', 'boots', 'tote', 'hoops']],
  ['Museum steps', ['boat-neck', 'navy-trousers', 'overshirt', 'loafers', 'tote', 'neckerchief']],
  ['Chamber music', ['slip-dress', 'coat', 'pumps', 'flap-bag', 'hoops']],
  ['Covered market', ['tee', 'pleated-skirt', 'coat', 'boots', 'neckerchief']],
  ['Over the pass', ['roll-neck', 'navy-trousers', 'boots', 'beret']],
  ['Up the hill', ['navy-roll-neck', 'navy-trousers', 'overshirt', 'boots', 'beret']],
  ['Quiet rooms', ['boat-neck', 'trousers', 'overshirt', 'loafers']],
  ['Dinner with everyone', ['silk-blouse', 'satin-skirt', 'pumps', 'flap-bag', 'hoops']],
  ['Vines', ['silk-blouse', 'navy-trousers', 'overshirt', 'loafers', 'neckerchief']],
  ['Homeward', ['roll-neck', 'trousers', 'coat', 'boots']],
  ['Second coffee', ['navy-roll-neck', 'pleated-skirt', 'boots', 'tote']],
  ['Evening rain', ['navy-roll-neck', 'satin-skirt', 'coat', 'pumps', 'hoops']],
];

const PLAN_LOOKS = [0, 0, 1, 2, 3, 4, 4, 5, 6, 6, 0, 7, 8, 9];

const planOf = (pieces: readonly Piece[], looks: readonly GuideLook[]): Plan => {
  const wears: Record<string, number> = {};
  const dates = [...new Set(OCCASIONS.map(({ on }) => on))];
  const days = dates.map((date): PlannedDay => {
    const stay = BRIEF.places.filter(({ from, to }) => from <= date && date <= to).at(-1);
    let before: Look | undefined;
    const occasions = OCCASIONS.flatMap((planned, index): readonly PlannedOccasion[] => {
      if (planned.on !== date) return [];
      const look = looks[(PLAN_LOOKS[index] ?? 0) % Math.max(1, looks.length)]?.look;
      const change =
        look === undefined || before === undefined ? 'first' : before.id === look.id ? 'goes on' : 'changes clothes';
      before = look;
      for (const { piece: id } of change === 'goes on' ? [] : (look?.worn ?? [])) wears[id] = (wears[id] ?? 0) + 1;
      const layers = (look?.worn ?? [])
        .filter(({ slot }) => slot === 'outer layer' || slot === 'mid layer')
        .map(({ piece: id }) => id);
      return [
        {
          occasion: planned.id,
          ...(look === undefined ? {} : { look }),
          layersOn: planned.part === 'evening' ? [] : layers,
          layersCarried: planned.part === 'evening' ? layers : [],
          change,
          airC: { low: 8, high: 13 },
          ...(planned.part === 'day' ? { uvIndex: 3 } : {}),
          reasons: [],
          cautions: [],
        },
      ];
    });
    return {
      date,
      ...(stay === undefined ? {} : { place: stay.name }),
      ...(stay?.weather === undefined ? {} : { weather: stay.weather }),
      occasions,
      wash: BRIEF.washDays.includes(date) ? [{ piece: pieces[2]?.id ?? '', dryBy: '2027-10-07', dryAt: '18:00' }] : [],
    };
  });
  return {
    traveller: 'Ada',
    days: looks.length === 0 ? [] : days,
    served: OCCASIONS.length,
    of: OCCASIONS.length,
    proven: true,
    unserved: [],
    weakPoints: [],
    wears,
  };
};

const WORN_FIRST = ['coat', 'roll-neck', 'trousers', 'boots', 'hoops'];

const packPiece = (of: Piece): PackedPiece => ({
  piece: of.id,
  group: KINDS[of.kind].group,
  grams: of.grams,
  litres: of.litres,
  wornOn:
    of.id === 'boots'
      ? JOURNEYS
      : WORN_FIRST.includes(of.id)
        ? [JOURNEYS[0] ?? '', JOURNEYS[3] ?? '']
        : of.id === 'navy-trousers' || of.id === 'beret'
          ? [JOURNEYS[1] ?? '']
          : [],
  fold: 'fold',
});

const total = (parts: readonly Measure[], own: number): Measure => ({
  value: own + parts.reduce((sum, { value }) => sum + value, 0),
  low: own + parts.reduce((sum, { low }) => sum + low, 0),
  high: own + parts.reduce((sum, { high }) => sum + high, 0),
  basis: 'estimated',
  source: 'added up',
});

const packingOf = (pieces: readonly Piece[], caseThings: readonly Sundry[], dayThings: readonly Sundry[]): Packing => {
  const worn = pieces
    .filter(({ id }) => WORN_FIRST.includes(id))
    .map((one): PackedPiece => ({ ...packPiece(one), fold: 'wear' }));
  const inBag = pieces.filter(({ id }) => !WORN_FIRST.includes(id) && id !== 'tote').map(packPiece);
  const tote = pieces.filter(({ id }) => id === 'tote').map(packPiece);
  const caseSundries = caseThings.map(packed);
  const daySundries = dayThings.map(packed);
  const suitcase = {
    name: 'Cabin case',
    role: 'cabin',
    cm: [55, 40, 23],
    litres: 38,
    ownGrams: 2600,
    limitKg: 10,
  } as const;
  const dayBag = { name: 'Day bag', role: 'personal', litres: 12, ownGrams: 500 } as const;
  return {
    bags: [
      {
        bag: suitcase,
        pieces: inBag,
        sundries: caseSundries,
        grams: total(
          [...inBag, ...caseSundries].map(({ grams }) => grams),
          suitcase.ownGrams,
        ),
        litres: measure(30, 'estimated'),
      },
      {
        bag: dayBag,
        pieces: tote,
        sundries: daySundries,
        grams: total(
          [...tote, ...daySundries].map(({ grams }) => grams),
          dayBag.ownGrams,
        ),
        litres: measure(6, 'estimated'),
      },
    ],
    worn,
    wornGrams: total(
      worn.map(({ grams }) => grams),
      0,
    ),
    weighedShare: 0.7,
    notes: [],
  };
};

export interface GuideChanges {
  readonly pieces?: readonly Piece[];
  readonly brief?: Partial<Brief>;
  readonly studio?: Partial<Studio>;
  readonly caseThings?: readonly Sundry[];
  readonly dayThings?: readonly Sundry[];
  /** Number of looks in the lookbook. */
  readonly looks?: number;
}

const guideLooks = (pieces: readonly Piece[], count: number): readonly GuideLook[] => {
  const ids = new Set(pieces.map(({ id }) => id));
  const possible = LOOKS.filter(([, worn]) => worn.every((id) => ids.has(id)));
  return Array.from({ length: possible.length === 0 ? 0 : count }, (_, index): GuideLook => {
    const [title, worn] = possible[index % possible.length] ?? ['', []];
    return {
      number: index + 1,
      slug: `look-${String(index + 1).padStart(2, '0')}`,
      title: phrase('guide', 'as written', { text: index < possible.length ? title : `${title}, again` }),
      look: lookOf(pieces, worn),
      dress: { low: 0, high: 2 },
      outdoors: COMFORT,
      indoors: { ...COMFORT, where: 'indoors', lowC: 18, highC: 23 },
      occasions: [],
      favourite: false,
      wearIt: [],
      note:
        index % 3 === 0
          ? 'Sleeves turned **once**, the front half tucked. Shoes first in the case, heels to the corners.'
          : '',
      hardToTell: [],
      neighbours: [],
      swaps: [],
      outInShort: [],
    };
  });
};

const NOTHING = { value: 0, low: 0, high: 0, basis: 'given', source: '' } as const;

/** A guide from hand-written records: twenty pieces, nine days, four journeys, two washes. */
export const makeGuide = (changes: GuideChanges = {}): Guide => {
  const pieces = changes.pieces ?? PIECES;
  const looks = guideLooks(pieces, changes.looks ?? 24);
  const plan = planOf(pieces, looks);
  return {
    id: 'rail/autumn',
    studio: { ...STUDIO, ...changes.studio },
    brief: { ...BRIEF, ...changes.brief },
    capsule: {
      file: 'trips/rail/autumn.md',
      id: 'autumn',
      trip: 'rail',
      title: 'Rust and ink',
      traveller: 'Ada',
      wardrobe: 'ada',
      list: 'nine-days',
      mood: { palette: [RUST, NAVY, ECRU, GREEN, OXBLOOD], words: ['warm', 'quiet', 'a little academic'] },
      pieces: pieces.map(({ id }) => id),
      never: [],
      always: [],
      favourites: [],
      fixed: [],
      rules: {},
      rationale:
        'Two neutrals carry the week, navy and charcoal; rust warms them and bottle green gives them depth.\n\nEverything goes with the boots. The coat is worn, never packed.\n\n- One roll-neck dries while the other is worn.\n- The slip dress is also a skirt under a knit.',
    },
    pieces,
    accent: { light: '#9e4527', dark: '#d98b6a' },
    counts: { core: 31n, layered: 118n, complete: 2148n },
    looks,
    pairs: [],
    earnings: pieces.map(({ id }) => ({
      piece: id,
      layeredLooks: 12n,
      completeLooks: 120n,
      shownIn: [1],
      wears: plan.wears[id] ?? 0,
    })),
    palette: paletteReport(pieces),
    plan,
    packing: packingOf(pieces, changes.caseThings ?? CASE_THINGS, changes.dayThings ?? DAY_THINGS),
    bagReport: {
      fits: true,
      proven: true,
      grams: NOTHING,
      litres: NOTHING,
      measuredShare: 1,
      loads: [],
      worth: [],
      leaveOut: { steps: [], fits: true },
      front: { points: [], proven: true },
      lighter: [],
      transit: [],
    },
    findings: [],
  };
};
