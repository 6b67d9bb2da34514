import fc from 'fast-check';
import type { Piece } from '../../lib/model/index.ts';
import { HOUSE_RULES, type WardrobeRules } from '../../lib/outfit/index.ts';
import { CUTS, type Cut, type KindId } from '../../lib/vocabulary/index.ts';
import { pieceOf } from './wardrobe.ts';

const KINDS_TRIED: readonly KindId[] = [
  't-shirt',
  'shirt',
  'roll-neck',
  'cardigan',
  'overshirt',
  'flannel shirt',
  'tunic',
  'camisole',
  'jeans',
  'shorts',
  'pencil skirt',
  'tailored trousers',
  'wide trousers',
  'wrap dress',
  'sundress',
  'swimsuit',
  'kaftan',
  'blazer',
  'long cardigan',
  'shawl',
  'denim jacket',
  'down jacket',
  'trench coat',
  'rain jacket',
  'tights',
  'socks',
  'ankle boots',
  'sandals',
  'hiking boots',
  'pumps',
  'flip-flops',
  'tote',
  'sunglasses',
  'silk scarf',
  'sun hat',
  'tie',
  'belt',
  'braces',
  'hoop earrings',
  'pendant',
  'pocket square',
];
const COLOURS = ['black', 'white', 'navy', 'red', 'green', 'orange', 'purple', 'mustard', 'pink', 'teal'];

const piece = (index: number): fc.Arbitrary<Piece> =>
  fc
    .record({
      kind: fc.constantFrom(...KINDS_TRIED),
      colours: fc.uniqueArray(fc.constantFrom(...COLOURS), { minLength: 1, maxLength: 3 }),
      pattern: fc.constantFrom('plain', 'plain', 'stripe', 'floral', 'check', 'pinstripe') as fc.Arbitrary<
        Piece['pattern']['type']
      >,
      scale: fc.constantFrom('small', 'medium', 'large') as fc.Arbitrary<Piece['pattern']['scale']>,
      cut: fc.option(fc.constantFrom(...(Object.keys(CUTS) as Cut[])), { nil: undefined }),
      statement: fc.boolean(),
      offSkin: fc.integer({ min: 0, max: 5 }).map((roll) => roll === 0),
    })
    .map(({ kind, colours, pattern, scale, cut, statement, offSkin }) =>
      pieceOf(`p${index}-${kind.replaceAll(' ', '-')}`, kind, colours, {
        pattern: { type: pattern, scale },
        statement,
        ...(offSkin ? { offSkin } : {}),
        ...(cut === undefined ? {} : { cut }),
      }),
    );

const severities = fc.constantFrom('rules out', 'lowers the score', 'off') as fc.Arbitrary<
  'rules out' | 'lowers the score' | 'off'
>;

/** Small wardrobes of any kinds and colours, with any rules switched, loosened or tightened. */
export const wardrobes: fc.Arbitrary<WardrobeRules> = fc.integer({ min: 3, max: 11 }).chain((size) =>
  fc.tuple(...Array.from({ length: size }, (_, index) => piece(index))).chain((pieces) => {
    const ids = pieces.map(({ id }) => id);
    const sets = fc.array(fc.uniqueArray(fc.constantFrom(...ids), { minLength: 2, maxLength: 3 }), { maxLength: 2 });
    return fc.record({
      pieces: fc.constant(pieces),
      never: sets,
      always: sets,
      rules: fc
        .uniqueArray(
          fc.record({
            id: fc.constantFrom(...HOUSE_RULES.map(({ id }) => id)),
            severity: severities,
            threshold: fc.integer({ min: 0, max: 4 }),
          }),
          { selector: ({ id }) => id, maxLength: 14 },
        )
        .map((list) => Object.fromEntries(list.map(({ id, severity, threshold }) => [id, { severity, threshold }]))),
    });
  }),
);
