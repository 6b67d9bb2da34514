import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { briefToPack } from '../../lib/bag/index.ts';
import { judgePicture, seenPieces, sharedBags, type Traveller, travelTogether } from '../../lib/capsule/index.ts';
import type { Bag, Look, Measure, PackedBag, Packing, Piece, Plan } from '../../lib/model/index.ts';
import type { KindId, Slot } from '../../lib/vocabulary/index.ts';
import { pieceOf } from '../outfit/wardrobe.ts';
import { brief, occasion } from '../plan/trip.ts';

const exactly = (value: number): Measure => ({ value, low: value, high: value, basis: 'given', source: 'test' });
const CASE: Bag = { name: 'Case', role: 'cabin', litres: 40, ownGrams: 2000, limitKg: 8 };
const packed = (bag: Bag, pieces: readonly (readonly [string, number])[]): PackedBag => ({
  bag,
  pieces: pieces.map(([piece, grams]) => ({
    piece,
    group: 'tops',
    grams: exactly(grams),
    litres: exactly(1),
    wornOn: [],
    fold: 'fold',
  })),
  sundries: [],
  grams: exactly(bag.ownGrams + pieces.reduce((sum, [, grams]) => sum + grams, 0)),
  litres: exactly(pieces.length),
});
const packing = (...bags: readonly PackedBag[]): Packing => ({
  bags,
  worn: [],
  wornGrams: exactly(0),
  weighedShare: 1,
  notes: [],
});

const dinner = occasion('2027-10-03', 'Dinner');
const trip = brief({ occasions: [dinner], places: [], travellers: [] });
const lookOf = (worn: readonly (readonly [Piece, Slot])[]): Look => ({
  id: worn.map(([{ id }]) => id).join('+'),
  worn: worn.map(([{ id }, slot]) => ({ piece: id, slot })),
});
const planOf = (traveller: string, look: Look, carried: readonly string[] = []): Plan => ({
  traveller,
  served: 1,
  of: 1,
  proven: true,
  unserved: [],
  weakPoints: [],
  wears: {},
  days: [
    {
      date: dinner.on,
      wash: [],
      occasions: [
        { occasion: dinner.id, look, layersOn: [], layersCarried: carried, change: 'first', reasons: [], cautions: [] },
      ],
    },
  ],
});
const traveller = (
  name: string,
  pieces: readonly Piece[],
  worn: readonly (readonly [Piece, Slot])[],
  carried: readonly string[] = [],
): Traveller => ({
  name,
  pieces,
  plan: planOf(name, lookOf(worn), carried),
  packing: packing(),
  rules: {},
  never: [],
  always: [],
});

const print = (id: string, kind: KindId, type: Piece['pattern']['type'], ground = 'white') =>
  pieceOf(id, kind, [ground, 'navy'], { pattern: { type, scale: 'small' } });

