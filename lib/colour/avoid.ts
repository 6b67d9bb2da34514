import type { NamedColour, Piece } from '../model/index.ts';
import { differenceOf } from './difference.ts';
import { HUE_FAMILIES, hueFamily } from './hue.ts';
import { isNeutral } from './neutral.ts';
import { seenColours } from './piece-relation.ts';

/** CIEDE2000 within which a cloth is what the client meant by a refused colour: a shade either way. common practice, no source */
const MEANT = 14;

/** Words that mean a whole family when a client refuses them: "no yellow". */
const FAMILY_WORDS: ReadonlySet<string> = new Set(HUE_FAMILIES.filter((family) => family !== 'neutral'));

/** Whether a colour is one that was refused, by its shade or, when a plain family word was refused, by its family. */
export const isAvoided = (colour: NamedColour, avoided: NamedColour): boolean =>
  differenceOf(colour.hex, avoided.hex) < MEANT ||
  (FAMILY_WORDS.has(avoided.name) && !isNeutral(colour) && hueFamily(colour) === avoided.name);

/** The seen colours of a piece that the client refused, with what was refused. */
export const avoidedIn = (
  piece: Pick<Piece, 'colours' | 'pattern' | 'fabric'>,
  avoid: readonly NamedColour[],
): readonly { readonly colour: NamedColour; readonly avoided: NamedColour }[] =>
  seenColours(piece).flatMap((colour) => {
    const avoided = avoid.find((other) => isAvoided(colour, other));
    return avoided === undefined ? [] : [{ colour, avoided }];
  });
