import type { Problem } from '../model/index.ts';
import type { ContentFile } from './files.ts';
import { writeInstead } from './nearest.ts';

const ROOMS = ['wardrobes', 'lists', 'trips'] as const;
const ROOT_FILES = ['studio.md', 'house-rules.md', 'sundries.md', 'normals.csv'];

/** A file's name without folder and ending: the id of what it holds. */
export const nameOf = (path: string): string => (path.split('/').at(-1) ?? path).replace(/\.md$/, '');

/** The files of a content folder by what they hold. */
export interface Sorted {
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

/** Sorts files by where they lie; a file that lies where nothing is read is a problem. */
export const sortFiles = (files: readonly ContentFile[], problems: Problem[]): Sorted => {
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
