import path from 'node:path';
import { briefFor, type Content, type ReadOptions, readContent, type Trip, writeInstead } from '../content/index.ts';
import type { Capsule, Problem } from '../model/index.ts';
import { type Given, type Surroundings, UsageError } from './verb.ts';

/** One problem, two lines: where and what; what would be right. */
export const problemText = ({ file, line, wrong, mend }: Problem): string =>
  `${file}${line === undefined ? '' : `:${line}`}: ${wrong}\n    ${mend}`;

/** Prints every problem and how many there are. */
export const printProblems = (problems: readonly Problem[], world: Surroundings): void => {
  for (const problem of problems) world.err(problemText(problem));
  const files = new Set(problems.map(({ file }) => file)).size;
  world.err('');
  world.err(
    `${problems.length} ${problems.length === 1 ? 'problem' : 'problems'} in ${files} ${files === 1 ? 'file' : 'files'}. Nothing was written.`,
  );
};

/** The content folder an option names, or the usual one. */
export const contentFolder = (option: Given[string], { folder }: Pick<Surroundings, 'folder'>): string =>
  path.resolve(folder, String(option ?? 'content'));

/** Reads the content an option names; prints the problems and gives undefined when there are any. */
export const contentFor = async (
  option: Given[string],
  world: Surroundings,
  reading: ReadOptions = {},
): Promise<Content | undefined> => {
  const { content, problems } = await readContent(contentFolder(option, world), reading);
  if (content === undefined) printProblems(problems, world);
  return content;
};

/** Finds `<trip>/<capsule>`, or the only capsule of `<trip>`, with the brief of its traveller; a wrong name is a `UsageError` with the nearest right one. */
export const capsuleNamed = (content: Content, name: string): { trip: Trip; capsule: Capsule } => {
  const all = content.trips.flatMap(({ brief, capsules }) =>
    capsules.map((capsule) => ({ trip: { brief: briefFor(brief, capsule.traveller), capsules }, capsule })),
  );
  const nameOf = ({ trip, capsule }: { trip: Trip; capsule: Capsule }): string => `${trip.brief.id}/${capsule.id}`;
  const found = all.find((candidate) => nameOf(candidate) === name);
  if (found !== undefined) return found;
  const [only, another] = all.filter(({ trip }) => trip.brief.id === name);
  if (only !== undefined && another === undefined) return only;
  throw new UsageError(
    `there is no capsule "${name}"; ${writeInstead(name, all.map(nameOf), 'name it <trip>/<capsule>')}`,
  );
};

/** Finds a trip by its folder name. */
export const tripNamed = (content: Content, name: string): Trip => {
  const found = content.trips.find(({ brief }) => brief.id === name);
  if (found !== undefined) return found;
  throw new UsageError(
    `there is no trip "${name}"; ${writeInstead(
      name,
      content.trips.map(({ brief }) => brief.id),
    )}`,
  );
};
