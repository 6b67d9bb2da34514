import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { coloursToBuy, type ImproveQuestion, improve, thingsToBuy } from '../../lib/capsule/index.ts';
import { parseColour } from '../../lib/colour/index.ts';
import type { NamedColour, PackingListPlan, Piece, Plan } from '../../lib/model/index.ts';
import { createWardrobeEngine } from '../../lib/outfit/index.ts';
import { momentsOf } from '../../lib/plan/index.ts';
import { CUTS, KINDS, type KindId } from '../../lib/vocabulary/index.ts';
import { oracleLooks } from '../outfit/oracle.ts';
import { pieceOf } from '../outfit/wardrobe.ts';
import { brief, occasion, weather } from '../plan/trip.ts';

const colour = (name: string): NamedColour => {
  const found = parseColour(name);
  if (found === undefined) throw new Error(name);
  return found;
};
const list = (...lines: readonly (readonly [string, number, readonly KindId[]])[]): PackingListPlan => ({
  id: 'list',
  file: '',
  title: 'List',
  note: '',
  lines: lines.map(([what, count, kinds]) => ({ what, count, kinds })),
});
const TOPS: readonly KindId[] = ['t-shirt', 'shirt', 'crew-neck jumper'];
const BOTTOMS: readonly KindId[] = ['chinos', 'midi skirt', 'wide trousers'];
const LAYERS: readonly KindId[] = ['cardigan', 'denim jacket', 'trench coat'];
const LIST = list(['tops', 3, TOPS], ['bottoms', 2, BOTTOMS], ['layers', 1, LAYERS]);

const pieces: readonly Piece[] = [
  pieceOf('white-t-shirt', 't-shirt', 'white'),
  pieceOf('rust-shirt', 'shirt', 'rust'),
  pieceOf('striped-shirt', 'shirt', ['white', 'navy'], { pattern: { type: 'stripe', scale: 'small' } }),
  pieceOf('navy-chinos', 'chinos', 'navy'),
  pieceOf('check-skirt', 'midi skirt', ['camel', 'navy'], { pattern: { type: 'check', scale: 'small' } }),
  pieceOf('denim-jacket', 'denim jacket', 'denim'),
  pieceOf('trainers', 'trainers', 'white'),
];
const others: readonly Piece[] = [
  pieceOf('plum-shirt', 'shirt', 'plum'),
  pieceOf('grey-jumper', 'crew-neck jumper', 'mid grey'),
  pieceOf('wide-trousers', 'wide trousers', 'charcoal'),
  pieceOf('green-cardigan', 'cardigan', 'bottle green'),
  pieceOf('camel-trench', 'trench coat', 'camel'),
  pieceOf('loafers', 'loafers', 'black'),
];
const ask: ImproveQuestion = {
  brief: brief(),
  traveller: 'Ada',
  pieces,
  wardrobe: [...pieces, ...others],
  list: LIST,
  palette: [],
  rules: {},
};

/** Layered looks by plain nested loops, without the engine. */
const looksOf = (some: readonly Piece[]): number =>
  oracleLooks({ pieces: some, rules: {}, never: [], always: [] }, 'layered', {}).length;
const onOneLine = (a: Piece, b: Piece): boolean =>
  LIST.lines.some(({ kinds }) => kinds.includes(a.kind) && kinds.includes(b.kind));
/** Owned already: the same kind, plain or not, by the name of its colour. */
const isOwned = ({ kind, pattern, colours: [ground] }: Piece): boolean =>
  [...pieces, ...others].some(
    (own) => own.kind === kind && own.pattern.type === pattern.type && own.colours[0]?.name === ground?.name,
  );
const swapped = (out: Piece, inn: Piece): readonly Piece[] => [...pieces.filter((piece) => piece !== out), inn];

