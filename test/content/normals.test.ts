import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { readContent } from '../../lib/content/index.ts';

let folder: string;
beforeEach(async () => {
  folder = await mkdtemp(path.join(tmpdir(), 'wayfold-normals-'));
  await cp(path.join(import.meta.dirname, 'cases', 'valid', 'content'), folder, { recursive: true });
  const brief = path.join(folder, 'trips/graz/brief.md');
  await writeFile(brief, (await readFile(brief, 'utf8')).replace(', weather: {low: 8, high: 18}', ''));
});
afterEach(() => rm(folder, { recursive: true, force: true }));

const HEADER = 'place,month,low C,high C,wind m/s,humidity %,rain %,source\n';

describe('monthly normals', () => {
  it('stand in for the weather of a stay, and keep their source', async () => {
    await writeFile(path.join(folder, 'normals.csv'), `${HEADER}Graz,5,9,20,2,70,45,invented for this test\n`);
    const { content, problems } = await readContent(folder);
    expect(problems).toEqual([]);
    const place = content?.trips[0]?.brief.places[0];
    expect(place?.days['2027-05-02']).toMatchObject({
      lowC: 9,
      highC: 20,
      source: expect.stringContaining('invented'),
    });
  });

  it('leave the weather unknown where the table has no such month: a finding, not a guess', async () => {
    await writeFile(path.join(folder, 'normals.csv'), `${HEADER}Graz,6,12,23,2,70,45,invented for this test\n`);
    const place = (await readContent(folder)).content?.trips[0]?.brief.places[0];
    expect(place?.days).toEqual({});
    expect(place?.weather).toBeUndefined();
  });

  it('report what is wrong in the table with its line', async () => {
    await writeFile(path.join(folder, 'normals.csv'), `${HEADER}Graz,13,9,20,2,70,45,x\n`);
    expect((await readContent(folder)).problems).toEqual([
      { file: 'normals.csv', line: 2, wrong: expect.stringContaining('month'), mend: expect.any(String) },
    ]);
  });
});
