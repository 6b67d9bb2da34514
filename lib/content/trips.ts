import type { Brief, Capsule, Problem } from '../model/index.ts';
import { readBrief } from './brief.ts';
import { readCapsule } from './capsule.ts';
import type { ContentFile } from './files.ts';
import { parse } from './front-matter.ts';
import { writeInstead } from './nearest.ts';
import { checkCapsule, checkRules } from './references.ts';
import type { Take } from './result.ts';
import { nameOf, type Sorted } from './sort.ts';

export interface ReadOptions {
  /** A trip may still be without a capsule: for the verbs that propose one. */
  readonly withoutCapsules?: boolean;
}

export interface Trip {
  readonly brief: Brief;
  readonly capsules: readonly Capsule[];
}

const idsByWardrobe = (files: readonly ContentFile[]): ReadonlyMap<string, readonly string[]> => {
  const ids = new Map<string, string[]>();
  for (const { path } of files) {
    const wardrobe = path.split('/')[1] ?? '';
    ids.set(wardrobe, [...(ids.get(wardrobe) ?? []), nameOf(path)]);
  }
  return ids;
};

/** Reads every trip: its brief, its capsules, and whether the names in them are those of other files. */
export const readTrips = (sorted: Sorted, take: Take, { withoutCapsules }: ReadOptions): readonly Trip[] => {
  const names = {
    wardrobes: idsByWardrobe(sorted.pieces),
    lists: sorted.lists.map(({ path }) => nameOf(path)),
    ...(withoutCapsules === true ? { listsOptional: true } : {}),
  };
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
          names.wardrobes.has(wardrobe)
            ? []
            : [
                {
                  file: matter.file,
                  line: matter.lineOf(['travellers', index]),
                  wrong: `${name}'s wardrobe "${wardrobe}" does not exist`,
                  mend: writeInstead(wardrobe, [...names.wardrobes.keys()]),
                },
              ],
        );
        return { ...read, problems: [...read.problems, ...strangers] };
      }),
    );
    const capsules = sorted.capsules.filter(inFolder).flatMap((file): Capsule[] => {
      const capsule = take(
        parse(file, (matter) => {
          // a capsule is read and its names are checked even when its brief has problems
          const read = readCapsule(
            nameOf(file.path),
            brief ?? { id: folder, travellers: [], occasions: [] },
            names.lists,
            matter,
          );
          if (read.value === undefined) return read;
          const problems = [
            ...read.problems,
            ...checkCapsule(read.value, brief, names, matter),
            ...checkRules(read.value.rules, matter),
          ];
          return { value: read.value, problems };
        }),
      );
      return capsule === undefined ? [] : [capsule];
    });
    if (capsules.length === 0 && withoutCapsules !== true && !sorted.capsules.some(inFolder)) {
      take({
        problems: [
          {
            file: briefFile.path,
            wrong: 'the trip has no capsule',
            mend: `write trips/${folder}/<capsule>.md beside the brief, or let "wayfold choose ${folder}" propose one`,
          },
        ],
      });
    }
    return brief === undefined ? [] : [{ brief, capsules }];
  });
};
