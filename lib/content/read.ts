import { type Normals, parseNormals } from '../comfort/index.ts';
import type {
  Brief,
  Capsule,
  HouseRuleSettings,
  PackingListPlan,
  Piece,
  Problem,
  StockLine,
  Studio,
} from '../model/index.ts';
import { checkRuleSettings, checkRuleThresholds } from '../outfit/index.ts';
import { openPhoto } from '../photo/index.ts';
import { readBrief, withNormals } from './brief.ts';
import { readCapsule, readHouseRules, readList, readStudio } from './capsule.ts';
import { type ContentFile, readContentFiles } from './files.ts';
import { type FrontMatter, readFrontMatter } from './front-matter.ts';
import { writeInstead } from './nearest.ts';
import { readPiece } from './piece.ts';
import { checkCapsule } from './references.ts';
import type { Read } from './result.ts';
import { readSundries } from './sundries.ts';

export interface Trip {
  readonly brief: Brief;
  readonly capsules: readonly Capsule[];
}

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

const ROOMS = ['wardrobes', 'lists', 'trips'] as const;
const ROOT_FILES = ['studio.md', 'house-rules.md', 'sundries.md', 'normals.csv'];

const nameOf = (path: string): string => (path.split('/').at(-1) ?? path).replace(/\.md$/, '');

interface Sorted {
  studio?: ContentFile;
  houseRules?: ContentFile;
  normals?: ContentFile;
  sundries?: ContentFile;
  readonly pieces: ContentFile[];
  readonly lists: ContentFile[];
  readonly briefs: ContentFile[];
  readonly capsules: ContentFile[];
}

const misplaced = (file: string): Problem => {
  const [room = ''] = file.split('/');
  if (!file.includes('/')) {
    return { file, wrong: 'Wayfold reads no such file here', mend: writeInstead(file, ROOT_FILES) };
  }
  if (!(ROOMS as readonly string[]).includes(room)) {
    return { file, wrong: `there is no folder "${room}" in a content folder`, mend: writeInstead(room, ROOMS) };
  }
  const where = {
    wardrobes: 'put a piece into wardrobes/<wardrobe>/<piece>.md',
    lists: 'put a list into lists/<list>.md',
    trips: 'put it into trips/<trip>/brief.md or trips/<trip>/<capsule>.md',
  }[room as (typeof ROOMS)[number]];
  return { file, wrong: 'the file lies where Wayfold does not look', mend: where };
};

const sortFiles = (files: readonly ContentFile[], problems: Problem[]): Sorted => {
  const sorted: Sorted = { pieces: [], lists: [], briefs: [], capsules: [] };
  for (const file of files) {
    const steps = file.path.split('/');
    const [room] = steps;
    if (file.path === 'studio.md') sorted.studio = file;
    else if (file.path === 'house-rules.md') sorted.houseRules = file;
    else if (file.path === 'sundries.md') sorted.sundries = file;
    else if (file.path === 'normals.csv') sorted.normals = file;
    else if (file.path === 'README.md') continue;
    else if (!file.path.endsWith('.md')) problems.push(misplaced(file.path));
    else if (room === 'wardrobes' && steps.length >= 3) sorted.pieces.push(file);
    else if (room === 'lists' && steps.length === 2) sorted.lists.push(file);
    else if (room === 'trips' && steps.length === 3) {
      (steps[2] === 'brief.md' ? sorted.briefs : sorted.capsules).push(file);
    } else problems.push(misplaced(file.path));
  }
  return sorted;
};

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

type Take = <T>(read: Read<T>) => T | undefined;

const parse = <T>(file: ContentFile, read: (matter: FrontMatter) => Read<T>): Read<T> => {
  const front = readFrontMatter(file);
  return front.ok ? read(front.matter) : { problems: front.problems };
};

