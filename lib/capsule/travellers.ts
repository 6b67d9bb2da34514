import { relatePieces } from '../colour/index.ts';
import type { Brief, IsoDate, Look, Piece, Plan } from '../model/index.ts';
import { KINDS, QUIET_PATTERNS } from '../vocabulary/index.ts';
import { type Phrase, phrase } from '../words/index.ts';
import { limitsOf, packedOf } from './limits.ts';

export interface Traveller {
  readonly name: string;
  readonly pieces: readonly Piece[];
  readonly plan: Plan;
}

/** How the looks of two travellers sit beside each other at one occasion. */
export interface SideBySide {
  readonly date: IsoDate;
  readonly occasion: string;
  readonly travellers: readonly [string, string];
  readonly goes: boolean;
  /** What stands against it, or what ties the two together. */
  readonly reasons: readonly Phrase[];
}

export interface Lendable {
  readonly piece: Piece;
  readonly from: string;
  readonly to: string;
  /** The line of reasoning: one size fits all, or the same size. */
  readonly why: Phrase;
}

export interface Together {
  readonly days: readonly SideBySide[];
  readonly lendable: readonly Lendable[];
  /** All clothes against all bags of the brief. */
  readonly bags: {
    readonly grams: number;
    readonly litres: number;
    readonly gramsAtMost?: number;
    readonly litresAtMost?: number;
    readonly fits: boolean;
  };
}

/** What people see from across a room. */
const SEEN: ReadonlySet<string> = new Set(['top', 'bottom', 'one-piece', 'mid layer', 'outer layer', 'cover-up']);
/** Worn in any size. */
const ONE_SIZE: ReadonlySet<string> = new Set(['bags', 'jewellery', 'accessories']);

const seenPieces = (look: Look, pieces: readonly Piece[], without: ReadonlySet<string>): readonly Piece[] =>
  look.worn
    .filter(({ slot, piece }) => SEEN.has(slot) && !without.has(piece))
    .flatMap(({ piece }) => pieces.find(({ id }) => id === piece) ?? []);

const isPrint = ({ pattern }: Piece): boolean => !QUIET_PATTERNS.has(pattern.type);

const judgePicture = (mine: readonly Piece[], theirs: readonly Piece[]): Pick<SideBySide, 'goes' | 'reasons'> => {
  const pairs = mine.flatMap((one) => theirs.map((two) => ({ one, two })));
  const samePrint = pairs.find(({ one, two }) => isPrint(one) && isPrint(two) && one.pattern.type === two.pattern.type);
  const clash = pairs.find(({ one, two }) => !relatePieces(one, two).goes);
  const against = [
    ...(samePrint === undefined
      ? []
      : [
          phrase('capsule', 'same print', {
            one: samePrint.one.name,
            two: samePrint.two.name,
            pattern: samePrint.one.pattern.type,
          }),
        ]),
    ...(clash === undefined
      ? []
      : [
          phrase('capsule', 'clash in picture', { one: clash.one.name, two: clash.two.name }),
          relatePieces(clash.one, clash.two).reason,
        ]),
  ];
  if (against.length > 0) return { goes: false, reasons: against };
  return {
    goes: true,
    reasons: [
      phrase('capsule', 'sits well', {
        colours: [...new Set([...mine, ...theirs].flatMap(({ colours: [ground] }) => ground?.name ?? []))].slice(0, 4),
      }),
    ],
  };
};

const lendableBetween = (from: Traveller, to: Traveller): readonly Lendable[] =>
  from.pieces.flatMap((piece): readonly Lendable[] => {
    const group = KINDS[piece.kind].group;
    if (ONE_SIZE.has(group))
      return [{ piece, from: from.name, to: to.name, why: phrase('capsule', 'lend any size', {}) }];
    const { size } = piece;
    const sameSize =
      size !== undefined && to.pieces.some((own) => own.size === size && KINDS[own.kind].group === group);
    return sameSize
      ? [{ piece, from: from.name, to: to.name, why: phrase('capsule', 'lend same size', { size }) }]
      : [];
  });

/** Two or more on one brief: day by day side by side, what they can lend, and whether the bags hold it all. */
export const travelTogether = (brief: Brief, travellers: readonly Traveller[]): Together => {
  const pairs = travellers.flatMap((one, index) => travellers.slice(index + 1).map((two) => [one, two] as const));
  const lookAt = ({ plan }: Traveller, occasion: string) =>
    plan.days.flatMap(({ occasions }) => occasions).find((planned) => planned.occasion === occasion);
  const days = pairs.flatMap(([one, two]) =>
    brief.occasions.flatMap(({ id, on }): readonly SideBySide[] => {
      const mine = lookAt(one, id);
      const theirs = lookAt(two, id);
      if (mine?.look === undefined || theirs?.look === undefined) return [];
      return [
        {
          date: on,
          occasion: id,
          travellers: [one.name, two.name],
          ...judgePicture(
            seenPieces(mine.look, one.pieces, new Set(mine.layersCarried)),
            seenPieces(theirs.look, two.pieces, new Set(theirs.layersCarried)),
          ),
        },
      ];
    }),
  );
  const limits = limitsOf(brief);
  const packed = travellers.map(({ pieces }) => packedOf(pieces, limits.journeys));
  const grams = packed.reduce((sum, one) => sum + one.grams, 0);
  const litres = packed.reduce((sum, one) => sum + one.litres, 0);
  return {
    days,
    lendable: pairs.flatMap(([one, two]) => [...lendableBetween(one, two), ...lendableBetween(two, one)]),
    bags: {
      grams,
      litres,
      ...(limits.grams === undefined ? {} : { gramsAtMost: limits.grams }),
      ...(limits.litres === undefined ? {} : { litresAtMost: limits.litres }),
      fits:
        grams <= (limits.grams ?? Number.POSITIVE_INFINITY) && litres <= (limits.litres ?? Number.POSITIVE_INFINITY),
    },
  };
};
