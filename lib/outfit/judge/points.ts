import { type CoreForm, FORMS } from '../grammar/forms.ts';
import type { Seat } from '../grammar/seats.ts';
import type { Ground } from '../ground.ts';

/** Points of a whole look: its seats, its pairs, what it leaves empty, less what whole-look rules take. */
export const pointsOf = (ground: Ground, form: CoreForm, seats: readonly Seat[]): number => {
  const n = ground.seats.length;
  const worn = new Set(seats.map(({ piece }) => piece.id));
  let points = 0;
  seats.forEach((a, index) => {
    points += ground.own[a.index] ?? 0;
    for (const b of seats.slice(index + 1)) points += ground.points[a.index * n + b.index] ?? 0;
    for (const [slot, empty] of ground.empty) {
      if (!FORMS[form].optional.includes(slot) || seats.some((seat) => seat.slot === slot)) continue;
      points += empty.points[a.index] ?? 0;
    }
  });
  for (const { most, members, points: cost } of ground.softCaps) {
    points -= Math.max(0, seats.filter(({ index }) => members[index] === 1).length - most) * cost;
  }
  if (ground.softMarks !== undefined) {
    const union = seats.reduce((mask, { index }) => mask | (ground.marks[index] ?? 0), 0);
    const marks = [...union.toString(2)].filter((bit) => bit === '1').length;
    points -= Math.max(0, marks - ground.softMarks.most) * ground.softMarks.points;
  }
  for (const { piece, partner, points: cost } of ground.softCompanions) {
    if (worn.has(piece) && !worn.has(partner)) points -= cost;
  }
  return points;
};
