import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { gzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { DESK, PHONE, type Visit, visitSite } from '../browser/visit.ts';
import { builtSite, kindsOf, pagesOf } from './built.ts';

const GUIDE = 'october-by-rail/chestnut-and-rain';
const PAGE_BYTES = 150_000;
const SCRIPT_BYTES = 20_000;
const TEXT = /\.(html|css|js|svg|webmanifest)$/;

let site: string;
let visit: Visit;
beforeAll(async () => {
  site = await builtSite('client');
  visit = await visitSite(site);
});
afterAll(() => visit.close());

/** Bytes of a file as a web server sends it: text compressed, pictures and fonts as they are. */
const sent = async (asked: string): Promise<number> => {
  const file = path.join(site, asked.replace('/guides/', ''), asked.endsWith('/') ? 'index.html' : '');
  const bytes = await readFile(file);
  return TEXT.test(file) ? gzipSync(bytes).length : bytes.length;
};

const LOOKS = /\/pictures\/looks\//;

describe('weight on the wire', () => {
  it.each([
    ['a phone', { viewport: PHONE, deviceScaleFactor: 3 }],
    ['a desk', { viewport: DESK, deviceScaleFactor: 1 }],
  ] as const)(
    'on %s: every kind of page, read to its end, stays under 150 kB without the pictures of looks',
    async (_, screen) => {
      const weights: Record<string, number> = {};
      for (const [kind, page] of [['home', ''], ...kindsOf(await pagesOf(site), GUIDE)] as const) {
        const opened = await visit.open('404', screen);
        visit.server.asked();
        await opened.goto(visit.server.address + page, { waitUntil: 'networkidle' });
        await opened.evaluate(async () => {
          for (const image of document.images) image.loading = 'eager';
          await Promise.all([...document.images].map((image) => image.decode().catch(() => undefined)));
        });
        await opened.waitForLoadState('networkidle');
        const files = [...new Set(visit.server.asked().map((request) => request.path))].filter(
          (file) => !LOOKS.test(file),
        );
        const bytes = await Promise.all(files.map(sent));
        weights[kind] = bytes.reduce((sum, each) => sum + each, 0);
        const script = await Promise.all(files.filter((file) => file.endsWith('.js')).map(sent));
        expect(
          script.reduce((sum, each) => sum + each, 0),
          `${kind}, script`,
        ).toBeLessThan(SCRIPT_BYTES);
        await opened.context().close();
      }
      expect(Object.entries(weights).filter(([, bytes]) => bytes > PAGE_BYTES)).toEqual([]);
    },
  );
});
