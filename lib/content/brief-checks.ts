import { CONTRADICTORY_NEEDS, isFabricWord, NEEDS_OF_WEATHER } from '../vocabulary/index.ts';
import { fabricInstead } from './nearest.ts';
import type { WrittenBrief } from './schema/brief.ts';

/** Reports a problem at a field of the brief. */
export type Say = (path: readonly (string | number)[], wrong: string, mend: string) => void;

/** Weather that is colder at its warmest than at its coldest. */
export const checkPlaces = (written: WrittenBrief, say: Say): void => {
  for (const [index, { weather, days }] of written.places.entries()) {
    const check = (path: readonly (string | number)[], { low, high }: { low: number; high: number }): void => {
      if (low > high) say([...path, 'low'], `the low (${low} °C) is above the high (${high} °C)`, 'swap the two');
    };
    if (weather !== undefined) check(['places', index, 'weather'], weather);
    for (const [date, known] of Object.entries(days)) check(['places', index, 'days', date], known);
  }
};

/** Names that occur twice, and occasions of people who do not travel. */
export const checkPeople = (written: WrittenBrief, say: Say): void => {
  const names = written.travellers.map(({ name }) => name);
  const twice = names.find((name, index) => names.indexOf(name) !== index);
  if (twice !== undefined) say(['travellers'], `two travellers are called ${twice}`, 'give each a name of their own');
  for (const [index, occasion] of written.occasions.entries()) {
    const stranger = occasion.travellers.find((name) => !names.includes(name));
    if (stranger !== undefined) {
      say(
        ['occasions', index, 'travellers'],
        `"${stranger}" does not travel`,
        `write ${names.map((name) => `"${name}"`).join(' or ')}`,
      );
    }
  }
};

/** Bags of people who do not travel, shared by one alone, both one's own and shared; people left without a bag. */
export const checkBagOwners = (written: WrittenBrief, say: Say): void => {
  const names = written.travellers.map(({ name }) => name);
  const bags = written.bags ?? (written.bag === undefined ? [] : [written.bag]);
  const pathOf = (index: number, field = 'shared by'): readonly (string | number)[] =>
    written.bags === undefined ? ['bag', field] : ['bags', index, field];
  const travelling = `write ${names.map((name) => `"${name}"`).join(' or ')}`;
  for (const [index, { 'shared by': sharedBy, traveller }] of bags.entries()) {
    if (traveller !== undefined && !names.includes(traveller))
      say(pathOf(index, 'traveller'), `"${traveller}" does not travel`, travelling);
    if (sharedBy === undefined) continue;
    if (traveller !== undefined) {
      say(pathOf(index), "a bag is one traveller's or shared, not both", 'leave "traveller" or "shared by" out');
      continue;
    }
    const stranger = sharedBy.find((name) => !names.includes(name));
    if (stranger !== undefined) say(pathOf(index), `"${stranger}" does not travel`, travelling);
    else if (new Set(sharedBy).size !== sharedBy.length || sharedBy.length < 2)
      say(
        pathOf(index),
        'a bag is shared by two or more different people',
        names.length < 2 ? 'leave "shared by" out' : `write [${names.join(', ')}]`,
      );
  }
  const without = names.filter((name) =>
    bags.every(({ 'shared by': sharedBy, traveller }) =>
      traveller === undefined ? sharedBy !== undefined && !sharedBy.includes(name) : traveller !== name,
    ),
  );
  if (bags.length > 0 && without.length > 0)
    say(
      written.bags === undefined ? ['bag'] : ['bags'],
      `there is no bag for ${without.join(' and ')}`,
      `add ${without.join(' and ')} to "shared by", write a bag with "traveller: ${without[0]}", or one that everybody brings`,
    );
};

/** Two things at one clock time for one person. */
export const checkHours = (written: WrittenBrief, say: Say): void => {
  const names = written.travellers.map(({ name }) => name);
  const taken = new Map<string, string>();
  for (const [index, { on, at, what, travellers }] of written.occasions.entries()) {
    for (const traveller of travellers.length > 0 ? travellers : names) {
      const hour = `${on} ${at.at ?? at.part} ${traveller}`;
      const other = taken.get(hour);
      if (other !== undefined && at.at !== undefined) {
        say(
          ['occasions', index],
          `"${what}" is at the same time as "${other}" for ${traveller}`,
          'give one of them another time, or name its travellers',
        );
        break;
      }
      taken.set(hour, what);
    }
  }
};

