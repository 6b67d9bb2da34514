import { runCli } from './cli/run.ts';

process.exitCode = await runCli(process.argv.slice(2), {
  out: (line) => process.stdout.write(`${line}\n`),
  err: (line) => process.stderr.write(`${line}\n`),
  watched: process.stderr.isTTY === true,
  folder: process.cwd(),
});
