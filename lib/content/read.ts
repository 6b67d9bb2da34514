import { type HouseNeutrals, underHouse } from '../colour/index.ts';
import { type Normals, parseNormals } from '../comfort/index.ts';
import type { HouseRuleSettings, PackingListPlan, Piece, Problem, StockLine, Studio } from '../model/index.ts';
import { withNormals } from './brief.ts';
import { type House, readHouseRules, readList, readStudio } from './capsule.ts';
import { type ContentFile, readContentFiles } from './files.ts';
import { parse } from './front-matter.ts';
import { photoProblems } from './photos.ts';
import { readPiece } from './piece.ts';
import { checkRules } from './references.ts';
import type { Take } from './result.ts';
import { nameOf, sortFiles } from './sort.ts';
import { readSundries } from './sundries.ts';
import { type ReadOptions, readTrips, type Trip } from './trips.ts';

/** Everything a content folder says, validated and with defaults filled in. */
export interface Content {
  readonly studio: Studio;
  readonly houseRules: HouseRuleSettings;
  readonly wardrobes: ReadonlyMap<string, readonly Piece[]>;
  readonly lists: readonly PackingListPlan[];
  readonly trips: readonly Trip[];
  /** The studio's stock of things that are packed and not worn in a look; empty without a sundries.md. */
  readonly sundries: readonly StockLine[];
}

export interface ContentResult {
  /** Undefined when there is any problem. */
  readonly content?: Content;
  readonly problems: readonly Problem[];
}

const readWardrobes = (files: readonly ContentFile[], take: Take): ReadonlyMap<string, readonly Piece[]> => {
  const wardrobes = new Map<string, Piece[]>();
  const taken = new Map<string, string>();
  for (const file of files) {
    const wardrobe = file.path.split('/')[1] ?? '';
    const id = nameOf(file.path);
    const pieces = wardrobes.get(wardrobe) ?? [];
    wardrobes.set(wardrobe, pieces);
    const key = `${wardrobe}/${id.toLowerCase()}`;
    const other = taken.get(key);
    if (other !== undefined) {
      take({
        problems: [
          {
            file: file.path,
            wrong: `two pieces of this wardrobe are called "${id}"; the other is ${other}`,
            mend: 'rename one of the files',
          },
        ],
      });
      continue;
    }
    taken.set(key, file.path);
    const piece = take(parse(file, (matter) => readPiece(id, wardrobe, matter)));
    if (piece !== undefined) pieces.push(piece);
  }
  return wardrobes;
};

const readNormals = (file: ContentFile | undefined, problems: Problem[]): Normals => {
  if (file === undefined) return new Map();
  const read = parseNormals(file.text, file.path);
  problems.push(...read.problems);
  return read.normals;
};

const NO_HOUSE: House = { rules: {}, neutrals: { neutral: [], notNeutral: [] } };

const underHouseRules = (
  wardrobes: ReadonlyMap<string, readonly Piece[]>,
  neutrals: HouseNeutrals,
): ReadonlyMap<string, readonly Piece[]> =>
  new Map(
    [...wardrobes].map(([name, pieces]) => [
      name,
      pieces.map((piece) => ({ ...piece, colours: piece.colours.map((colour) => underHouse(colour, neutrals)) })),
    ]),
  );

const DEFAULT_STUDIO = '---\nname: Wayfold\n---\n';

/** Reads and checks a whole content folder; every problem of every file is reported at once. Never writes. */
export const readContent = async (root: string, options: ReadOptions = {}): Promise<ContentResult> => {
  const found = await readContentFiles(root);
  const problems: Problem[] = [...found.problems];
  const take: Take = (read) => {
    problems.push(...read.problems);
    return read.value;
  };
  if (found.files.length === 0 && problems.length === 0) {
    return {
      problems: [
        {
          file: root,
          wrong: 'the content folder is empty',
          mend: 'add wardrobes, a list and a trip; README.md shows how',
        },
      ],
    };
  }
  const sorted = sortFiles(found.files, problems);
  const studio = take(parse(sorted.studio ?? { path: 'studio.md', text: DEFAULT_STUDIO }, readStudio));
  const house =
    sorted.houseRules === undefined
      ? NO_HOUSE
      : take(
          parse(sorted.houseRules, (matter) => {
            const read = readHouseRules(matter);
            return { ...read, problems: [...read.problems, ...checkRules(read.value?.rules ?? {}, matter)] };
          }),
        );
  const wardrobes = underHouseRules(readWardrobes(sorted.pieces, take), house?.neutrals ?? NO_HOUSE.neutrals);
  problems.push(...(await photoProblems(root, [...wardrobes.values()].flat(), sorted.pieces)));
  const lists = sorted.lists.flatMap(
    (file) => take(parse(file, (matter) => readList(nameOf(file.path), matter))) ?? [],
  );
  const sundries = sorted.sundries === undefined ? [] : (take(parse(sorted.sundries, readSundries)) ?? []);
  const normals = readNormals(sorted.normals, problems);
  const trips = readTrips(sorted, take, options).map(({ brief, capsules }) => ({
    brief: withNormals(brief, normals),
    capsules,
  }));
  if (trips.length === 0 && problems.length === 0) {
    problems.push({
      file: 'trips',
      wrong: 'there is no trip',
      mend: 'write trips/<trip>/brief.md and a capsule beside it',
    });
  }
  if (problems.length > 0 || studio === undefined || house === undefined) return { problems: inOrder(problems) };
  return { content: { studio, houseRules: house.rules, wardrobes, lists, trips, sundries }, problems: [] };
};

const inOrder = (problems: readonly Problem[]): readonly Problem[] =>
  problems.toSorted((a, b) => (a.file < b.file ? -1 : a.file > b.file ? 1 : (a.line ?? 0) - (b.line ?? 0)));