/** Ends without a beginning, and beginnings that are the end. */
export const checkEnds = ({ occasions }: WrittenBrief, say: Say): void => {
  for (const [index, { at, until, what }] of occasions.entries()) {
    if (until === undefined) continue;
    const path = ['occasions', index, 'until'];
    if (at.at === undefined)
      say(
        path,
        `"${what}" ends at ${until}, and "at: ${at.part}" gives no hour it begins`,
        'write the time it begins as "at", like at: "10:00"',
      );
    else if (at.at === until)
      say(path, `"${what}" ends at ${until}, when it begins`, 'write the time it ends, or leave "until" out');
    else checkOverlap(occasions, index, say);
  }
};

/** Whoever is at an occasion until its end is at no other that day which begins before. */
const checkOverlap = (occasions: WrittenBrief['occasions'], index: number, say: Say): void => {
  const { at: { at = '' } = {}, until = '', on, what, travellers } = occasions[index] ?? {};
  const end = until > at ? until : '24:00';
  for (const [later, other] of occasions.entries()) {
    const begins = other.at.at ?? '';
    const both =
      travellers?.length === 0 ||
      other.travellers.length === 0 ||
      other.travellers.some((name) => travellers?.includes(name));
    if (other.on === on && both && begins > at && begins < end)
      say(
        ['occasions', later],
        `"${other.what}" begins at ${begins}, while "${what}" lasts until ${until}`,
        'end the one before the other begins, or name their travellers',
      );
  }
};

/** Rain, snow and sun at occasions indoors: there is no weather in a room. */
export const checkNeedsIndoors = ({ occasions }: WrittenBrief, say: Say): void => {
  for (const [index, { what, needs, where }] of occasions.entries()) {
    const asked = needs.filter((need) => NEEDS_OF_WEATHER.has(need));
    if (where.where !== 'indoors' || asked.length === 0) continue;
    say(
      ['occasions', index, 'needs'],
      `"${what}" is indoors and asks for ${asked.join(' and ')}`,
      `take ${asked.join(' and ')} out of "needs", or write "where: outdoors"; the way there can be an occasion of its own`,
    );
  }
};

/** Needs that no one look meets, and swimming in more than casual dress: each is two occasions. */
export const checkNeeds = ({ occasions }: WrittenBrief, say: Say): void => {
  for (const [index, { what, needs, dress }] of occasions.entries()) {
    for (const [first, second] of CONTRADICTORY_NEEDS) {
      if (!needs.includes(first) || !needs.includes(second)) continue;
      say(
        ['occasions', index, 'needs'],
        `"${what}" asks for ${first} and for ${second}, which no look meets at once`,
        `make two occasions of it: one with needs: [${first}], and the way there with needs: [${second}]`,
      );
    }
    if (needs.includes('swim') && dress !== 'casual') {
      say(
        ['occasions', index, 'dress'],
        `"${what}" asks for swim and for ${dress} dress`,
        'write "dress: casual", and give the meal or the bar after it its own occasion',
      );
    }
  }
};

/** Cloths that nobody knows, so that they would refuse nothing. */
export const checkCloths = ({ avoid, travellers }: WrittenBrief, say: Say): void => {
  const everyone = { at: ['avoid'], avoid };
  const each = travellers.map((traveller, index) => ({ at: ['travellers', index, 'avoid'], avoid: traveller.avoid }));
  for (const { at, avoid: written } of [everyone, ...each]) {
    for (const field of ['fabrics', 'against skin'] as const) {
      for (const [index, word] of (written?.[field] ?? []).entries()) {
        if (!isFabricWord(word)) {
          say([...at, field, index], `"${word}" names no fibre or cloth that Wayfold knows`, fabricInstead(word));
        }
      }
    }
  }
};
