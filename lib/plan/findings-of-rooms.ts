import { isLeftAtTheDoor } from '../comfort/index.ts';
import type { Brief, Finding, Look, Piece, Plan } from '../model/index.ts';
import { phrase } from '../words/index.ts';
import { finding } from './finding.ts';
import type { LookSource } from './look-source.ts';
import { type Moment, momentsOf } from './moments.ts';
import { lackingInside, missedInside } from './room.ts';

/** Packed layers told as a way to be warm inside. */
const LAYERS_SAID = 3;

/** Pieces of the bag that go with a look, stay on indoors and make it warm enough there, the lightest to wear first. */
const wouldWarm = (
  moment: Moment,
  look: Look,
  pieces: ReadonlyMap<string, Piece>,
  source: Pick<LookSource, 'explain'>,
): readonly Piece[] => {
  const worn = look.worn.map(({ piece }) => piece);
  return [...pieces.values()]
    .filter((piece) => !worn.includes(piece.id) && piece.clo.value > 0 && !isLeftAtTheDoor(piece))
    .toSorted((a, b) => a.clo.value - b.clo.value)
    .filter(({ id }) => {
      const { goes, look: warmer } = source.explain([...worn, id], moment.restriction);
      return goes && warmer !== undefined && lackingInside(moment, warmer, pieces) === 0;
    });
};

/** Occasions in a room for which a look is too cool once its coat hangs at the door, each with what is packed against it. */
export const findingsOfRooms = (
  plan: Plan,
  brief: Brief,
  pieces: readonly Piece[],
  source: Pick<LookSource, 'explain'>,
): readonly Finding[] => {
  const byId = new Map(pieces.map((piece) => [piece.id, piece]));
  const looks = new Map(plan.days.flatMap(({ occasions }) => occasions.map(({ occasion, look }) => [occasion, look])));
  return momentsOf(brief, plan.traveller).flatMap((moment): Finding[] => {
    const { occasion } = moment;
    const look = looks.get(occasion.id);
    const missed = look === undefined ? [] : missedInside(moment, look, byId);
    if (look === undefined || missed.length === 0) return [];
    const message = phrase('plan', 'coat in a room', {
      occasion: occasion.what,
      on: occasion.on,
      coats: missed.map(({ name }) => name),
    });
    const layers = wouldWarm(moment, look, byId, source).slice(0, LAYERS_SAID);
    const mend =
      layers.length === 0
        ? phrase('plan', 'coat in a room mend', {})
        : phrase('plan', 'coat in a room mend with', { layers: layers.map(({ name }) => name) });
    return [finding('advice', 'coat-in-a-room', message, mend, brief, [occasion])];
  });
};
