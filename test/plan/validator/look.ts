import type { Capsule, Look } from '../../../lib/model/index.ts';
import type { Pieces } from './occasion.ts';

/** Slots of a look on land and in the water: which must be filled, and which may be. */
const LAND = [
  'mid layer',
  'outer layer',
  'base layer',
  'leg layer',
  'legwear',
  'shoes',
  'bag',
  'eyewear',
  'headwear',
  'scarf',
  'gloves',
  'belt',
];
const JEWELLERY = ['ears', 'neck', 'wrist', 'finger', 'lapel'].map((site) => `jewellery ${site}`);
const FORMS = [
  { must: ['top', 'bottom', 'shoes'], may: [...LAND, ...JEWELLERY, 'tie'] },
  { must: ['one-piece', 'shoes'], may: [...LAND, ...JEWELLERY] },
  { must: ['swim'], may: ['cover-up', 'shoes', 'bag', 'eyewear', 'headwear'] },
];

/** What is wrong with a look as a look: pieces of the bag, each once, each where it is worn, in one form of core. */
export const ungrammatical = ({ worn }: Look, pieces: Pieces): readonly string[] => {
  const wrong: string[] = [];
  for (const { piece: id, slot } of worn) {
    const piece = pieces.get(id);
    const [place, site] = slot.split(' ')[0] === 'jewellery' ? ['jewellery', slot.split(' ')[1]] : [slot, undefined];
    if (piece === undefined) wrong.push(`${id} is not in the bag`);
    else if (!(piece.places as readonly string[]).includes(place ?? '')) wrong.push(`${id} is not worn as ${slot}`);
    else if (site !== undefined && piece.site !== site) wrong.push(`${id} is not worn at the ${site}`);
  }
  const slots = worn.map(({ slot }) => slot as string);
  if (new Set(worn.map(({ piece }) => piece)).size < worn.length) wrong.push('a piece is worn twice at once');
  if (new Set(slots).size < slots.length) wrong.push('two pieces are in one place');
  const form = FORMS.find(
    ({ must, may }) =>
      must.every((slot) => slots.includes(slot)) && slots.every((slot) => must.includes(slot) || may.includes(slot)),
  );
  if (form === undefined) wrong.push(`no look is made of ${slots.join(', ')}`);
  return wrong;
};

/** Wishes of the capsule a look goes against. */
export const unwished = ({ worn }: Look, { never, always }: Pick<Capsule, 'never' | 'always'>): readonly string[] => {
  const ids = worn.map(({ piece }) => piece);
  return [
    ...never
      .filter((set) => new Set(set).size > 1 && set.every((id) => ids.includes(id)))
      .map((set) => `${set.join(' and ')} are never worn together`),
    ...always
      .filter(([first = '', ...others]) => ids.includes(first) && !others.every((id) => ids.includes(id)))
      .map(([first]) => `${first} is without what is always worn with it`),
  ];
};
