import type { Sundry } from '../model/index.ts';
import type { Drawing, Mark } from './drawing.ts';

/** Line of every icon, centimetres on a square of 2.4. */
const WEIGHT = 0.1;
const SIDE = 2.4;
const INK = '#3b332b';

/** Outlines on a square of 24, in M, L, C, Q and Z. */
const ICONS = {
  knickers: 'M3 7L21 7L20 12C16 12 14 15 13.5 18.5L10.5 18.5C10 15 8 12 4 12Z',
  boxers: 'M4 5L20 5L21 18.5L13.4 18.5L12 12.5L10.6 18.5L3 18.5ZM4 8L20 8M12 8L12 12.5',
  bra: 'M3 8C3.4 13 4.6 17 8 17C10.8 17 11.8 14.8 12 13.4C12.2 14.8 13.2 17 16 17C19.4 17 20.6 13 21 8M3 8L4.6 3.5M21 8L19.4 3.5M12 13.4C10.6 11 7 9.6 3 8M12 13.4C13.4 11 17 9.6 21 8',
  vest: 'M8 3L8 7C8 9 6.6 10 5 10.6L5.4 21L18.6 21L19 10.6C17.4 10 16 9 16 7L16 3M8 5C9.4 9.4 14.6 9.4 16 5',
  socks:
    'M6.5 3L12 3L12 12.2L15.6 16.2C17.4 18.6 14.6 21.6 12 20.2L7.2 15.8C6.6 15.2 6.5 14.4 6.5 13.4ZM6.5 6L12 6M12.6 18.2C13.8 17.6 14.6 16.8 14.9 15.6M14.6 3L18.6 3L18.6 12L20.6 14.6',
  tights: 'M7 3L17 3L16.2 12L15.4 21L12.9 21L12 10.4L11.1 21L8.6 21L7.8 12ZM7 5.6L17 5.6',
  pyjamas:
    'M8.4 3L4 6L5 12L7.5 11.4L7.5 20.5L16.5 20.5L16.5 11.4L19 12L20 6L15.6 3L12 7.4ZM12 7.4L12 20.5M14 11L14.1 11M14 14.5L14.1 14.5M14 18L14.1 18',
  slippers:
    'M3 16C3 12.6 7 11.4 10 11.4C12 11.4 13 14 16 14.4C19 14.8 21 15 21 17C21 18.6 19.6 19 17.6 19L6 19C4 19 3 18 3 16ZM10 11.4C9 13.4 9.4 16 11.4 19',
  toothbrush:
    'M2.5 12.6C2.5 11.4 4 11.2 5 11.4L15 11.6L21.5 11.6L21.5 14.2L15 14.2L5 14.2C4 14.4 2.5 13.8 2.5 12.6ZM15.4 11.6L15.4 8L20.9 8L20.9 11.6M17.2 8L17.2 11.6M19 8L19 11.6',
  tube: 'M7.6 3L16.4 3L15.2 17L8.8 17ZM9.6 17L9.6 21L14.4 21L14.4 17M8 6L16 6',
  hairbrush:
    'M7.4 3.4C10 2.4 14 2.4 16.6 3.4C17.8 7 17.6 10.6 15.6 13L8.4 13C6.4 10.6 6.2 7 7.4 3.4ZM10.8 13L10.6 20.6C10.8 21.6 13.2 21.6 13.4 20.6L13.2 13M9.4 6L9.5 10M12 5.6L12 10.2M14.6 6L14.5 10',
  comb: 'M3 8L21 8L21 11L3 11ZM4.5 11L4.5 17M7 11L7 16.4M9.5 11L9.5 16.4M12 11L12 16.4M14.5 11L14.5 16.4M17 11L17 16.4M19.5 11L19.5 17',
  razor: 'M7 4L17 4L17.6 8.4L6.4 8.4ZM7.4 6.2L16.6 6.2M10.8 8.4L11 20C11.2 21.4 12.8 21.4 13 20L13.2 8.4',
  soap: 'M4 12C4 8.6 20 8.6 20 12L20 15.4C20 18.8 4 18.8 4 15.4ZM8 12.6C10 11.8 14 11.8 16 12.6M6.6 6L6.7 6M10 5L10.1 5M9 7.4L9.1 7.4',
  jar: 'M5 10L19 10L19 19C19 20 18 20.5 17 20.5L7 20.5C6 20.5 5 20 5 19ZM6 6L18 6L18 10L6 10ZM5 15L19 15',
  bottle:
    'M10 3L14 3L14 6.6C16.8 7.6 17.5 9 17.5 11L17.5 21L6.5 21L6.5 11C6.5 9 7.2 7.6 10 6.6ZM10 5L14 5M6.5 12.6L17.5 12.6M6.5 18L17.5 18',
  sunCream:
    'M7 9L17 9L17 21L7 21ZM9 5L15 5L15 9L9 9ZM12 13.2C14.2 13.2 14.2 16.8 12 16.8C9.8 16.8 9.8 13.2 12 13.2ZM12 11.2L12 11.9M12 18.1L12 18.8M8.9 15L9.2 15M14.8 15L15.1 15',
  drop: 'M12 3C15 8 17 11 17 14.6C17 21.4 7 21.4 7 14.6C7 11 9 8 12 3ZM9.6 14.6C9.6 16.4 10.4 17.4 11.8 17.8',
  spray:
    'M7 11L17 11L17 21L7 21ZM10 7L14 7L14 11L10 11ZM11 4L13.4 4L13.4 7M16 5L18.6 5M16.4 3.2L18.6 2.2M16.4 6.8L18.6 7.8',
  lipstick: 'M8.5 12L15.5 12L15.5 21L8.5 21ZM9.8 8.6L14.2 8.6L14.2 12M9.8 12L9.8 5.6C11.4 5 13.4 3.8 14.2 3L14.2 8.6',
  passport:
    'M6 3L18 3L18 21L6 21ZM12 7.2C15.9 7.2 15.9 13.2 12 13.2C8.1 13.2 8.1 7.2 12 7.2ZM9.1 10.2L14.9 10.2M12 7.2C10.6 9 10.6 11.4 12 13.2C13.4 11.4 13.4 9 12 7.2M9 17L15 17',
  ticket:
    'M3 7L21 7L21 10.2C19 10.2 19 13.8 21 13.8L21 17L3 17L3 13.8C5 13.8 5 10.2 3 10.2ZM15 8.4L15 9.8M15 11.3L15 12.7M15 14.2L15 15.6M7 11L11.6 11M7 13.4L10 13.4',
  card: 'M3 6L21 6L21 18L3 18ZM3 10L21 10M6 14.5L10 14.5',
  purse:
    'M4 9L20 9L20 19L4 19ZM6.4 9C7 6.4 17 6.4 17.6 9M10.6 9C10.6 7.8 11.2 7 12 7C12.8 7 13.4 7.8 13.4 9M12 12L12.1 12',
  key: 'M8 8C12.4 8 12.4 15 8 15C3.6 15 3.6 8 8 8ZM11.2 11.5L21 11.5L21 14.6M17.6 11.5L17.6 14M7 11.5L7.1 11.5',
  book: 'M12 6C9.6 4.4 6 4.2 3 5L3 18.6C6 17.8 9.6 18 12 19.6C14.4 18 18 17.8 21 18.6L21 5C18 4.2 14.4 4.4 12 6ZM12 6L12 19.6',
  pen: 'M4 20L5.4 15.6L16.6 4.4L19.6 7.4L8.4 18.6ZM14.4 6.6L17.4 9.6M4 20L6.6 17.4',
  plug: 'M9 3L9 8M15 3L15 8M6 8L18 8L18 12C18 15.5 15.5 17 12 17C8.5 17 6 15.5 6 12ZM12 17L12 21.5',
  adaptor: 'M5 6L19 6L19 16L5 16ZM9 16L9 20.5M15 16L15 20.5M9.4 9.6L9.5 9.6M14.5 9.6L14.6 9.6M12 12.6L12.1 12.6',
  phone: 'M7 2.5L17 2.5L17 21.5L7 21.5ZM7 5.4L17 5.4M7 18L17 18M12 19.8L12.1 19.8',
  battery: 'M4 7L19 7L19 17L4 17ZM19 10L21 10L21 14L19 14M11.6 8.8L8.8 12.4L11.4 12.4L10.8 15.2L14 11.4L11.4 11.4Z',
  headphones: 'M4 15L4 12C4 1.6 20 1.6 20 12L20 15M4 13.4L7 13.4L7 19.6L4 19.6ZM17 13.4L20 13.4L20 19.6L17 19.6Z',
  camera:
    'M3 8L7.6 8L9 5.4L15 5.4L16.4 8L21 8L21 19L3 19ZM12 9.6C17 9.6 17 16.8 12 16.8C7 16.8 7 9.6 12 9.6ZM18.6 10.4L18.7 10.4',
  laptop: 'M5 5L19 5L19 15L5 15ZM2.5 18.5L21.5 18.5L20 15.6L4 15.6ZM10.4 17L13.6 17',
  medicine: 'M4 8L20 8L20 20L4 20ZM9 8L9 5L15 5L15 8M12 11L12 17M9 14L15 14',
  pills:
    'M4 15.6C1.6 13 5.6 8.8 8.4 11.4L12.6 15.6C15 18.4 11 22.4 8.2 19.8ZM6.2 17.6L10.4 13.4M16.6 4C21.4 4 21.4 11.2 16.6 11.2C11.8 11.2 11.8 4 16.6 4ZM13.6 7.6L19.6 7.6',
  plaster:
    'M3 9.5L21 9.5C22.4 11 22.4 14 21 15.5L3 15.5C1.6 14 1.6 11 3 9.5ZM8.6 9.5L8.6 15.5M15.4 9.5L15.4 15.5M11 12.5L11.1 12.5M13 12.5L13.1 12.5',
  umbrella:
    'M3 12C4 2.6 20 2.6 21 12C19.6 10.6 16.6 10.6 15 12C13.6 10.6 10.4 10.6 9 12C7.4 10.6 4.4 10.6 3 12ZM12 5L12 3M12 11L12 18.6C12 21.4 8.6 21.4 8.6 19',
  flask:
    'M9.4 3L14.6 3L14.6 6.4L9.4 6.4ZM8 8.6C8 7.2 8.6 6.4 9.4 6.4L14.6 6.4C15.4 6.4 16 7.2 16 8.6L16 21L8 21ZM8 11L16 11M8 17L16 17',
  towel: 'M4 6L17 6C20.4 6 20.4 11 17 11L4 11ZM4 11L4 19L17 19C20.4 19 20.4 14 17 14M17 11C20 11 20 14 17 14L4 14',
  thread:
    'M7 4L15 4L15 6.4L7 6.4ZM7 17.6L15 17.6L15 20L7 20ZM8.4 6.4L8.4 17.6M13.6 6.4L13.6 17.6M8.4 9L13.6 8M8.4 12L13.6 11M8.4 15L13.6 14M13.6 16C17 16 18.6 13 18.6 9M18.6 4L18.6 21',
  laundry: 'M3 8L5 20L19 20L21 8M3 8C5 6.5 7 9.5 9 8C11 6.5 13 9.5 15 8C17 6.5 19 9.5 21 8',
  mask: 'M3 9.4C6 7.4 18 7.4 21 9.4C21.6 14.6 15.6 17.4 13.4 14C12.8 13 11.2 13 10.6 14C8.4 17.4 2.4 14.6 3 9.4ZM3 9.4L1.8 8.4M21 9.4L22.2 8.4M5.6 11.4C7 12.6 9 12.6 10 11.8M14 11.8C15 12.6 17 12.6 18.4 11.4',
  earplugs:
    'M5 12L9.6 7.4L13 10.8L8.4 15.4C6 17.8 2.8 14.4 5 12ZM9.6 7.4C12.4 5.6 14.8 8 13 10.8M13 18L16.6 14.4L19.4 17.2L15.8 20.8C13.8 22.4 11.4 20 13 18ZM16.6 14.4C18.8 13 20.8 15 19.4 17.2',
  glassesCase:
    'M3 12C3 8.6 5 8 8 8L16 8C19 8 21 8.6 21 12C21 15.4 19 17 16 17L8 17C5 17 3 15.4 3 12ZM3 12L21 12M11 12L11 13.6L13 13.6L13 12',
  lenses: 'M7.5 8C12 8 12 16 7.5 16C3 16 3 8 7.5 8ZM16.5 8C21 8 21 16 16.5 16C12 16 12 8 16.5 8ZM10.8 12L13.2 12',
  tissues:
    'M3 10L21 10L21 19L3 19ZM8 10C8.6 8 7.4 6.4 8.6 4C10.4 5 11.6 3.6 13 3.6C13.6 5.6 16 5.6 15.6 7.4C15.4 8.4 15.8 9.2 16 10',
  pouch: 'M4 9L20 9L19 20L5 20ZM4 9C6 5.6 18 5.6 20 9M8 12L16 12',
  parcel: 'M4 8L12 4L20 8L20 17L12 21L4 17ZM4 8L12 12L20 8M12 12L12 21',
} as const satisfies Record<string, string>;
export type SundryIcon = keyof typeof ICONS;
export const SUNDRY_ICONS = Object.keys(ICONS) as readonly SundryIcon[];

