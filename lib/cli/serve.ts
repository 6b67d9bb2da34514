import path from 'node:path';
import { watch } from 'chokidar';
import { startServer } from '../serve/index.ts';
import { CACHE_OPTION, EDITION_OPTION, OUT_OPTION, publishFrom, TRIP_OPTION } from './build.ts';
import { contentFolder, printProblems } from './content.ts';
import { CONTENT_OPTION, UsageError, type Verb, wholeNumber } from './verb.ts';

/** Editors save in several steps; wait until a file has been still this long. */
const STILL_MS = 120;

export const serveVerb: Verb = {
  name: 'serve',
  words: '',
  summary: 'Build, show the guide on this machine only, and build again whenever the content changes.',
  options: {
    port: { type: 'string', value: 'number', help: 'port (4321)' },
    content: CONTENT_OPTION,
    out: OUT_OPTION,
    trip: TRIP_OPTION,
    edition: EDITION_OPTION,
    cache: CACHE_OPTION,
  },
  fewestWords: 0,
  mostWords: 0,
  async run(_words, options, world) {
    const port = wholeNumber(options.port, 'port', 4321);
    const out = path.resolve(world.folder, String(options.out ?? '_site'));
    const server = await startServer(out, port).catch((error: NodeJS.ErrnoException) => {
      if (error.code === 'EADDRINUSE') throw new UsageError(`port ${port} is taken; name another with --port`);
      throw error;
    });
    let building: Promise<void> | undefined;
    let again = false;
    const build = async (): Promise<void> => {
      const result = await publishFrom(options, world);
      if (!result.ok) printProblems(result.problems, world);
      else world.err(`built in ${result.made.seconds.toFixed(1)} s`);
      server.refresh(result.ok ? [] : result.problems);
    };
    const rebuild = (): void => {
      if (building !== undefined) {
        again = true;
        return;
      }
      building = build().finally(() => {
        building = undefined;
        if (again) {
          again = false;
          rebuild();
        }
      });
    };
    rebuild();
    const watcher = watch(contentFolder(options.content, world), {
      ignoreInitial: true,
      awaitWriteFinish: { stabilityThreshold: STILL_MS, pollInterval: 40 },
    });
    watcher.on('all', rebuild);
    world.out(`${server.address}  (Ctrl+C ends)`);
    await new Promise<void>((resolve) => {
      for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => resolve());
    });
    await watcher.close();
    await building;
    await server.close();
    return 0;
  },
};
