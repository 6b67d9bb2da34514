import type { NamedColour, Piece } from '../model/index.ts';
import { type Phrase, phrase } from '../words/index.ts';
import { type DifferenceWord, differenceDirection, differenceOf, differenceWord } from './difference.ts';
import { type PaletteAddition, paletteAdditions } from './palette-additions.ts';
import { type PaletteColour, paletteColours } from './palette-colours.ts';
import { type Companions, companions, type PalettePair, palettePairs } from './palette-pairs.ts';
import { relateMotif } from './piece-relation.ts';
import { type ColourRelation, relate } from './relation.ts';
import { fitHueTemplate, type HueTemplateFit } from './templates.ts';
import { type TooAlike, tooAlike } from './too-alike.ts';
import { type HardToTell, hardToTellApart } from './vision.ts';

/** Two swatches of a palette, their relation and their difference in words. */
export interface PaletteRelation {
  readonly one: NamedColour;
  readonly two: NamedColour;
  readonly relation: ColourRelation;
  /** CIEDE2000. */
  readonly difference: number;
  readonly word: DifferenceWord;
  /** The difference as a sentence: "navy is a shade darker than denim". */
  readonly said: Phrase;
}

/** Everything a page needs to draw the palette of a capsule. Colour alone: shape, formality and vetoes have no say. */
export interface PaletteReport {
  /** Swatches, largest first. */
  readonly colours: readonly PaletteColour[];
  /** Every two swatches, in swatch order. */
  readonly relations: readonly PaletteRelation[];
  /** Every top with every bottom. */
  readonly pairs: readonly PalettePair[];
  readonly pairsGoing: number;
  readonly companions: readonly Companions[];
  /** Ids of pieces that go with none of their possible partners. */
  readonly lonely: readonly string[];
  readonly tooAlike: readonly TooAlike[];
  readonly template: HueTemplateFit;
  /** 0 to 1: mean score of every two swatches, weighted by how much of both is seen. */
  readonly cohesion: number;
  readonly additions: readonly PaletteAddition[];
  /** Pairs of pieces that run together for a two-cone vision. */
  readonly hardToTell: readonly HardToTell[];
  /** The report in a few sentences, most important first. */
  readonly summary: readonly Phrase[];
}

/** The difference of the second colour from the first, in words. */
export const sayDifference = (one: NamedColour, two: NamedColour): Phrase => {
  const word = differenceWord(differenceOf(one.hex, two.hex));
  const values = { one: one.name, two: two.name };
  if (word === 'same to the eye') return phrase('colour', 'same to the eye', values);
  const direction = differenceDirection(one, two);
  if (word === 'nearly the same') return phrase('colour', 'nearly the same', { ...values, direction });
  if (word === 'a shade apart') return phrase('colour', 'a shade apart', { ...values, direction });
  return phrase('colour', word === 'far apart' ? 'far apart' : 'clearly different', { ...values, direction });
};

const paletteRelations = (colours: readonly PaletteColour[]): readonly PaletteRelation[] =>
  colours.flatMap(({ colour: one, ground }, index) =>
    colours.slice(index + 1).map(({ colour: two, ground: groundToo }) => {
      const difference = differenceOf(one.hex, two.hex);
      return {
        one,
        two,
        relation: ground && groundToo ? relate(one, two) : relateMotif(one, two),
        difference: Number(difference.toFixed(2)),
        word: differenceWord(difference),
        said: sayDifference(one, two),
      };
    }),
  );

/** A palette of one swatch is wholly of a piece. */
const cohesionOf = (colours: readonly PaletteColour[], relations: readonly PaletteRelation[]): number => {
  const shares = new Map(colours.map(({ colour, share }) => [colour, share]));
  const weighed = relations.map(({ one, two, relation }) => ({
    score: relation.score,
    weight: Math.sqrt((shares.get(one) ?? 0) * (shares.get(two) ?? 0)),
  }));
  const weight = weighed.reduce((sum, next) => sum + next.weight, 0);
  return weight === 0
    ? 1
    : Number((weighed.reduce((sum, next) => sum + next.score * next.weight, 0) / weight).toFixed(4));
};