describe('two looks in one picture', () => {
  it('sit well in neutrals and in one family of colour', () => {
    expect(judgePicture([pieceOf('a', 'shirt', 'white')], [pieceOf('b', 'slip dress', 'navy')]).goes).toBe(true);
    expect(judgePicture([pieceOf('a', 'shirt', 'rust')], [pieceOf('b', 'slip dress', 'terracotta')]).goes).toBe(true);
  });

  // common practice, no source: two people in one picture do not wear the same print
  it('do not with the same print, and do with two different ones', () => {
    const stripes = judgePicture([print('a', 'shirt', 'stripe')], [print('b', 'tea dress', 'stripe')]);
    expect(stripes.goes).toBe(false);
    expect(stripes.reasons[0]?.key).toBe('same print');
    expect(judgePicture([print('a', 'shirt', 'stripe')], [print('b', 'tea dress', 'floral')]).goes).toBe(true);
    // a pinstripe counts as cloth and not as a print
    expect(judgePicture([print('a', 'suit jacket', 'pinstripe')], [print('b', 'blazer', 'pinstripe')]).goes).toBe(true);
  });

  it('do not with colours that clash, and the colours say so', () => {
    const clash = judgePicture([pieceOf('a', 'shirt', 'hot pink')], [pieceOf('b', 'slip dress', 'orange')]);
    expect(clash.goes).toBe(false);
    expect(clash.reasons.map(({ key }) => key)[0]).toBe('clash in picture');
    expect(clash.reasons).toHaveLength(2);
  });

  it('say which piece of one answers which of the other, a tie among them', () => {
    const tie = pieceOf('tie', 'tie', 'rust', { name: 'Rust tie' });
    const dress = pieceOf('dress', 'maxi dress', 'terracotta', { name: 'Terracotta dress' });
    const shirt = pieceOf('shirt', 'dress shirt', 'white');
    const look = lookOf([
      [shirt, 'top'],
      [tie, 'tie'],
    ]);
    const { goes, reasons } = judgePicture(seenPieces(look, [shirt, tie]), [dress]);
    expect(goes).toBe(true);
    expect(reasons[0]).toMatchObject({ key: 'answers', values: { one: 'Rust tie', two: 'Terracotta dress' } });
    // two neutrals answer nothing
    expect(judgePicture([shirt], [pieceOf('n', 'chinos', 'navy')]).reasons.map(({ key }) => key)).toEqual([
      'sits well',
    ]);
  });

  it('are judged alike from either side', () => {
    const kind = fc.constantFrom<KindId>('shirt', 'chinos', 'slip dress', 'cardigan');
    const name = fc.constantFrom('white', 'navy', 'rust', 'hot pink', 'tomato red', 'sage', 'mustard');
    const pattern = fc.constantFrom<Piece['pattern']['type']>('plain', 'stripe', 'floral');
    const look = fc
      .array(fc.tuple(kind, name, pattern), { minLength: 1, maxLength: 3 })
      .map((made) =>
        made.map(([one, ground, type], at) =>
          type === 'plain' ? pieceOf(`${at}`, one, ground) : print(`${at}`, one, type, ground),
        ),
      );
    fc.assert(
      fc.property(look, look, (mine, theirs) => {
        const [one, two] = [judgePicture(mine, theirs), judgePicture(theirs, mine)];
        expect(one.goes).toBe(two.goes);
        expect(one.harmony).toBeGreaterThanOrEqual(0);
        expect(one.harmony).toBeLessThanOrEqual(1);
        expect(one.reasons.length).toBeGreaterThan(0);
      }),
      { numRuns: 100, seed: 3 },
    );
  });

  it('are what is seen: neither shoes and bags nor layers that are carried', () => {
    const [shirt, shoes, coat] = [pieceOf('s', 'shirt'), pieceOf('l', 'loafers'), pieceOf('c', 'wool coat')];
    const look = lookOf([
      [shirt, 'top'],
      [coat, 'outer layer'],
      [shoes, 'shoes'],
    ]);
    expect(seenPieces(look, [shirt, shoes, coat]).map(({ id }) => id)).toEqual(['s', 'c']);
    expect(seenPieces(look, [shirt, shoes, coat], new Set(['c'])).map(({ id }) => id)).toEqual(['s']);
    const swim = pieceOf('w', 'swimsuit', 'rust');
    expect(seenPieces(lookOf([[swim, 'swim']]), [swim])).toHaveLength(1);
  });
});

