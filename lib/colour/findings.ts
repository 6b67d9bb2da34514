import type { Finding, NamedColour, Piece } from '../model/index.ts';
import { phrase } from '../words/index.ts';
import { avoidedIn } from './avoid.ts';
import { strayFromMood } from './mood.ts';
import { isNeutral } from './neutral.ts';
import { type PaletteReport, paletteReport } from './palette-report.ts';
import type { HardToTell } from './vision.ts';

/** Share of top × bottom pairs below which a capsule is called thin, and below which it is worth a word. Own choice. */
const THIN = 0.5;
const FAIR = 0.75;

type ById = (id: string) => Piece | undefined;

const lookUp = (pieces: readonly Piece[]): ById => {
  const byId = new Map(pieces.map((piece) => [piece.id, piece]));
  return (id) => byId.get(id);
};

const nameIn = (pieceOf: ById, id: string): string => pieceOf(id)?.name ?? id;

const lonelyFindings = (report: PaletteReport, pieceOf: ById): readonly Finding[] =>
  report.lonely.map((id) => {
    const piece = pieceOf(id);
    const rescue = report.additions.find(({ frees }) => frees.includes(id));
    return {
      level: 'warning',
      rule: 'colour-belongs-to-no-one',
      message: phrase('colour', 'lonely', { piece: nameIn(pieceOf, id) }),
      reason: phrase('colour', 'lonely why', { colour: piece?.colours[0]?.name ?? '' }),
      mend:
        rescue === undefined
          ? phrase('colour', 'lonely mend', {})
          : phrase('colour', 'lonely mend by', { colour: rescue.colour.name, as: rescue.as }),
      ...(piece === undefined ? {} : { file: piece.file }),
      about: [id],
    };
  });

const alikeFindings = (report: PaletteReport, pieceOf: ById): readonly Finding[] =>
  report.tooAlike.map(({ place, one, two, word }) => ({
    level: 'advice',
    rule: 'colour-too-alike',
    message: phrase('colour', 'too alike', { one: nameIn(pieceOf, one), two: nameIn(pieceOf, two), place, word }),
    mend: phrase('colour', 'too alike mend', {}),
    about: [one, two],
  }));

const pairFindings = (report: PaletteReport, pieceOf: ById): readonly Finding[] =>
  report.pairs
    .filter(({ relation }) => relation.relation === 'near miss')
    .map(({ top, bottom, relation }) => ({
      level: 'advice',
      rule: 'colour-near-miss',
      message: phrase('colour', 'near miss pair', { top: nameIn(pieceOf, top), bottom: nameIn(pieceOf, bottom) }),
      reason: relation.reason,
      about: [top, bottom],
    }));

const thinFindings = (report: PaletteReport): readonly Finding[] => {
  const of = report.pairs.length;
  const share = of === 0 ? 1 : report.pairsGoing / of;
  if (share >= FAIR) return [];
  const [best] = report.additions;
  return [
    {
      level: share < THIN ? 'warning' : 'advice',
      rule: 'colour-few-pairs',
      message: phrase('colour', 'few pairs', { going: report.pairsGoing, of }),
      ...(best === undefined ? {} : { mend: best.reason }),
      about: [],
    },
  ];
};

/** With bright tops neutral bottoms: then every top goes with every bottom. common practice, no source */
const bottomFindings = (pieces: readonly Piece[]): readonly Finding[] => {
  const bottoms = pieces.filter(({ places }) => places.includes('bottom'));
  const neutral = bottoms.filter(({ colours }) => colours[0] !== undefined && isNeutral(colours[0]));
  if (bottoms.length === 0 || neutral.length > 0) return [];
  return [
    {
      level: 'advice',
      rule: 'colour-no-neutral-bottom',
      message: phrase('colour', 'no neutral bottom', {}),
      mend: phrase('colour', 'no neutral bottom mend', {}),
      about: bottoms.map(({ id }) => id),
    },
  ];
};

const avoidFindings = (pieces: readonly Piece[], avoid: readonly NamedColour[]): readonly Finding[] =>
  pieces.flatMap((piece) =>
    avoidedIn(piece, avoid)
      .slice(0, 1)
      .map(
        ({ colour, avoided }): Finding => ({
          level: 'error',
          rule: 'colour-refused',
          message: phrase('colour', 'refused', { piece: piece.name, colour: colour.name, avoided: avoided.name }),
          mend: phrase('colour', 'refused mend', {}),
          file: piece.file,
          about: [piece.id],
        }),
      ),
  );

const moodFindings = (pieces: readonly Piece[], mood: readonly NamedColour[]): readonly Finding[] =>
  pieces.flatMap((piece): Finding[] => {
    const stray = strayFromMood(piece, mood);
    if (stray === undefined) return [];
    return [
      {
        level: 'advice',
        rule: 'colour-outside-mood',
        message: phrase('colour', 'outside mood', { piece: piece.name, colour: stray.name }),
        mend: phrase('colour', 'outside mood mend', { mood: mood.map(({ name }) => name) }),
        file: piece.file,
        about: [piece.id],
      },
    ];
  });

/** What else the findings are measured against. */
export interface ColourWishes {
  /** The colours the client refuses. */
  readonly avoid?: readonly NamedColour[];
  /** The palette of the capsule's mood. */
  readonly mood?: readonly NamedColour[];
}

/**
 * What `check` has to say of a capsule's colours, errors first. `report` saves computing it twice.
 */
export const colourFindings = (
  pieces: readonly Piece[],
  wishes: ColourWishes = {},
  report: PaletteReport = paletteReport(pieces),
): readonly Finding[] => {
  const pieceOf = lookUp(pieces);
  return [
    ...avoidFindings(pieces, wishes.avoid ?? []),
    ...lonelyFindings(report, pieceOf),
    ...thinFindings(report),
    ...bottomFindings(pieces),
    ...pairFindings(report, pieceOf),
    ...alikeFindings(report, pieceOf),
    ...moodFindings(pieces, wishes.mood ?? []),
  ];
};

/** A look with a number and the pieces of it that two-cone vision can hardly tell apart. */
export interface LookToName {
  readonly number: number;
  readonly hardToTell: readonly HardToTell[];
}

/**
 * The pieces that are hard to tell apart with two-cone vision, with the looks that show them together, as advice: pictures
 * of those looks carry the names in words.
 */
export const lookVisionFindings = (pieces: readonly Piece[], looks: readonly LookToName[]): readonly Finding[] => {
  const pieceOf = lookUp(pieces);
  const pairs = new Map<string, HardToTell & { readonly looks: number[] }>();
  for (const { number, hardToTell } of looks) {
    for (const pair of hardToTell) {
      const key = [pair.one, pair.two].sort().join(' ');
      const known = pairs.get(key);
      if (known === undefined) pairs.set(key, { ...pair, looks: [number] });
      else known.looks.push(number);
    }
  }
  return [...pairs.values()].map(({ one, two, visions, looks: shownIn }) => ({
    level: 'advice',
    rule: 'colour-hard-to-tell',
    message: phrase('colour', 'hard to tell', { one: nameIn(pieceOf, one), two: nameIn(pieceOf, two), visions }),
    reason: phrase('colour', 'hard to tell in', { looks: shownIn.map(String) }),
    mend: phrase('colour', 'hard to tell mend', {}),
    about: [one, two],
  }));
};
