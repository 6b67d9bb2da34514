import { cloOfLook } from '../../lib/comfort/index.ts';
import type { Look, Piece, WornPiece } from '../../lib/model/index.ts';
import type { LookRestriction, LookSource, RankedLook } from '../../lib/plan/index.ts';
import { dressIndex, LAYER_SLOTS, SLOTS, type Slot } from '../../lib/vocabulary/index.ts';

/** Taken off at the door, and so without a say in the dress code. common practice, no source */
const LEFT_AT_DOOR =
  /coat$|^(parka|rain jacket|windbreaker|down jacket|cape|beanie|(chunky )?scarf|(leather )?gloves|mittens)$/;

/** Piece sets that never go together, as `a+b` in any order. */
export type Clashes = ReadonlySet<string>;

const inOrder = (worn: readonly WornPiece[]): Look => {
  const sorted = worn.toSorted((a, b) => SLOTS.indexOf(a.slot) - SLOTS.indexOf(b.slot));
  return { id: sorted.map(({ piece }) => piece).join('+'), worn: sorted };
};

const seats = (pieces: readonly Piece[], slot: Slot): readonly WornPiece[] =>
  pieces.filter(({ places }) => (places as readonly string[]).includes(slot)).map(({ id }) => ({ piece: id, slot }));

const combine = (parts: readonly (readonly (readonly WornPiece[])[])[]): readonly (readonly WornPiece[])[] =>
  parts.reduce<readonly (readonly WornPiece[])[]>(
    (looks, part) => looks.flatMap((look) => part.map((more) => [...look, ...more])),
    [[]],
  );

/** Every look of these pieces, by brute force: core, at most one mid layer, one outer layer, a pair of shoes, a bag. */
export const allLooks = (pieces: readonly Piece[], clashes: Clashes = new Set()): readonly Look[] => {
  const one = (slot: Slot) => seats(pieces, slot).map((seat) => [seat]);
  const optional = (slot: Slot) => [[], ...one(slot)];
  const dressed = [...one('one-piece'), ...combine([one('top'), one('bottom')])];
  const land = combine([dressed, optional('mid layer'), optional('outer layer'), one('shoes'), optional('bag')]);
  const water = combine([one('swim'), optional('cover-up')]);
  return [...land, ...water]
    .filter((worn) => new Set(worn.map(({ piece }) => piece)).size === worn.length)
    .filter((worn) => !worn.some((a) => worn.some((b) => clashes.has(`${a.piece}+${b.piece}`))))
    .map(inOrder);
};

/** What an occasion asks of a look, written down a second time. */
export const meets = (look: Look, pieces: ReadonlyMap<string, Piece>, restriction: LookRestriction): boolean => {
  const worn = look.worn.map(({ piece }) => {
    const found = pieces.get(piece);
    if (found === undefined) throw new Error(piece);
    return found;
  });
  const ids = worn.map(({ id }) => id);
  if (restriction.without?.some((id) => ids.includes(id))) return false;
  if (restriction.pieces?.some((id) => !ids.includes(id))) return false;
  const { dress, clo, needs = [], heelCmAtMost } = restriction;
  if (
    dress !== undefined &&
    worn.some(
      (piece) =>
        !LEFT_AT_DOOR.test(piece.kind) && (piece.dress.low > dressIndex(dress) || piece.dress.high < dressIndex(dress)),
    )
  )
    return false;
  const range = cloOfLook(look, pieces);
  if (clo !== undefined && (range.on < clo.min - 1e-9 || range.off > clo.max + 1e-9)) return false;
  if (heelCmAtMost !== undefined && worn.some(({ heelCm }) => heelCm > heelCmAtMost)) return false;
  const swims = look.worn.some(({ slot }) => slot === 'swim');
  if (swims !== needs.includes('swim')) return false;
  return needs.every((need) =>
    look.worn.some(({ slot }, index) => {
      const { suits = [], covers = [] } = worn[index] ?? {};
      if (need === 'swim') return slot === 'swim';
      if (need === 'shoulders covered') return slot !== 'scarf' && covers.includes('shoulders');
      if (need === 'knees covered') return slot !== 'legwear' && slot !== 'leg layer' && covers.includes('knees');
      if (need === 'head covered') return covers.includes('head');
      if (need === 'rain') return LAYER_SLOTS.has(slot) && suits.includes('rain');
      return (need === 'sun' || slot === 'shoes') && suits.includes(need);
    }),
  );
};

/** A small ranking of its own: an order that depends on the ids alone. */
export const bruteForce = (pieces: readonly Piece[], clashes: Clashes = new Set()): LookSource => {
  const byId = new Map(pieces.map((piece) => [piece.id, piece]));
  const score = (look: Look): number =>
    [...look.id].reduce((sum, letter) => (sum * 31 + letter.charCodeAt(0)) % 1009, 7);
  const looks: readonly RankedLook[] = allLooks(pieces, clashes)
    .map((look) => ({ look, score: score(look), reasons: [] }))
    .sort((a, b) => b.score - a.score || (a.look.id < b.look.id ? -1 : 1));
  return {
    rank: (k, restriction = {}) => looks.filter(({ look }) => meets(look, byId, restriction)).slice(0, k),
    explain: (ids, restriction = {}) => {
      const found = looks.find(
        ({ look }) => look.worn.length === ids.length && look.worn.every(({ piece }) => ids.includes(piece)),
      );
      if (found === undefined) return { goes: false, reasons: [] };
      return { goes: meets(found.look, byId, restriction), look: found.look, reasons: [] };
    },
  };
};
