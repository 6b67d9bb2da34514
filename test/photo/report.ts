import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { meanOf, readScenes } from './errors.ts';

/** Prints how well the colours of the synthetic photos are read: a row a known colour. */
const folder = await mkdtemp(path.join(tmpdir(), 'wayfold-photos-'));
try {
  const rows = (await readScenes(folder)).flatMap(({ colours }) => colours);
  const width = Math.max(...rows.map(({ scene }) => scene.length));
  const percent = (share: number): string => `${Math.round(share * 100)} %`.padStart(5);
  const say = (text: string): boolean => process.stdout.write(`${text}\n`);
  say(`${'photo'.padEnd(width)}  known    read     error  share   read  called`);
  for (const { scene, known, read, name, error, knownShare, readShare } of rows) {
    say(
      `${scene.padEnd(width)}  ${known}  ${read}  ${error.toFixed(2).padStart(5)}  ${percent(knownShare)}  ${percent(readShare)}  ${name}`,
    );
  }
  const errors = rows.map(({ error }) => error).toSorted((a, b) => a - b);
  const of = (share: number): string => (errors[Math.floor((errors.length - 1) * share)] ?? 0).toFixed(2);
  say(
    `${rows.length} colours: CIEDE2000 mean ${meanOf(errors).toFixed(2)}, median ${of(0.5)}, nine in ten under ${of(0.9)}, worst ${of(1)}`,
  );
} finally {
  await rm(folder, { recursive: true, force: true });
}