/** Words of a sundry's name that choose its icon; the first line that fits wins. */
const WORDS: readonly (readonly [SundryIcon, RegExp])[] = [
  ['earplugs', /\bear ?plugs\b/],
  ['flask', /\b(flask|water bottle|thermos|drinking)\b/],
  ['boxers', /\b(boxers?|trunks|briefs|underpants)\b/],
  ['knickers', /\b(knickers|pants|underwear|thongs?)\b/],
  ['bra', /\b(bras?|bralettes?)\b/],
  ['vest', /\b(vests?|camisoles?|undershirts?|slips?)\b/],
  ['tights', /\b(tights|stockings|leggings)\b/],
  ['slippers', /\bslippers\b/],
  ['socks', /\b(socks?|liners)\b/],
  ['pyjamas', /\b(pyjamas|pajamas|nightdress|nightshirt|nightie)\b/],
  ['toothbrush', /\b(toothbrush(es)?|floss|tooth)\b/],
  ['sunCream', /\b(sun ?(cream|screen|block|lotion|milk)|after ?sun)\b/],
  ['hairbrush', /\bhair ?brush\b/],
  ['comb', /\bcombs?\b/],
  ['razor', /\b(razors?|shav(er|ing))\b/],
  ['soap', /\bsoaps?\b/],
  ['lipstick', /\b(lip ?sticks?|lip ?balm|lip)\b/],
  ['spray', /\b(scent|perfume|cologne|spray|deodorant|mist|hair ?spray|repellent)\b/],
  ['drop', /\b(foundation|oil|serum|drops)\b/],
  ['bottle', /\b(shampoo|conditioner|wash|gel|cleanser|remover|mouthwash|micellar)\b/],
  ['tube', /\b(toothpaste|tube|paste|hand cream|mascara|ointment)\b/],
  ['jar', /\b(creams?|moisturi[sz]er|balm|jar|wax|make-?up|powder|cotton pads)\b/],
  ['passport', /\b(passports?|visa|identity|id card)\b/],
  ['ticket', /\b(tickets?|boarding pass(es)?|reservations?|vouchers?|rail pass)\b/],
  ['purse', /\b(coins?|cash|wallet|purse|money|notes)\b/],
  ['card', /\b(cards?|insurance|licence|license)\b/],
  ['key', /\b(keys?|padlock|lock)\b/],
  ['book', /\b(books?|novel|guide|reader|maps?)\b/],
  ['pen', /\b(pens?|pencils?|notebook|journal)\b/],
  ['battery', /\b(power ?banks?|batter(y|ies))\b/],
  ['adaptor', /\b(adaptors?|adapters?|converter)\b/],
  ['plug', /\b(chargers?|leads?|cables?|plugs?)\b/],
  ['headphones', /\b(head ?phones|ear ?phones|earbuds)\b/],
  ['phone', /\b(phones?|mobile)\b/],
  ['camera', /\b(cameras?|binoculars)\b/],
  ['laptop', /\b(laptop|tablet|computer)\b/],
  ['plaster', /\b(plasters?|blisters?|bandages?)\b/],
  ['pills', /\b(pills?|tablets|capsules|painkillers?|antihistamines?|vitamins)\b/],
  ['medicine', /\b(medicines?|medication|first aid|inhaler|prescriptions?)\b/],
  ['umbrella', /\b(umbrellas?|parasol)\b/],
  ['towel', /\b(towels?|sarong|blanket)\b/],
  ['thread', /\b(sewing|needle|thread|mending)\b/],
  ['laundry', /\b(laundry|washing|detergent)\b/],
  ['mask', /\b(eye ?masks?|sleep ?mask)\b/],
  ['glassesCase', /\b(glasses|spectacle|case)\b/],
  ['lenses', /\b(contact )?lens(es)?\b/],
  ['tissues', /\b(tissues?|handkerchiefs?|wipes)\b/],
];