describe('travelling together', () => {
  const shoes = pieceOf('loafers', 'loafers', 'black');
  const chinos = pieceOf('chinos', 'chinos', 'navy');
  const striped = print('striped', 'shirt', 'stripe');
  const plain = pieceOf('plain', 'shirt', 'white');
  const dress = print('dress', 'tea dress', 'stripe');
  const worn = [
    [striped, 'top'],
    [chinos, 'bottom'],
    [shoes, 'shoes'],
  ] as const;
  const ada = traveller('Ada', [striped, plain, chinos, shoes], worn);
  const sandals = pieceOf('sandals', 'loafers', 'tan');
  const bea = traveller(
    'Bea',
    [dress, sandals],
    [
      [dress, 'one-piece'],
      [sandals, 'shoes'],
    ],
  );

  it('finds another look for one of them where the two do not go', () => {
    const [day] = travelTogether(trip, [ada, bea]).days;
    expect(day).toMatchObject({ date: dinner.on, occasion: dinner.id, travellers: ['Ada', 'Bea'], goes: false });
    expect(day?.instead?.traveller).toBe('Ada');
    expect(day?.instead?.look.worn.map(({ piece }) => piece)).toContain('plain');
  });

  it('leaves out occasions at which only one of them is dressed', () => {
    const alone: Traveller = { ...bea, plan: { ...bea.plan, days: [] } };
    expect(travelTogether(trip, [ada, alone]).days).toEqual([]);
  });

  it('sets every two of three side by side', () => {
    const names = travelTogether(trip, [ada, bea, { ...ada, name: 'Cleo' }]).days.map(({ travellers }) => travellers);
    expect(names).toEqual([
      ['Ada', 'Bea'],
      ['Ada', 'Cleo'],
      ['Bea', 'Cleo'],
    ]);
  });

  it('lends what fits, what the other lacks, and what makes looks; though two pieces are named alike', () => {
    const bag = { ...pieceOf('bag', 'tote', 'tan'), wardrobe: 'ada' };
    const clutch = { ...pieceOf('bag', 'flap bag', 'black'), wardrobe: 'bea' };
    const jumper = { ...pieceOf('jumper', 'crew-neck jumper', 'navy'), wardrobe: 'ada', size: 'M' };
    const ring = pieceOf('ring', 'ring', 'gold');
    const one = { ...ada, pieces: [...ada.pieces, bag, jumper, ring] };
    const top = { ...pieceOf('top', 'roll-neck', 'white'), size: 'M' };
    const jeans = pieceOf('jeans', 'jeans', 'dark denim');
    const two = { ...bea, pieces: [...bea.pieces, clutch, top, jeans] };
    const lent = travelTogether(trip, [one, two]).lendable;
    const said = lent.map(({ piece, from, to, why }) => [piece.id, from, to, why.key]);
    expect(said).toContainEqual(['jumper', 'Ada', 'Bea', 'lend same size']);
    expect(said).toContainEqual(['bag', 'Ada', 'Bea', 'lend any size']);
    // no jewellery for one who wears none, no shoes without a size
    expect(said.map(([id]) => id)).not.toContain('ring');
    expect(said.map(([id]) => id)).not.toContain('loafers');
    for (const { adds } of lent) expect(adds.complete > 0n).toBe(true);
    // an evening clutch is not for one who carries a day pack alone
    const evening = { ...pieceOf('evening', 'clutch', 'tan'), wardrobe: 'ada' };
    const bagged = (own: KindId) => ({ ...two, pieces: [...bea.pieces, top, jeans, pieceOf('own', own, 'black')] });
    const lentTo = (own: KindId) =>
      travelTogether(trip, [{ ...one, pieces: [...one.pieces, evening] }, bagged(own)]).lendable.map(
        ({ piece }) => piece.id,
      );
    expect(lentTo('day pack')).not.toContain('evening');
    for (const { goesWith, planned } of lent) {
      expect(goesWith).toBeGreaterThan(0);
      expect(goesWith).toBeLessThanOrEqual(planned);
    }
    const small = { ...two, pieces: two.pieces.map((piece) => (piece === top ? { ...top, size: 'S' } : piece)) };
    expect(travelTogether(trip, [one, small]).lendable.map(({ piece }) => piece.id)).not.toContain('jumper');
  });
});