describe('improving a capsule', () => {
  const found = improve(ask);
  const before = looksOf(pieces);

  it('counts the looks there are as nested loops do', () => {
    expect(found.looks).toBe(BigInt(before));
  });

  it('finds the best swap that trying every swap finds', () => {
    const tried = pieces.flatMap((out) =>
      others.filter((inn) => onOneLine(out, inn)).map((inn) => looksOf(swapped(out, inn)) - before),
    );
    expect(Number(found.swaps[0]?.adds)).toBe(Math.max(...tried));
    for (const { out, in: inn, adds } of found.swaps) expect(Number(adds)).toBe(looksOf(swapped(out, inn)) - before);
  });

  it('finds the best addition that trying every piece finds, and leaves out none that adds a look', () => {
    const tried = others.map((piece) => ({ id: piece.id, adds: looksOf([...pieces, piece]) - before }));
    const worth = tried.filter(({ adds }) => adds > 0).toSorted((a, b) => b.adds - a.adds);
    expect(found.additions.map(({ adds }) => Number(adds))).toEqual(worth.slice(0, 5).map(({ adds }) => adds));
    for (const { piece, adds } of found.additions)
      expect(worth.find(({ id }) => id === piece.id)?.adds).toBe(Number(adds));
  });

  it('finds the best purchase that pricing every thing of the grid one by one finds', () => {
    const grid = thingsToBuy(ask).map((things) => things.filter((thing) => !isOwned(thing)));
    const priced = grid.map((things) =>
      Math.max(
        ...things.map((thing) =>
          Number(
            createWardrobeEngine({ pieces: [...pieces, thing], rules: {}, never: [], always: [] }).count({
              pieces: [thing.id],
            }).layered,
          ),
        ),
      ),
    );
    expect(found.tried).toBe(grid.flat().length);
    const best = priced.toSorted((a, b) => b - a).slice(0, 5);
    expect(found.purchases.map(({ adds }) => Number(adds)).toSorted((a, b) => b - a)).toEqual(best);
    for (const { piece, adds } of found.purchases) expect(Number(adds)).toBe(looksOf([...pieces, piece]) - before);
    expect(new Set(found.purchases.map(({ piece }) => piece.kind)).size).toBe(found.purchases.length);
  });

  it('offers nothing to buy that is owned in the same kind, pattern and colour or nearly', () => {
    const navyOnly = { ...ask, palette: [colour('navy')], list: list(['bottoms', 2, ['chinos']]) };
    const offered = improve(navyOnly).purchases.flatMap(({ piece, alsoIn }) => [piece.colours[0], ...alsoIn]);
    expect(offered.length).toBeGreaterThan(0);
    expect(offered.map((each) => each?.name)).not.toContain('navy');
    const without = pieces.filter(({ id }) => id !== 'navy-chinos');
    const bought = improve({ ...navyOnly, pieces: without, wardrobe: without }).purchases;
    expect(bought.flatMap(({ piece, alsoIn }) => [piece.colours[0], ...alsoIn]).map((each) => each?.name)).toContain(
      'navy',
    );
  });

  it('swaps nothing for a thinner piece on a cold trip', () => {
    const cloth = pieceOf('thermal', 'thermal top', 'ecru');
    const tee = pieceOf('bright-tee', 't-shirt', 'rust');
    const own = [cloth, ...pieces.filter(({ kind }) => kind !== 'shirt')];
    const tops = list(['tops', 1, ['thermal top', 't-shirt']]);
    // the thermal top is kept from one bottom: the T-shirt makes more looks
    const never = [['thermal', 'navy-chinos']];
    const swapsAt = (lowC: number) => {
      const [place] = brief().places;
      if (place === undefined) throw new Error('no place');
      const trip = brief({ places: [{ ...place, weather: weather(lowC, lowC + 6) }] });
      return improve({ ...ask, brief: trip, pieces: own, wardrobe: [...own, tee], list: tops, never }).swaps;
    };
    expect(swapsAt(14).some(({ out, in: inn }) => out.id === 'thermal' && inn.id === 'bright-tee')).toBe(true);
    expect(swapsAt(-3).some(({ out }) => out.id === 'thermal')).toBe(false);
  });

  it('says what of the wardrobe does as much as a purchase, and puts what must be bought first', () => {
    const instead = found.purchases.map((purchase) => purchase.instead);
    expect(instead.some((other) => other !== undefined)).toBe(true);
    expect(instead.indexOf(undefined) <= 0 || instead.every((other) => other !== undefined)).toBe(true);
    for (const { adds, instead: other } of found.purchases) if (other) expect(other.adds >= adds).toBe(true);
  });

  it('offers every other colour that adds as many, and only those', () => {
    const [purchase] = found.purchases;
    if (purchase === undefined) throw new Error('no purchase');
    const { piece, adds, alsoIn } = purchase;
    const same = thingsToBuy(ask)
      .flat()
      .filter(
        ({ kind, pattern, cut }) => kind === piece.kind && pattern.type === piece.pattern.type && cut === piece.cut,
      )
      .filter((thing) => !isOwned(thing) && looksOf([...pieces, thing]) - before === Number(adds))
      .map(({ colours: [ground] }) => ground?.name);
    expect([piece.colours[0]?.name, ...alsoIn.map(({ name }) => name)].toSorted()).toEqual(same.toSorted());
  });

  it('prefers a colour of the mood where several do as well', () => {
    const [purchase] = improve({ ...ask, palette: [colour('rust'), colour('sage')], wardrobe: pieces }).purchases;
    expect(['rust', 'sage']).toContain(purchase?.piece.colours[0]?.name);
  });

  it('agrees with nested loops on any wardrobe', () => {
    const kinds = fc.constantFrom<KindId>(
      'shirt',
      't-shirt',
      'cardigan',
      'chinos',
      'midi skirt',
      'slip dress',
      'trench coat',
    );
    const names = fc.constantFrom('white', 'navy', 'rust', 'bottle green', 'plum', 'camel');
    const wardrobes = fc
      .array(fc.tuple(kinds, names), { minLength: 4, maxLength: 8 })
      .map((made) => made.map(([kind, name], at) => pieceOf(`${at}-${kind}-${name}`.replaceAll(' ', '-'), kind, name)));
    fc.assert(
      fc.property(wardrobes, fc.integer({ min: 2, max: 5 }), (wardrobe, size) => {
        const inside = wardrobe.slice(0, size);
        const question: ImproveQuestion = { ...ask, pieces: inside, wardrobe, list: list(['any', 9, ['socks']]) };
        const { additions, looks } = improve(question);
        expect(Number(looks)).toBe(looksOf(inside));
        const best = Math.max(0, ...wardrobe.slice(size).map((piece) => looksOf([...inside, piece]) - looksOf(inside)));
        expect(Number(additions[0]?.adds ?? 0n)).toBe(best);
      }),
      { numRuns: 40, seed: 11 },
    );
  });
});

