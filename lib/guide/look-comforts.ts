import { isLeftAtTheDoor, lookComfort } from '../comfort/index.ts';
import type { Look, LookComfort, Occasion, Piece, PlannedOccasion } from '../model/index.ts';
import { coatsAtHand, isInARoom } from '../plan/index.ts';
import type { ActivityId, Feels } from '../vocabulary/index.ts';
import { type Phrase, phrase } from '../words/index.ts';

/** An occasion for which the plan uses a look. */
export interface PlannedFor {
  readonly occasion: Occasion;
  readonly planned: PlannedOccasion;
}

/** For which air a look is comfortable, at what it is planned for where that is known. */
export interface LookComforts {
  readonly outdoors: LookComfort;
  readonly indoors: LookComfort;
  /** At further activities it is planned for. */
  readonly also: readonly LookComfort[];
  /** Where it is worn first; outdoors without a plan. */
  readonly first: LookComfort['where'];
  /** Where the air that is expected is beyond these degrees, out of doors and indoors. */
  readonly lacks: Readonly<Record<LookComfort['where'], readonly Phrase[]>>;
}

type Comfort = (activity: ActivityId, where: LookComfort['where']) => LookComfort;

/** The degrees shown of a look indoors are those without its coat, which is hung up in a room and at hand on a journey. */
const tooCool = (occasion: Occasion, low: number, look: Look, pieces: ReadonlyMap<string, Piece>): Phrase => {
  const { activity, setting } = occasion;
  const hung = look.worn.flatMap(({ piece }) => pieces.get(piece) ?? []).filter(isLeftAtTheDoor);
  const coats = (isInARoom(occasion) ? hung : coatsAtHand(look, pieces)).map(({ name }) => name);
  if (setting.where === 'outdoors' || coats.length === 0) return phrase('plan', 'too cool for it', { low, activity });
  return isInARoom(occasion)
    ? phrase('plan', 'cool inside', { coats })
    : phrase('plan', 'cool without', { coats, low, activity });
};

/** What is said where colder or hotter air is expected than a look is shown to be good for, in whole degrees as shown. */
const lackingAt = (
  { occasion, planned: { airC } }: PlannedFor,
  comfort: Comfort,
  look: Look,
  pieces: ReadonlyMap<string, Piece>,
): readonly Phrase[] => {
  const { activity, setting } = occasion;
  if (airC === undefined) return [];
  const { lowC, highC } = comfort(activity, setting.where);
  // in the sun it is warmer than the degrees shown, which are those of the shade
  const cool = !(setting.where === 'outdoors' && setting.sun === 'sun') && Math.round(airC.low) < lowC;
  return [
    ...(cool ? [tooCool(occasion, airC.low, look, pieces)] : []),
    ...(Math.round(airC.high) > highC ? [phrase('plan', 'too warm for it', { high: airC.high, activity })] : []),
  ];
};

/**
 * The degrees of a look at the activities it is planned for, swims apart; outdoors strolling and indoors sitting where
 * it is planned for nothing there.
 */
export const comfortsOf = (
  look: Look,
  pieces: ReadonlyMap<string, Piece>,
  uses: readonly PlannedFor[],
  feels: Feels | undefined,
): LookComforts => {
  const comfort: Comfort = (activity, where) => lookComfort(look, pieces, activity, where, feels);
  const dry = uses.filter(({ occasion }) => !occasion.needs.includes('swim'));
  const activitiesAt = (where: LookComfort['where']): readonly ActivityId[] => [
    ...new Set(dry.flatMap(({ occasion }) => (occasion.setting.where === where ? [occasion.activity] : []))),
  ];
  const lacksAt = (where: LookComfort['where']): readonly Phrase[] => {
    const said = dry
      .filter(({ occasion }) => occasion.setting.where === where)
      .flatMap((use) => lackingAt(use, comfort, look, pieces));
    return [...new Map(said.map((lack) => [JSON.stringify(lack), lack])).values()];
  };
  const [outside = 'strolling', ...moreOutside] = activitiesAt('outdoors');
  const [inside = 'sitting', ...moreInside] = activitiesAt('indoors');
  return {
    outdoors: comfort(outside, 'outdoors'),
    indoors: comfort(inside, 'indoors'),
    also: [
      ...moreOutside.map((activity) => comfort(activity, 'outdoors')),
      ...moreInside.map((activity) => comfort(activity, 'indoors')),
    ],
    first: dry[0]?.occasion.setting.where ?? 'outdoors',
    lacks: { outdoors: lacksAt('outdoors'), indoors: lacksAt('indoors') },
  };
};
