import type { Formats } from '../formats.ts';

type Two = { readonly one: string; readonly two: string };
type Most = { readonly pieces: readonly string[]; readonly most: number };

/** English sentences of the outfit room. */
export const outfit = {
  'rule colour': () => 'Colours that are worn together go together.',
  'rule hue-families': () => 'A look keeps to a few hue families; neutrals are free.',
  'rule pattern-count': () => 'A look has few prints.',
  'rule pattern-scale': () => 'Two prints differ in scale.',
  'rule pattern-colour': () => 'Two prints share a colour.',
  'rule proportion': () => 'Full above with close below, or close above with full below.',
  'rule lengths': () => 'A long top needs a bottom that ends at the knee or lower.',
  'rule layer-over': () => 'A layer has room for what is under it, and is no shorter than a layer under it.',
  'rule one-of-a-kind': () => 'Two pieces of one kind are not worn over each other.',
  'rule fabric': () => 'Fine cloth is not worn with rough, nor denim with denim of nearly the same blue.',
  'rule dress-meets': () => 'All pieces of a look have a dress code in common.',
  'rule one-season': () => 'Shorts and bare shoes are not worn with winter clothes.',
  'rule shoes-suit': () => 'Shoes suit the hem above them.',
  'rule on-the-way': () =>
    'A coat, gloves or a scarf for warmth set no dress code; they are about as dressy as the rest.',
  'rule shorts-shoes': () => 'Shorts go with light shoes: trainers, canvas, loafers or sandals.',
  'rule underlayer-alone': () => 'A thermal top is worn under something.',
  'rule underlayer-hidden': () =>
    'Thermal underwear goes under what hides it: long sleeves and covered shoulders, or covered legs, nothing sheer.',
  'rule bag-by-the-water': () => 'A bag for the water is of cloth or straw.',
  'rule legwear-suits': () => 'Legwear suits the shoes and is seen below the hem.',
  'rule bare-legs': () => 'A dressy knee-length hem asks for legwear.',
  'rule heels-on-ground': () => 'On uneven ground and long walks heels are low.',
  'rule dry-feet': () => 'In rain and snow shoes are closed.',
  'rule one-statement': () => 'One statement piece carries a look.',
  'rule ornaments': () => 'A look has few ornaments.',
  'rule metals': () => 'Gold with gold, silver with silver.',
  'rule one-at-the-neck': () => 'One thing at the neck: a scarf, a necklace, a tie or a bow.',
  'rule tie-suits': () =>
    'A tie needs a collar that takes one, long trousers and leather shoes, and goes under a jacket or a fine knit.',
  'rule tie-jacket': () => 'A tie is not worn on a shirt alone.',
  'rule belt-suits': () => 'A belt needs loops or a waist; braces need trousers.',
  'rule lapel-suits': () => 'A pocket square needs a breast pocket.',
  'rule pocket-square': () => 'A pocket square needs a jacket.',
  'rule off-the-skin': () => 'Cloth the brief keeps off the skin stays out of the places that touch it.',
  'rule sleeves-beneath': () => 'Under an unlined layer of such cloth there are sleeves as long.',
  'rule never-together': () => 'Pieces the stylist keeps apart are never worn together.',
  'rule always-together': () => 'Pieces the stylist keeps together are worn together.',

  'unit families': () => 'hue families in one look',
  'unit prints': () => 'prints in one look',
  'unit pieces': () => 'pieces in one look',
  'unit volume': () => 'steps of volume, from 0 close to 3 full',
  'unit difference': () => 'colour difference, CIEDE2000',
  'unit steps': () => 'steps on the dress scale',
  'unit dress': () => 'step on the dress scale, from 0 casual to 4 formal',
  'unit clo': () => 'clo',
  'unit cm': () => 'cm',

  'too many hues': (v: { families: readonly string[]; most: number }, f: Formats) =>
    `${f.list(v.families)} are ${f.count(v.families.length)} hue families; keep to ${f.count(v.most)}.`,
  'too many prints': (v: Most, f: Formats) =>
    v.most === 0
      ? `${f.list(v.pieces)}: this capsule wears no print.`
      : `${f.list(v.pieces)} are ${f.count(v.pieces.length)} prints; ${f.plural(v.most, { one: 'one is enough', other: '# are enough' })}.`,
  'prints of one scale': (v: Two & { scale: string }) =>
    `${v.one} and ${v.two} are two prints of the same scale (${v.scale}): choose one, or a smaller with a larger.`,
  'prints share no colour': (v: Two) => `${v.one} and ${v.two} are two prints without a colour in common.`,
  'full on full': (v: { top: string; bottom: string }) =>
    `${v.top} and ${v.bottom} are both full: one of them should be closer to the body.`,
  'long over short': (v: { top: string; bottom: string }) =>
    `${v.top} reaches the thigh and hides ${v.bottom}: choose a longer bottom.`,
  'no room under': (v: { under: string; over: string }) => `${v.under} is too full to go under ${v.over}.`,
  'hangs out under': (v: { under: string; over: string }) => `${v.under} is longer than ${v.over} and hangs out below.`,
  'jacket on jacket': (v: { under: string; over: string }) =>
    `${v.over} is a jacket itself: over ${v.under} wear a coat.`,
  'layer under layer': (v: { under: string; over: string }) =>
    `${v.under} is itself a layer: it goes over ${v.over}, not under it.`,
  'jumper on jumper': (v: { under: string; over: string }) =>
    `${v.over} is pulled over the head and needs something flat under it, not ${v.under}.`,
  'thick on thick': (v: { under: string; over: string }) =>
    `${v.under} and ${v.over} are two thick knits: one is enough.`,
  'two of a kind': (v: Two) => `${v.one} and ${v.two} are the same kind of piece, one over the other.`,
  'fine with rough': (v: Two & { fabrics: readonly string[] }, f: Formats) =>
    `${v.one} and ${v.two}: ${f.list(v.fabrics)} do not sit well together.`,
  'denim on denim': (v: Two) =>
    `${v.one} and ${v.two} are denim of nearly the same blue: choose a clearly lighter or darker one.`,
  'leather on leather': (v: Two) => `${v.one} and ${v.two} are both leather: one is enough.`,
  'dress apart': (v: { plain: string; dressy: string; ends: string; begins: string }) =>
    `${v.plain} (up to ${v.ends}) and ${v.dressy} (from ${v.begins}) have no dress code in common.`,
  'plainer on the way': (v: { piece: string }) =>
    `${v.piece} is plainer than what is worn with it: fine on the way, since it comes off at the door.`,
  'dressier on the way': (v: { piece: string }) =>
    `${v.piece} is dressier than what is worn with it: fine on the way, since it comes off at the door.`,
  'dress span': (v: { low: string; high: string }) =>
    v.low === v.high ? `Dress code: ${v.low} only.` : `Dress codes: ${v.low} to ${v.high}.`,
  'dress no plainer': (v: { pieces: readonly string[]; low: string }, f: Formats) =>
    `No plainer than ${v.low}: ${f.list(v.pieces)}.`,
  'dress no dressier': (v: { pieces: readonly string[]; high: string }, f: Formats) =>
    `No dressier than ${v.high}: ${f.list(v.pieces)}.`,
  'two seasons': (v: { bare: string; winter: string }) =>
    `${v.bare} with ${v.winter}: one is for warm days, the other for cold ones.`,
  'bag not by water': (v: { bag: string }) => `${v.bag} is better left away from wet things and sand.`,
  'bare shoes': (v: { legwear: string; shoes: string }) => `${v.shoes} are worn with bare feet, not with ${v.legwear}.`,
  'socks with heels': (v: { legwear: string; shoes: string }) => `${v.legwear} do not suit the heel of ${v.shoes}.`,
  'unseen legwear': (v: { legwear: string; garment: string }) => `Nobody sees ${v.legwear} under ${v.garment}.`,
  'boots under trousers': (v: { shoes: string; garment: string }) =>
    `${v.shoes} need a slim leg or a hem above them; ${v.garment} would bunch.`,
  'walking boots with fine': (v: { shoes: string; garment: string }) => `${v.shoes} are too rugged for ${v.garment}.`,
  'closed shoes by water': (v: { shoes: string }) => `${v.shoes} are closed; with swimwear wear something open.`,
  'bare legs': (v: { garment: string }) => `${v.garment}: dressy and short enough to ask for legwear.`,
  'heels on ground': (v: { shoes: string; heelCm: number; mostCm: number }, f: Formats) =>
    `${v.shoes} have a heel of ${f.centimetres(v.heelCm)}; on uneven ground and long walks keep to ${f.centimetres(v.mostCm)} at most.`,
  'open in rain': (v: { shoes: string }) => `${v.shoes} are open: feet get wet and cold.`,
  'too many statements': (v: Most, f: Formats) =>
    `${f.list(v.pieces)} each ask to be looked at; ${v.most === 0 ? 'leave them out' : 'keep one'}.`,
  'too many ornaments': (v: Most, f: Formats) =>
    `${f.list(v.pieces)} are ${f.count(v.pieces.length)} ornaments; ${f.plural(v.most, { one: 'one is enough', other: '# are enough' })}.`,
  'metals apart': (v: Two) => `${v.one} and ${v.two} are of different metals.`,
  'two at the neck': (v: Two) => `${v.one} and ${v.two} both sit at the neck.`,
  'against the skin': (v: { pieces: readonly string[] }, f: Formats) =>
    `${f.list(v.pieces)} would touch the skin, and the brief keeps that cloth off it.`,
  'bare beneath': (v: { over: string; beneath: string }) =>
    `${v.over} would touch what ${v.beneath} leaves bare, and the brief keeps that cloth off the skin.`,
  'takes no tie': (v: { tie: string; top: string }) => `${v.top} has no collar for ${v.tie}.`,
  'tie with shorts': (v: { tie: string; shorts: string }) => `${v.tie} is not worn with ${v.shorts}.`,
  'tie with shoes': (v: { tie: string; shoes: string }) => `${v.tie} asks for leather shoes, not ${v.shoes}.`,
  'heavy with shorts': (v: { shoes: string; shorts: string }) => `${v.shoes} are heavy with ${v.shorts}.`,
  'underlayer seen': (v: { under: string; over: string }) => `${v.under} would be seen under ${v.over}.`,
  'underlayer alone': (v: { top: string }) => `${v.top} is made to be worn under something.`,
  'tie under layer': (v: { tie: string; layer: string }) => `${v.tie} is not worn under ${v.layer}.`,
  'tie without jacket': (v: { tie: string }) => `${v.tie} asks for a jacket, a waistcoat or a fine knit over it.`,
  'takes no belt': (v: { belt: string; garment: string }) => `Wear ${v.garment} without ${v.belt}.`,
  'no breast pocket': (v: { square: string; layer: string }) => `${v.layer} has no breast pocket for ${v.square}.`,
  'square without jacket': (v: { square: string }) => `${v.square} needs a jacket.`,
  'never together': (v: { pieces: readonly string[] }, f: Formats) =>
    `The stylist keeps ${f.list(v.pieces)} apart in this capsule.`,
  'always together': (v: { piece: string; missing: string }) => `The stylist wants ${v.piece} worn with ${v.missing}.`,

  'same place': (v: Two & { place: string }) => `${v.one} and ${v.two} are both worn as ${v.place}: choose one.`,
  'no common form': (v: Two) => `${v.one} and ${v.two} have no place in one look.`,
  'too many pieces': (v: { pieces: readonly string[]; places: readonly string[] }, f: Formats) =>
    `${f.list(v.pieces)} share ${f.plural(v.places.length, { one: 'one place', other: '# places' })} of a look (${f.list(v.places)}): leave ${f.plural(v.pieces.length - v.places.length, { one: 'one', other: '#' })} out.`,
  'no form for all': (v: { pieces: readonly string[] }, f: Formats) =>
    `${f.list(v.pieces)} have no place in one look together.`,
  'missing piece': (v: { places: readonly string[] }, f: Formats) =>
    `To be a whole look it needs ${f.either(v.places)}.`,
  'not in wardrobe': (v: { piece: string }) => `There is no piece "${v.piece}" here.`,

  'dress too plain': (v: { piece: string; ends: string; asked: string }) =>
    `${v.piece}: up to ${v.ends} only; the occasion is ${v.asked}.`,
  'dress too formal': (v: { piece: string; begins: string; asked: string }) =>
    `${v.piece}: from ${v.begins} on; the occasion is ${v.asked}.`,
  'form not asked': (v: { swim: number }) =>
    v.swim > 0 ? 'Swimwear is for swimming only.' : 'The occasion does not allow this form of look.',
  'swim asked': () => 'The occasion asks for swimwear.',
  'left out': (v: { piece: string }) => `Leave out ${v.piece}.`,
  'must be worn': (v: { piece: string }) => `${v.piece} must be worn.`,
  'heel too high': (v: { piece: string; heelCm: number; mostCm: number }, f: Formats) =>
    `The heel of ${v.piece} is ${f.centimetres(v.heelCm)}; at most ${f.centimetres(v.mostCm)} is asked.`,
  'shoes do not suit': (v: { piece: string; need: string }) => `${v.piece} are not made for ${v.need}.`,
  'need unmet': (v: { need: string }) => `Nothing in it answers "${v.need}".`,
  'too cold': (v: { on: number; min: number }, f: Formats) =>
    `With everything on it gives ${f.number(v.on, 2)} clo; ${f.number(v.min, 2)} are needed.`,
  'too warm': (v: { off: number; max: number }, f: Formats) =>
    `With the layers off it still gives ${f.number(v.off, 2)} clo; ${f.number(v.max, 2)} are the most that is comfortable.`,

  'no piece for': (v: { place: string }) => `There is no piece for ${v.place}.`,
  'rule forbids all': (v: { rule: string }) =>
    `The house rule "${v.rule}" rules out every look: switch it off or loosen it.`,
  'rules forbid all': (v: { rules: readonly string[] }, f: Formats) =>
    `The house rules ${f.list(v.rules.map((rule) => `"${rule}"`))} together rule out every look.`,
  'asked forbids all': (v: { asked: string }) => `What is asked rules out every look: ${v.asked}.`,
  'pieces forbid all': () => 'These pieces make no look, even with every house rule off.',
  'goes with none': (v: { piece: string; place: string }) => `Nothing worn as ${v.place} goes with ${v.piece}.`,
} satisfies Record<string, (values: never, formats: Formats) => string>;