const BY_GROUP: Readonly<Record<Sundry['group'], SundryIcon>> = {
  underthings: 'knickers',
  'wash bag': 'pouch',
  liquids: 'bottle',
  papers: 'ticket',
  electrics: 'plug',
  medicines: 'medicine',
  other: 'parcel',
};

/** The icon for a sundry: by the words of its name, or else by its group. */
export const sundryIconOf = (sundry: Pick<Sundry, 'name' | 'group'>): SundryIcon => {
  const name = sundry.name.toLowerCase();
  return WORDS.find(([, words]) => words.test(name))?.[0] ?? BY_GROUP[sundry.group];
};

const tenth = (path: string): string =>
  path.replace(/-?\d+(\.\d+)?/g, (value) => String(Math.round(Number(value) * 100) / 1000));

/** An icon in ink, of one line weight, 2.4 cm square. */
export const drawSundryIcon = (icon: SundryIcon, ink = INK): Drawing => {
  const mark: Mark = { path: tenth(ICONS[icon]), stroke: ink, width: WEIGHT, round: true };
  return {
    box: { x: 0, y: 0, width: SIDE, height: SIDE },
    outline: [
      [
        [0, 0],
        [SIDE, 0],
        [SIDE, SIDE],
        [0, SIDE],
      ],
    ],
    tiles: [],
    marks: [mark],
    anchors: {},
    cloth: ink,
  };
};

/** A sundry of the packing list as a small ink drawing. */
export const drawSundry = (sundry: Pick<Sundry, 'name' | 'group'>, ink = INK): Drawing =>
  drawSundryIcon(sundryIconOf(sundry), ink);
