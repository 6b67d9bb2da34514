import type { Brief, Capsule, HouseRuleSettings, Problem } from '../model/index.ts';
import { checkRuleSettings, checkRuleThresholds } from '../outfit/index.ts';
import { slug } from './brief.ts';
import type { FrontMatter } from './front-matter.ts';
import { writeInstead } from './nearest.ts';

/** What a capsule may refer to. */
export interface Known {
  /** Ids of the pieces of each wardrobe, those whose files have problems among them. */
  readonly wardrobes: ReadonlyMap<string, readonly string[]>;
  readonly lists: readonly string[];
  /** True where a content folder may still be without lists. */
  readonly listsOptional?: boolean;
}

type Path = readonly (string | number)[];

/** Occasion ids an occasion's name in a capsule can mean: the id itself, or the words of its name. */
export const occasionsNamed = (brief: Pick<Brief, 'occasions'>, name: string): readonly string[] =>
  brief.occasions
    .filter(
      ({ id, what }) => id === name || what.toLowerCase() === name.trim().toLowerCase() || slug(what) === slug(name),
    )
    .map(({ id }) => id);

const pieceReferences = (capsule: Capsule): { path: Path; id: string }[] => {
  const list = (path: Path, ids: readonly string[]) => ids.map((id, index) => ({ path: [...path, index], id }));
  return [
    ...list(['pieces'], capsule.pieces),
    ...list(['choose', 'keep'], capsule.choose?.keep ?? []),
    ...list(['choose', 'leave out'], capsule.choose?.leaveOut ?? []),
    ...capsule.never.flatMap((ids, index) => list(['never', index], ids)),
    ...capsule.always.flatMap((ids, index) => list(['always', index], ids)),
    ...capsule.favourites.flatMap((look, index) => list(['favourites', index, 'pieces'], look.pieces)),
    ...capsule.fixed.flatMap((look, index) => list(['fixed', index, 'pieces'], look.pieces)),
  ];
};

/** Checks every name a capsule uses against the wardrobe, the lists and the brief, as far as the brief can be read. */
export const checkCapsule = (
  capsule: Capsule,
  brief: Brief | undefined,
  known: Known,
  matter: FrontMatter,
): readonly Problem[] => {
  const problems: Problem[] = [];
  const say = (path: Path, wrong: string, mend: string): void => {
    problems.push({ file: matter.file, line: matter.lineOf(path), wrong, mend });
  };
  const names = brief?.travellers.map(({ name }) => name);
  if (names !== undefined && !names.includes(capsule.traveller)) {
    say(['traveller'], `nobody called "${capsule.traveller}" travels`, writeInstead(capsule.traveller, names));
  }
  if (known.lists.length === 0) {
    if (known.listsOptional !== true)
      say([], 'there is no packing list yet', `"wayfold list ${brief?.id ?? '<trip>'}" prints one for lists/<list>.md`);
  } else if (!known.lists.includes(capsule.list)) {
    say(['list'], `there is no list "${capsule.list}"`, writeInstead(capsule.list, known.lists));
  }
  // without a brief nobody says whose wardrobe it is, unless there is only one
  const [only, another] = known.wardrobes.keys();
  const wardrobe = capsule.wardrobe === '' && another === undefined ? (only ?? '') : capsule.wardrobe;
  const ids = known.wardrobes.get(wardrobe);
  if (ids === undefined && wardrobe === '') return problems;
  if (ids === undefined) {
    const all = [...known.wardrobes.keys()];
    say(
      ['wardrobe'],
      `there is no wardrobe "${wardrobe}"`,
      all.length > 0 ? writeInstead(wardrobe, all) : 'add a folder to wardrobes',
    );
    return problems;
  }
  const owned = new Set(ids);
  for (const { path, id } of pieceReferences(capsule)) {
    if (!owned.has(id)) {
      say(
        path,
        `the wardrobe "${wardrobe}" has no piece "${id}"`,
        writeInstead(id, ids, `name a file of wardrobes/${wardrobe}`),
      );
    }
  }
  const seen = new Set<string>();
  for (const [index, id] of capsule.pieces.entries()) {
    if (seen.has(id)) say(['pieces', index], `"${id}" is named twice`, 'leave it out once');
    seen.add(id);
  }
  if (capsule.pieces.length === 0 && capsule.choose === undefined) {
    say(
      ['pieces'],
      'the capsule has no pieces',
      'list some under pieces:, or ask Wayfold to choose them with choose: {}',
    );
  }
  if (brief === undefined) return problems;
  for (const [index, { occasion }] of capsule.fixed.entries()) {
    const options = brief.occasions.map(({ what }) => what);
    if (occasionsNamed(brief, occasion).length === 0) {
      say(
        ['fixed', index, 'occasion'],
        `the brief has no occasion "${occasion}"`,
        writeInstead(occasion, options, 'name an occasion of the brief'),
      );
    }
  }
  return problems;
};

/** Checks the names and thresholds of house rules. */
export const checkRules = (settings: HouseRuleSettings, matter: FrontMatter): readonly Problem[] => {
  const at = (id: string) => ({ file: matter.file, line: matter.lineOf(['rules', id]) });
  return [
    ...checkRuleSettings(settings).map(({ id, nearest }) => ({
      ...at(id),
      wrong: `there is no house rule "${id}"`,
      mend:
        nearest.length > 0
          ? `write ${nearest.map((word) => `"${word}"`).join(' or ')}`
          : '"wayfold words" lists the house rules',
    })),
    ...checkRuleThresholds(settings).map(({ id, threshold, low, high }) => ({
      ...at(id),
      wrong: `${threshold} is no threshold of the house rule "${id}"`,
      mend:
        low === undefined || high === undefined
          ? 'this rule has none: write off, "rules out" or "lowers the score"'
          : `write a number from ${low} to ${high}`,
    })),
  ];
};