describe('occasions', () => {
  const walk = occasion('2027-10-03', 'Walk in rain', {
    setting: { where: 'outdoors', sun: 'shade' },
    activity: 'walking',
    needs: ['rain'],
  });
  const office = occasion('2027-10-04', 'Office', { dress: 'business' });
  const trip = brief({ occasions: [walk, office], places: [] });
  const boots = pieceOf('boots', 'lace-up boots', 'dark brown');

  it('puts first what gives an occasion the look it lacks', () => {
    const own = [...pieces, boots];
    const coats = list(['tops', 3, TOPS], ['coats', 2, ['trench coat', 'wool coat', 'rain jacket']]);
    const { purchases, additions } = improve({
      ...ask,
      brief: trip,
      pieces: own,
      wardrobe: [...own, ...others],
      list: coats,
    });
    expect(purchases[0]?.serves).toEqual([walk.id]);
    expect(KINDS[purchases[0]?.piece.kind ?? 'socks'].suits).toContain('rain');
    expect(additions[0]?.piece.id).toBe('camel-trench');
    expect(additions[0]?.serves).toEqual([walk.id]);
  });

  it('never swaps so that an occasion is left without a look, nor takes a piece that is to be kept', () => {
    const own = [pieces[0], pieces[1], pieces[3], others[4], boots].flatMap((piece) => piece ?? []);
    const coats = list(['coats', 1, ['trench coat', 'wool coat']]);
    const coat = pieceOf('black-coat', 'wool coat', 'black');
    // the trench goes with one top only, the coat with both: more looks, and none for the rain
    const never = [['camel-trench', 'rust-shirt']];
    const question = { ...ask, brief: trip, pieces: own, wardrobe: [...own, coat], list: coats, never };
    expect(improve(question).swaps.map(({ out }) => out.id)).not.toContain('camel-trench');
    expect(improve({ ...question, brief: brief() }).swaps.some(({ out }) => out.id === 'camel-trench')).toBe(true);
    const kept = own.map(({ id }) => id);
    expect(improve({ ...question, brief: brief(), keep: kept }).swaps).toEqual([]);
  });
});

describe('buying what is no garment', () => {
  const everything = ['shoes', 'bag', 'scarf', 'belt', 'hat'] as const;
  const kinds: Readonly<Record<(typeof everything)[number], readonly KindId[]>> = {
    shoes: ['loafers', 'ankle boots'],
    bag: ['tote', 'cross-body bag'],
    scarf: ['scarf'],
    belt: ['belt'],
    hat: ['beret'],
  };
  const own = [pieces[0], pieces[3], pieces[5], pieces[6]].flatMap((piece) => piece ?? []);
  const completeLooks = (some: readonly Piece[]): number =>
    oracleLooks({ pieces: some, rules: {}, never: [], always: [] }, 'complete', {}).length;

  it.each(everything)('adds as many complete looks as adding the piece and counting by nested loops: %s', (what) => {
    const { purchases } = improve({ ...ask, pieces: own, wardrobe: own, list: list([what, 1, kinds[what]]) });
    expect(purchases).toHaveLength(1);
    const [bought] = purchases;
    if (bought === undefined) throw new Error('nothing to buy');
    expect(kinds[what]).toContain(bought.piece.kind);
    expect(bought.level).toBe('complete');
    expect(Number(bought.adds)).toBe(completeLooks([...own, bought.piece]) - completeLooks(own));
  });

  it('finds for an occasion without a look what no line asks for, and no occasion it says has a look without it', () => {
    const swim = occasion('2027-10-03', 'Early swim', { needs: ['swim'] });
    const hill = occasion('2027-10-04', 'Hill', {
      setting: { where: 'outdoors', sun: 'shade' },
      activity: 'walking',
      needs: ['uneven ground'],
    });
    const trip = brief({ occasions: [swim, hill], places: [] });
    const { purchases } = improve({ ...ask, brief: trip, pieces: own, wardrobe: own });
    const dressedWith = (some: readonly Piece[]): readonly string[] => {
      const engine = createWardrobeEngine({ pieces: some, rules: {}, never: [], always: [] });
      return momentsOf(trip, 'Ada')
        .filter(({ restriction }) => [...engine.enumerate({ restriction })].length > 0)
        .map(({ occasion: { id } }) => id);
    };
    expect(dressedWith(own)).toEqual([]);
    expect(purchases.some(({ serves }) => serves.includes(swim.id))).toBe(true);
    expect(purchases.some(({ piece }) => piece.places.includes('shoes'))).toBe(true);
    for (const { piece, serves } of purchases) expect(dressedWith([...own, piece])).toEqual(serves);
  });

  it('offers no hat for a scarf: only what is worn in the same place', () => {
    const wardrobe = [...own, pieceOf('sun-hat', 'beret', 'navy')];
    const { purchases } = improve({ ...ask, pieces: own, wardrobe, list: list(['scarf', 1, ['scarf']]) });
    expect(purchases[0]?.instead).toBeUndefined();
  });
});

