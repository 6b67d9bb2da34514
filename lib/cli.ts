import { runCli } from './cli/run.ts';

// the reader of a pipe may leave before the end, as `head` does
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
  process.exit();
});

process.exitCode = await runCli(process.argv.slice(2), {
  out: (line) => process.stdout.write(`${line}\n`),
  err: (line) => process.stderr.write(`${line}\n`),
  watched: process.stderr.isTTY === true,
  folder: process.cwd(),
});