const checkRules = (settings: HouseRuleSettings, matter: FrontMatter): readonly Problem[] => {
  const at = (id: string) => ({ file: matter.file, line: matter.lineOf(['rules', id]) });
  return [
    ...checkRuleSettings(settings).map(({ id, nearest }) => ({
      ...at(id),
      wrong: `there is no house rule "${id}"`,
      mend:
        nearest.length > 0
          ? `write ${nearest.map((word) => `"${word}"`).join(' or ')}`
          : 'README.md lists the house rules',
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

const idsByWardrobe = (files: readonly ContentFile[]): ReadonlyMap<string, readonly string[]> => {
  const ids = new Map<string, string[]>();
  for (const { path } of files) {
    const wardrobe = path.split('/')[1] ?? '';
    ids.set(wardrobe, [...(ids.get(wardrobe) ?? []), nameOf(path)]);
  }
  return ids;
};

const readTrips = (
  sorted: Sorted,
  known: Omit<Content, 'trips' | 'studio' | 'houseRules' | 'sundries'>,
  take: Take,
): readonly Trip[] => {
  const listIds = known.lists.map(({ id }) => id);
  const folders = new Set([...sorted.briefs, ...sorted.capsules].map(({ path }) => path.split('/')[1] ?? ''));
  return [...folders].flatMap((folder): Trip[] => {
    const inFolder = (file: ContentFile): boolean => file.path.split('/')[1] === folder;
    const briefFile = sorted.briefs.find(inFolder);
    if (briefFile === undefined) {
      take({
        problems: [{ file: `trips/${folder}`, wrong: 'the trip has no brief', mend: `write trips/${folder}/brief.md` }],
      });
      return [];
    }
    const brief = take(
      parse(briefFile, (matter) => {
        const read = readBrief(folder, matter);
        const strangers = (read.value?.travellers ?? []).flatMap(({ name, wardrobe }, index): Problem[] =>
          known.wardrobes.has(wardrobe)
            ? []
            : [
                {
                  file: matter.file,
                  line: matter.lineOf(['travellers', index]),
                  wrong: `${name}'s wardrobe "${wardrobe}" does not exist`,
                  mend: writeInstead(wardrobe, [...known.wardrobes.keys()]),
                },
              ],
        );
        return { ...read, problems: [...read.problems, ...strangers] };
      }),
    );
    if (brief === undefined) return [];
    const capsules = sorted.capsules.filter(inFolder).flatMap((file): Capsule[] => {
      const capsule = take(
        parse(file, (matter) => {
          const read = readCapsule(nameOf(file.path), brief, listIds, matter);
          if (read.value === undefined) return read;
          const problems = [
            ...read.problems,
            ...checkCapsule(read.value, brief, { wardrobes: idsByWardrobe(sorted.pieces), lists: listIds }, matter),
            ...checkRules(read.value.rules, matter),
          ];
          return { value: read.value, problems };
        }),
      );
      return capsule === undefined ? [] : [capsule];
    });
    if (capsules.length === 0 && !sorted.capsules.some(inFolder)) {
      take({
        problems: [
          {
            file: briefFile.path,
            wrong: 'the trip has no capsule',
            mend: `write trips/${folder}/<capsule>.md beside the brief`,
          },
        ],
      });
    }
    return [{ brief, capsules }];
  });
};

/** A piece whose photo is missing, broken or outside the folder is a problem; a photo on a busy ground is not. */
const photoProblems = async (root: string, pieces: readonly Piece[]): Promise<readonly Problem[]> => {
  const found: Problem[] = [];
  for (const { photo, file } of pieces) {
    const opened = photo === undefined ? undefined : await openPhoto(root, photo);
    if (opened !== undefined && !opened.ok) found.push({ file, ...opened.trouble });
  }
  return found;
};

const readNormals = (file: ContentFile | undefined, problems: Problem[]): Normals => {
  if (file === undefined) return new Map();
  const read = parseNormals(file.text, file.path);
  problems.push(...read.problems);
  return read.normals;
};

const DEFAULT_STUDIO = '---\nname: Wayfold\n---\n';

/** Reads and checks a whole content folder; every problem of every file is reported at once. Never writes. */
export const readContent = async (root: string): Promise<ContentResult> => {
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
  const houseRules =
    sorted.houseRules === undefined
      ? {}
      : take(
          parse(sorted.houseRules, (matter) => {
            const read = readHouseRules(matter);
            return { ...read, problems: [...read.problems, ...checkRules(read.value ?? {}, matter)] };
          }),
        );
  const wardrobes = readWardrobes(sorted.pieces, take);
  problems.push(...(await photoProblems(root, [...wardrobes.values()].flat())));
  const lists = sorted.lists.flatMap(
    (file) => take(parse(file, (matter) => readList(nameOf(file.path), matter))) ?? [],
  );
  const sundries = sorted.sundries === undefined ? [] : (take(parse(sorted.sundries, readSundries)) ?? []);
  const normals = readNormals(sorted.normals, problems);
  const trips = readTrips(sorted, { wardrobes, lists }, take).map(({ brief, capsules }) => ({
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
  if (problems.length > 0 || studio === undefined || houseRules === undefined) return { problems: inOrder(problems) };
  return { content: { studio, houseRules, wardrobes, lists, trips, sundries }, problems: [] };
};

const inOrder = (problems: readonly Problem[]): readonly Problem[] =>
  problems.toSorted((a, b) => (a.file < b.file ? -1 : a.file > b.file ? 1 : (a.line ?? 0) - (b.line ?? 0)));