/** Cohesion in words, from the closest. Own choice, tried on capsules that look right and wrong. */
const COHESION_ENDS = { close: 0.74, good: 0.66, loose: 0.55 } as const;

const summaryOf = (report: Omit<PaletteReport, 'summary'>, pieces: readonly Piece[]): readonly Phrase[] => {
  const names = (wanted: (swatch: PaletteColour) => boolean): string[] => [
    ...new Set(report.colours.filter(wanted).map(({ colour }) => colour.name)),
  ];
  const cloth = (role: PaletteColour['role'], neutral?: boolean): string[] =>
    names((swatch) => swatch.role === role && !swatch.metal && (neutral ?? swatch.neutral) === swatch.neutral);
  const parts = [
    ['palette base', cloth('base')],
    ['palette support', cloth('support', false)],
    ['palette neutrals', cloth('support', true)],
    ['palette accent', cloth('accent')],
    ['palette metal', names(({ metal }) => metal)],
  ] as const;
  const said: Phrase[] = parts.flatMap(([key, colours]) =>
    colours.length === 0 ? [] : [phrase('colour', key, { colours })],
  );
  if (report.pairs.length > 0) {
    // near misses go at a pinch, and are criticised: they are not counted among what goes
    const near = report.pairs.filter(({ relation }) => relation.goes && relation.relation === 'near miss').length;
    said.push(
      phrase('colour', 'palette pairs', { going: report.pairsGoing - near, of: report.pairs.length, nearly: near }),
    );
  }
  if (report.colours.length > 1) said.push(phrase('colour', cohesionWord(report.cohesion), {}));
  said.push(sayTemplate(report.template));
  const lonely = pieces.filter(({ id }) => report.lonely.includes(id)).map(({ name }) => name);
  if (lonely.length > 0) said.push(phrase('colour', 'palette lonely', { pieces: lonely }));
  return said;
};

/** Where the colours that are no neutrals lie on the wheel, by name; those that stray from it are named too. */
const sayTemplate = ({ type, groups, outside }: HueTemplateFit): Phrase => {
  const namesOf = (colours: readonly NamedColour[] = []): string[] => [...new Set(colours.map(({ name }) => name))];
  const [first, second] = [namesOf(groups[0]), namesOf(groups[1])];
  const [only = ''] = first;
  return first.length + second.length + outside.length === 1
    ? phrase('colour', 'template one', { colour: only })
    : phrase('colour', 'template', { type, first, second, outside: namesOf(outside) });
};

const cohesionWord = (cohesion: number): 'cohesion close' | 'cohesion good' | 'cohesion loose' | 'cohesion apart' => {
  if (cohesion >= COHESION_ENDS.close) return 'cohesion close';
  if (cohesion >= COHESION_ENDS.good) return 'cohesion good';
  return cohesion >= COHESION_ENDS.loose ? 'cohesion loose' : 'cohesion apart';
};

/**
 * The palette of a capsule: swatches with roles and relations, which pairs go, who stands alone, what would help. What is
 * suggested keeps to the colours of the mood where there are any.
 */
export const paletteReport = (pieces: readonly Piece[], mood: readonly NamedColour[] = []): PaletteReport => {
  const colours = paletteColours(pieces);
  const relations = paletteRelations(colours);
  const pairs = palettePairs(pieces);
  const found = companions(pieces);
  const report = {
    colours,
    relations,
    pairs,
    pairsGoing: pairs.filter(({ relation }) => relation.goes).length,
    companions: found,
    lonely: found.filter(({ of, goesWith }) => of > 0 && goesWith.length === 0).map(({ piece }) => piece),
    tooAlike: tooAlike(pieces),
    template: fitHueTemplate(colours),
    cohesion: cohesionOf(colours, relations),
    additions: paletteAdditions(pieces, mood),
    hardToTell: hardToTellApart(pieces),
  };
  return { ...report, summary: summaryOf(report, pieces) };
};