describe('bags together', () => {
  const who = (name: string, ...pieces: readonly (readonly [string, number])[]) => ({
    name,
    packing: packing(packed(CASE, pieces)),
  });

  const bagOf = (...travellers: readonly string[]) => ({ travellers, bag: 'Case' });

  it('adds up what all carry against all limits', () => {
    const bags = sharedBags([who('Ada', ['a', 3000]), who('Bea', ['b', 1000])]);
    expect(bags.grams.value).toBe(8000);
    expect(bags.gramsAtMost).toBe(16_000);
    expect(bags.fits).toBe(true);
    expect(bags.moves).toEqual([]);
    expect(bags.bags.map(({ gramsLeft }) => gramsLeft)).toEqual([3000, 5000]);
  });

  it('hands over the lightest piece that is enough', () => {
    const bags = sharedBags([who('Ada', ['a', 5000], ['b', 900], ['c', 400], ['d', 200]), who('Bea', ['e', 1000])]);
    expect(bags.fits).toBe(false);
    expect(bags.moves).toEqual([{ piece: 'b', from: bagOf('Ada'), to: bagOf('Bea'), grams: 900 }]);
  });

  it('hands over several when one is not enough, and none when there is no room', () => {
    const several = sharedBags([who('Ada', ['a', 4000], ['b', 1500], ['c', 1500]), who('Bea', ['e', 3000])]);
    expect(several.moves).toEqual([{ piece: 'b', from: bagOf('Ada'), to: bagOf('Bea'), grams: 1500 }]);
    const two = sharedBags([who('Ada', ['a', 5900], ['b', 600], ['c', 600]), who('Bea', ['e', 1000])]);
    expect(two.moves.map(({ piece }) => piece).toSorted()).toEqual(['b', 'c']);
    const full = sharedBags([who('Ada', ['a', 6500]), who('Bea', ['e', 5900])]);
    expect(full).toMatchObject({ fits: false, moves: [] });
  });

  it('leaves every bag within its limit whenever it hands over, and loses nothing', () => {
    const grams = fc.array(fc.integer({ min: 50, max: 2500 }), { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(grams, grams, (mine, theirs) => {
        const [one, two] = [mine, theirs].map((weights, side) =>
          who(['Ada', 'Bea'][side] ?? '', ...weights.map((weight, at) => [`${side}-${at}`, weight] as const)),
        );
        if (one === undefined || two === undefined) return;
        const { moves, bags } = sharedBags([one, two]);
        if (moves.length === 0) return;
        for (const { travellers, grams: load } of bags) {
          const given = moves
            .filter(({ from }) => from.travellers === travellers)
            .reduce((sum, move) => sum + move.grams, 0);
          const got = moves.filter(({ to }) => to.travellers === travellers).reduce((sum, move) => sum + move.grams, 0);
          expect(load.value - given + got).toBeLessThanOrEqual(8000);
        }
        expect(new Set(moves.map(({ piece }) => piece)).size).toBe(moves.length);
      }),
      { numRuns: 200, seed: 5 },
    );
  });

  describe('that are shared', () => {
    const trunk: Bag = {
      name: 'Trunk',
      role: 'hold',
      litres: 90,
      ownGrams: 4000,
      limitKg: 20,
      sharedBy: ['Ada', 'Bea'],
    };
    const written = brief({ bags: [CASE, trunk], places: [] });
    const share = (name: string): Bag => briefToPack(written, name).bags[1] as Bag;
    const packs = (name: string, inCase: number, inTrunk: number) => ({
      name,
      packing: packing(
        packed(CASE, [[`${name}-case`, inCase]]),
        packed(share(name), [
          [`${name}-heavy`, inTrunk - 500],
          [`${name}-light`, 500],
        ]),
      ),
    });

    it('are packed in equal shares that add up to the whole, and by nobody else', () => {
      const shares = ['Ada', 'Bea'].map(share);
      for (const key of ['litres', 'ownGrams', 'limitKg'] as const)
        expect(shares.reduce((sum, bag) => sum + (bag[key] ?? 0), 0)).toBe(trunk[key]);
      expect(briefToPack(written, 'Cleo').bags).toEqual([CASE]);
    });

    it('stand beside a bag that one of them alone brings', () => {
      const own = (name: string): Bag => ({ ...CASE, name: `${name}'s case`, traveller: name });
      const mixed = brief({ bags: [trunk, own('Ada'), own('Bea')], places: [] });
      expect(briefToPack(mixed, 'Ada').bags.map(({ name }) => name)).toEqual(['Trunk', "Ada's case"]);
      const packers = ['Ada', 'Bea'].map((name) => ({
        name,
        packing: packing(...briefToPack(mixed, name).bags.map((bag) => packed(bag, [[`${name}-${bag.name}`, 1000]]))),
      }));
      expect(sharedBags(packers).bags.map(({ travellers, bag }) => [...travellers, bag])).toEqual([
        ['Ada', 'Bea', 'Trunk'],
        ['Ada', "Ada's case"],
        ['Bea', "Bea's case"],
      ]);
    });

    it('stand as one bag with one limit, so that one may have more in it than the other', () => {
      const { bags, fits, grams, gramsAtMost } = sharedBags([packs('Ada', 1000, 10_000), packs('Bea', 1000, 5000)]);
      expect(bags.map(({ travellers, bag }) => [...travellers, bag])).toEqual([
        ['Ada', 'Case'],
        ['Ada', 'Bea', 'Trunk'],
        ['Bea', 'Case'],
      ]);
      expect(bags[1]).toMatchObject({ gramsAtMost: 20_000, gramsLeft: 1000, litresAtMost: 90 });
      expect(fits).toBe(true);
      expect(grams.value).toBe(3000 + 19_000 + 3000);
      expect(gramsAtMost).toBe(36_000);
    });

    it('give a piece to a bag with room when they are too heavy, and take one when they have room', () => {
      const over = sharedBags([packs('Ada', 1000, 10_000), packs('Bea', 1000, 6200)]);
      expect(over.fits).toBe(false);
      expect(over.moves).toEqual([
        { piece: 'Ada-light', from: { travellers: ['Ada', 'Bea'], bag: 'Trunk' }, to: bagOf('Ada'), grams: 500 },
      ]);
      const room = sharedBags([packs('Ada', 6500, 3000), packs('Bea', 1000, 3000)]);
      expect(room.moves).toEqual([
        { piece: 'Ada-case', from: bagOf('Ada'), to: { travellers: ['Ada', 'Bea'], bag: 'Trunk' }, grams: 6500 },
      ]);
    });
  });

  it('knows no limit where none is given', () => {
    const { limitKg: _limitKg, ...open } = CASE;
    const bags = sharedBags([{ name: 'Ada', packing: packing(packed(open, [['a', 90_000]])) }]);
    expect(bags.gramsAtMost).toBeUndefined();
    expect(bags).toMatchObject({ fits: true, moves: [] });
  });
});
