import { describe, expect, it } from 'vitest';
import {
  checkPieceSets,
  checkRuleSettings,
  checkRuleThresholds,
  createWardrobeEngine,
  HOUSE_RULES,
} from '../../lib/outfit/index.ts';
import { createFormats, english, type Phrase, say } from '../../lib/words/index.ts';
import { pieceOf } from './wardrobe.ts';

const formats = createFormats({ language: 'en-GB', temperature: 'C', length: 'cm', weight: 'kg' });
const said = (phrase: Phrase): string => say(english, formats, phrase);

const pieces = [
  pieceOf('striped-tee', 't-shirt', ['white', 'navy'], { pattern: { type: 'stripe', scale: 'small' } }),
  pieceOf('floral-skirt', 'midi skirt', ['white', 'navy'], {
    pattern: { type: 'floral', scale: 'small' },
    fabric: 'crepe',
    dress: { low: 0, high: 2 },
  }),
  pieceOf('jeans', 'jeans', '#55779a'),
  pieceOf('denim-jacket', 'denim jacket', 'black', {
    colours: [{ name: 'denim', hex: '#5d7fa0', oklch: { l: 0.58, c: 0.07, h: 250 }, share: 1 }],
  }),
  pieceOf('long-cardigan', 'long cardigan', 'grey'),
  pieceOf('dress-shirt', 'dress shirt', 'white', { dress: { low: 2, high: 4 } }),
  pieceOf('tie', 'tie', 'navy'),
  pieceOf('overshirt', 'overshirt', 'black'),
  pieceOf('short-blazer', 'blazer', 'grey'),
  pieceOf('camisole', 'camisole', 'black', { dress: { low: 0, high: 3 } }),
  pieceOf('sweatshirt', 'sweatshirt', 'grey'),
  pieceOf('v-neck', 'v-neck jumper', 'camel'),
  pieceOf('crew-neck', 'crew-neck jumper', 'white'),
  pieceOf('shorts', 'shorts', 'black'),
  pieceOf('down-jacket', 'down jacket', 'black'),
  pieceOf('trainers', 'trainers', 'white'),
  pieceOf('sandals', 'sandals', 'black'),
  pieceOf('tights', 'tights', 'black'),
  pieceOf('pumps', 'pumps', 'black'),
];
const engine = createWardrobeEngine({ pieces, rules: {}, never: [['striped-tee', 'jeans']], always: [] });
const reasons = (...ids: string[]): readonly string[] =>
  engine.explain(ids).reasons.map(({ message }) => said(message));

describe('explain', () => {
  it.each([
    [
      ['striped-tee', 'floral-skirt'],
      'Striped tee and Floral skirt are two prints of the same scale (small): choose one, or a smaller with a larger.',
    ],
    [['striped-tee', 'jeans'], 'The stylist keeps Striped tee and Jeans apart in this capsule.'],
    [
      ['jeans', 'dress-shirt'],
      'Jeans (up to smart casual) and Dress shirt (from business) have no dress code in common.',
    ],
    [['tie', 'dress-shirt', 'shorts'], 'Tie is not worn with Shorts.'],
    [['tie', 'dress-shirt', 'sweatshirt', 'floral-skirt'], 'Tie is not worn under Sweatshirt.'],
    [['tie', 'dress-shirt', 'floral-skirt', 'pumps'], 'Tie asks for a jacket, a waistcoat or a fine knit over it.'],
    [
      ['overshirt', 'jeans', 'pumps', 'long-cardigan'],
      'Overshirt is itself a layer: it goes over Long cardigan, not under it.',
    ],
    [
      ['v-neck', 'jeans', 'pumps', 'crew-neck'],
      'Crew neck is pulled over the head and needs something flat under it, not V neck.',
    ],
    [['long-cardigan', 'denim-jacket'], 'Long cardigan is longer than Denim jacket and hangs out below.'],
    [
      ['jeans', 'denim-jacket'],
      'Jeans and Denim jacket are denim of nearly the same blue: choose a clearly lighter or darker one.',
    ],
    [['shorts', 'down-jacket'], 'Shorts with Down jacket: one is for warm days, the other for cold ones.'],
    [['camisole', 'sweatshirt'], 'Camisole and Sweatshirt: satin and fleece do not sit well together.'],
    [['tights', 'sandals'], 'Sandals are worn with bare feet, not with Tights.'],
    [['jeans', 'shorts'], 'Jeans and Shorts are both worn as bottom: choose one.'],
    [
      ['long-cardigan', 'denim-jacket', 'short-blazer', 'jeans'],
      'Denim jacket, Long cardigan and Short blazer share 2 places of a look (mid layer and outer layer): leave one out.',
    ],
  ])('%j: %s', (ids, sentence) => {
    expect(engine.explain(ids).goes).toBe(false);
    expect(reasons(...ids)).toContain(sentence);
  });

  it('says what a whole look still needs, and gives the look when it is whole', () => {
    const part = engine.explain(['striped-tee', 'shorts']);
    expect(part).toMatchObject({ goes: true, complete: false, reasons: [] });
    expect(part.missing.map(said)).toEqual(['To be a whole look it needs shoes.']);
    const whole = engine.explain(['trainers', 'shorts', 'striped-tee']);
    expect(whole.look?.id).toBe('striped-tee+shorts+trainers');
  });

  it('lets a tie be worn under a jacket, and on the shirt alone where the studio says so', () => {
    expect(reasons('tie', 'dress-shirt', 'floral-skirt', 'pumps', 'short-blazer').join()).not.toContain('asks for');
    const free = createWardrobeEngine({ pieces, rules: { 'tie-jacket': { severity: 'off' } }, never: [], always: [] });
    expect(free.explain(['tie', 'dress-shirt', 'floral-skirt', 'pumps']).goes).toBe(true);
  });

  it('holds an occasion against it: heels on rough ground, a dress code, cold', () => {
    const verdict = engine.explain(['dress-shirt', 'floral-skirt', 'pumps'], {
      needs: ['uneven ground'],
      clo: { min: 1, max: 2 },
    });
    expect(verdict.goes).toBe(false);
    expect(verdict.reasons.map(({ message }) => said(message))).toEqual(
      expect.arrayContaining([
        'Pumps are not made for uneven ground.',
        expect.stringContaining('on uneven ground and long walks keep to 4 cm at most'),
        expect.stringContaining('1 are needed'),
      ]),
    );
  });

  it('does not know a piece that is not there', () => {
    expect(reasons('jeans', 'ghost')).toEqual(['There is no piece "ghost" here.']);
  });

  it('says why one piece pairs with so few, the rule that costs most first', () => {
    const told = engine.explainPiece('dress-shirt');
    expect(told.byRule[0]?.rule).toBe('dress-meets');
    const bottoms = told.goesWith.find(({ place }) => place === 'bottom');
    expect(bottoms).toEqual({ place: 'bottom', pieces: ['floral-skirt'], of: 3 });
  });

  it('judges the grid of tops and bottoms as it judges pairs', () => {
    for (const { top, bottom, goes, reasons: against } of engine.pairs()) {
      expect(goes).toBe(engine.explainPair(top, bottom).goes);
      if (!goes) expect(against.length).toBeGreaterThan(0);
    }
  });

  it('has a sentence for every rule and unit', () => {
    for (const { says, threshold } of HOUSE_RULES) {
      expect(said(says)).toMatch(/\.$/);
      if (threshold !== undefined) expect(said(threshold.unit).length).toBeGreaterThan(1);
    }
  });
});

