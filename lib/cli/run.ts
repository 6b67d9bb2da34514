import { writeInstead } from '../content/index.ts';
import { type ExitCode, helpOf, helpOfAll, readArguments, type Surroundings, UsageError, type Verb } from './verb.ts';
import { VERBS } from './verbs.ts';

const runVerb = async (verb: Verb, args: readonly string[], world: Surroundings): Promise<ExitCode> => {
  if (args.includes('--help') || args.includes('-h')) {
    world.out(helpOf(verb));
    return 0;
  }
  const { words, options } = readArguments(verb, args);
  if (words.length < verb.fewestWords) throw new UsageError(`wayfold ${verb.name} wants ${verb.words}`);
  if (words.length > verb.mostWords)
    throw new UsageError(`wayfold ${verb.name} does not know what to do with "${words[verb.mostWords] ?? ''}"`);
  return verb.run(words, options, world);
};

/** Runs one command line. Problems in the content exit with 1, wrong usage with 2; a stack trace is always a bug. */
export const runCli = async (args: readonly string[], world: Surroundings): Promise<ExitCode> => {
  const [name, ...rest] = args;
  if (name === undefined || name === '--help' || name === '-h' || name === 'help') {
    world.out(helpOfAll(VERBS));
    return name === undefined ? 2 : 0;
  }
  const verb = VERBS.find((candidate) => candidate.name === name);
  try {
    if (verb === undefined) {
      throw new UsageError(
        `there is no verb "${name}"; ${writeInstead(
          name,
          VERBS.map((candidate) => candidate.name),
        )}`,
      );
    }
    return await runVerb(verb, rest, world);
  } catch (error) {
    if (!(error instanceof UsageError)) throw error;
    world.err(error.message);
    world.err(verb === undefined ? 'wayfold --help lists the verbs' : `wayfold ${verb.name} --help says how`);
    return 2;
  }
};