describe('the grid of things to buy', () => {
  it('holds every listed kind in every colour, pattern and cut once, plain and usual first', () => {
    const colours = coloursToBuy(ask);
    expect(new Set(colours.map(({ hex }) => hex)).size).toBe(colours.length);
    for (const things of thingsToBuy(ask)) {
      const [first] = things;
      expect(first?.pattern.type).toBe('plain');
      expect(first?.cut).toBe(KINDS[first?.kind ?? 'socks'].cut);
      expect(new Set(things.map(({ id }) => id)).size).toBe(things.length);
      expect(things.length % colours.length).toBe(0);
      const volumes = new Set(things.map(({ cut }) => CUTS[cut].volume));
      const patterns = new Set(things.map(({ pattern }) => pattern.type));
      expect(things.length).toBe(colours.length * volumes.size * patterns.size);
    }
  });

  it('holds nothing the client refuses', () => {
    const avoid = { colours: [colour('navy')], fabrics: ['wool'] };
    const things = thingsToBuy({ ...ask, brief: brief({ avoid }) }).flat();
    expect(things.some(({ kind }) => kind === 'crew-neck jumper')).toBe(false);
    expect(things.some(({ colours: [ground] }) => ground?.name === 'navy')).toBe(false);
    expect(things.length).toBeGreaterThan(0);
  });
});

describe('costs', () => {
  const price = { amount: 90, currency: 'EUR' };
  const priced = pieces.map((piece) =>
    ['rust-shirt', 'trainers'].includes(piece.id) ? { ...piece, price, status: 'to buy' as const } : piece,
  );
  const plan: Plan = {
    traveller: 'Ada',
    days: [],
    served: 0,
    of: 0,
    proven: true,
    unserved: [],
    weakPoints: [],
    wears: { 'rust-shirt': 3 },
  };
  const { costs, shopping } = improve({ ...ask, pieces: priced, wardrobe: priced, plan });

  it('divides the price by the looks with the piece and by its wears', () => {
    const withShirt = looksOf(priced) - looksOf(priced.filter(({ id }) => id !== 'rust-shirt'));
    expect(costs[0]).toEqual({
      piece: 'rust-shirt',
      price,
      level: 'layered',
      looks: BigInt(withShirt),
      aLook: 90 / withShirt,
      wears: 3,
      aWear: 30,
    });
  });

  it('counts complete looks for shoes, and has no cost of a wear for what is never worn', () => {
    expect(costs[1]).toMatchObject({ piece: 'trainers', level: 'complete', wears: 0 });
    expect(costs[1]?.aWear).toBeUndefined();
  });

  it('lists what is still to buy, and says nothing of pieces without a price', () => {
    expect(shopping.map(({ id }) => id)).toEqual(['rust-shirt', 'trainers']);
    expect(costs).toHaveLength(2);
    expect(improve({ ...ask, plan }).costs).toEqual([]);
  });
});

describe('nothing to work with', () => {
  it('answers an empty capsule, an empty wardrobe and a list of nothing that makes looks', () => {
    const nothing = improve({ ...ask, pieces: [], wardrobe: [] });
    expect(nothing).toMatchObject({ looks: 0n, swaps: [], additions: [], purchases: [], costs: [], shopping: [] });
    expect(improve({ ...ask, list: list(['socks', 2, ['socks']]) }).purchases).toEqual([]);
    expect(improve({ ...ask, leaveOut: others.map(({ id }) => id) })).toMatchObject({ swaps: [], additions: [] });
  });
});