describe('bad input', () => {
  it('names the rule when nothing is allowed', () => {
    const set = pieces.filter(({ id }) => ['striped-tee', 'jeans', 'trainers'].includes(id));
    const rules = (never: string[][], more = {}) =>
      createWardrobeEngine({ pieces: set, rules: more, never, always: [] });
    expect(rules([]).diagnose()).toEqual([]);
    expect(
      rules([['striped-tee', 'jeans']])
        .diagnose()
        .map(({ rules: ids }) => ids),
    ).toEqual([['never-together']]);
    const both = rules([['striped-tee', 'jeans']], { 'pattern-count': { threshold: 0 } }).diagnose();
    expect(both.map(({ rules: ids }) => ids)).toEqual([['never-together', 'pattern-count']]);
    expect(both.map(({ message }) => said(message))).toEqual([
      'The house rules "never-together" and "pattern-count" together rule out every look.',
    ]);
  });

  it('names the place that no piece takes, and the wish that cannot be met', () => {
    const bare = createWardrobeEngine({ pieces: pieces.slice(0, 3), rules: {}, never: [], always: [] });
    expect(bare.diagnose().map(({ message }) => said(message))).toEqual(['There is no piece for shoes.']);
    expect(engine.diagnose({ dress: 'casual', needs: ['snow'] }).map(({ message }) => said(message))).toEqual([
      'What is asked rules out every look: needs.',
    ]);
  });

  it('reports misspelt rules, thresholds out of range and sets of unknown pieces', () => {
    expect(checkRuleSettings({ 'patern-count': {}, colour: {} })).toEqual([
      { id: 'patern-count', nearest: ['pattern-count'] },
    ]);
    expect(checkRuleSettings({ zzzzzzzzzzzzzz: {} })).toEqual([{ id: 'zzzzzzzzzzzzzz', nearest: [] }]);
    expect(
      checkRuleThresholds({ proportion: { threshold: 9 }, colour: { threshold: 1 }, fabric: { threshold: 3 } }),
    ).toEqual([
      { id: 'colour', threshold: 1 },
      { id: 'proportion', threshold: 9, low: 0, high: 6 },
    ]);
    expect(checkPieceSets([['jeans', 'trainer']], pieces)).toEqual([{ set: 0, id: 'trainer', nearest: ['trainers'] }]);
  });

  it('refuses an unknown rule, two pieces with one id, and a place in the order that is no look', () => {
    const empty = { rules: {}, never: [], always: [] };
    expect(() => createWardrobeEngine({ ...empty, pieces, rules: { colours: {} } })).toThrow(/no house rule "colours"/);
    expect(() => createWardrobeEngine({ ...empty, pieces: [...pieces, ...pieces] })).toThrow(RangeError);
    expect(() => [...engine.enumerate({ after: 'ghost+jeans' })]).toThrow(RangeError);
  });

  it('has no looks, and no error, in an empty wardrobe', () => {
    const none = createWardrobeEngine({ pieces: [], rules: {}, never: [], always: [] });
    expect(none.count()).toEqual({ core: 0n, layered: 0n, complete: 0n });
    expect([...none.enumerate()]).toEqual([]);
    expect(none.rank(3)).toEqual([]);
    expect(none.varied(3)).toEqual([]);
    expect(none.contributions()).toEqual([]);
  });
});
