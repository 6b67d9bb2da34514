import { readdir, readFile } from 'node:fs/promises';
import path from 'node:path';
import { LinkChecker, LinkState } from 'linkinator';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type StaticServer, serveFolder } from '../browser/server.ts';
import { builtSite, pagesOf } from './built.ts';

let site: string;
let server: StaticServer;
let pages: readonly (readonly [string, string])[];
beforeAll(async () => {
  site = await builtSite('demo');
  server = await serveFolder(site);
  pages = await Promise.all(
    (await pagesOf(site)).map(
      async (page) => [page, await readFile(path.join(site, page, 'index.html'), 'utf8')] as const,
    ),
  );
});
afterAll(() => server.close());

const pagesWith = (wrong: (html: string, page: string) => boolean): readonly string[] =>
  pages.filter(([page, html]) => wrong(html, page)).map(([page]) => page);

describe('links', () => {
  it('all lead somewhere in this site: pages, pictures in every width, sheets, styles, fonts, and the places inside pages', async () => {
    const { links } = await new LinkChecker().check({
      path: server.address,
      recurse: true,
      checkCss: true,
      checkFragments: true,
      concurrency: 40,
    });
    const broken = links.filter(({ state }) => state !== LinkState.OK);
    expect(broken.map(({ url, parent, state }) => `${state} ${url} from ${parent}`)).toEqual([]);
    expect(links.filter(({ url }) => !url.startsWith(server.address)).map(({ url }) => url)).toEqual([]);
    const reached = new Set(links.map(({ url }) => url.replace(/#.*/, '')));
    const unreached = pages.map(([page]) => page).filter((page) => !reached.has(server.address + page));
    expect(unreached, 'pages no link leads to').toEqual([]);
  });

  it('of a manifest lead to icons of the sizes it says', async () => {
    const files = (await readdir(site, { recursive: true })).filter((file) => file.endsWith('.webmanifest'));
    expect(files.length).toBeGreaterThanOrEqual(4);
    for (const file of files) {
      const { icons, lang, start_url, scope } = JSON.parse(await readFile(path.join(site, file), 'utf8'));
      expect([lang, start_url, scope]).toEqual(['en-GB', './', './']);
      const sizes: string[] = icons.map((icon: { sizes: string }) => icon.sizes);
      // What browsers ask for to install a page: an icon of 512 pixels, or one of any size. MDN, "Making PWAs installable", from memory.
      expect(sizes).toEqual(expect.arrayContaining(['any', '512x512']));
      for (const { src, sizes: said } of icons) {
        const { width, height } = await sharp(path.join(site, path.dirname(file), src)).metadata();
        if (said !== 'any') expect(`${width}x${height}`, src).toBe(said);
      }
    }
  });

  it('no file names another site', async () => {
    const named = pages.flatMap(([page, html]) =>
      [...html.matchAll(/https?:\/\/[^"' )<]+/g)].map(([address]) => `${page} ${address}`),
    );
    expect(named).toEqual([]);
    // Names of XML vocabularies are no addresses that anything asks for.
    const vocabulary = /(["'])http:\/\/www\.w3\.org\/[0-9]{4}\/[a-z]+\1/g;
    const assets = (await readdir(path.join(site, 'assets'))).filter((file) => /\.(css|js|svg)$/.test(file));
    expect(assets.length).toBeGreaterThan(2);
    for (const file of assets) {
      const text = await readFile(path.join(site, 'assets', file), 'utf8');
      expect(text.replaceAll(vocabulary, ''), file).not.toMatch(/https?:\/\//);
    }
  });
});

/** HTML Living Standard, event handler content attributes: on, then letters. */
const HANDLER = /<[a-z][^>]*\son[a-z]+\s*=/i;

describe('every page', () => {
  it('allows itself nothing from elsewhere and no inline code', () => {
    const policy = /<meta http-equiv="Content-Security-Policy" content="([^"]*)">/;
    for (const [page, html] of pages) {
      const rules = new Map(
        (policy.exec(html)?.[1] ?? '')
          .split('; ')
          .map((rule) => [rule.split(' ')[0] ?? '', rule.split(' ').slice(1).join(' ')]),
      );
      expect(rules.get('default-src'), page).toBe("'self'");
      expect([...rules.values()].join(' '), page).not.toMatch(/unsafe|\*|https?:/);
      for (const name of ['base-uri', 'form-action', 'object-src']) expect(rules.get(name), page).toBe("'none'");
      // The policy holds only for what comes after it.
      expect(html.indexOf('Content-Security-Policy'), page).toBeLessThan(html.search(/<(script|link|style)\b/));
    }
  });

  it('has no inline script, style or handler', () => {
    expect(
      pagesWith((html) => /<script(?![^>]*\ssrc=)/.test(html)),
      'script',
    ).toEqual([]);
    expect(
      pagesWith((html) => /<style\b|\sstyle\s*=/.test(html)),
      'style',
    ).toEqual([]);
    expect(
      pagesWith((html) => HANDLER.test(html)),
      'handler',
    ).toEqual([]);
    expect(
      pagesWith((html) => /javascript:/i.test(html)),
      'address',
    ).toEqual([]);
  });

  it('says its language, its title and what it is about, and asks not to be listed', () => {
    expect(pagesWith((html) => !/<html lang="en-GB">/.test(html))).toEqual([]);
    expect(pagesWith((html) => !/<title>[^<]{4,}<\/title>/.test(html))).toEqual([]);
    expect(pagesWith((html) => !/<meta name="description" content="[^"]+">/.test(html))).toEqual([]);
    expect(pagesWith((html) => !html.includes('<meta name="robots" content="noindex">'))).toEqual([]);
    expect(pagesWith((html) => !html.includes('<meta name="referrer" content="no-referrer">'))).toEqual([]);
  });

  it('has a title of its own within its guide', () => {
    const titles = pages.map(
      ([page, html]) => `${page.split('/').slice(0, 2).join('/')} ${/<title>([^<]*)/.exec(html)?.[1]}`,
    );
    expect(titles.filter((title, at) => titles.indexOf(title) !== at)).toEqual([]);
  });

  it('tells a guide in German to the browser and to readers of screens', async () => {
    const german = await builtSite('german');
    for (const page of await pagesOf(german))
      expect(await readFile(path.join(german, page, 'index.html'), 'utf8'), page).toContain('<html lang="de">');
  });
});

describe('link previews', () => {
  const property = (html: string, name: string): string | undefined =>
    new RegExp(`<meta property="og:${name}" content="([^"]*)">`).exec(html)?.[1];

  it('every page of a guide names a picture that is there, with its size and what it shows', async () => {
    const guides = pages.filter(([page]) => page.split('/').length > 2);
    for (const [page, html] of guides) {
      const image = property(html, 'image') ?? '';
      expect((await fetch(new URL(image, server.address + page))).headers.get('content-type'), page).toBe('image/png');
      // 1.91 : 1, the shape link previews are shown in: common practice, no source.
      expect([property(html, 'image:width'), property(html, 'image:height')], page).toEqual(['1200', '630']);
      for (const name of ['title', 'image:alt', 'type', 'description'])
        expect(property(html, name)?.length ?? 0, `${page} ${name}`).toBeGreaterThan(2);
    }
  });

  it('gives the whole address once the studio knows it, as the Open Graph protocol wants', async () => {
    const known = await builtSite('many');
    for (const page of (await pagesOf(known)).filter((each) => each !== '')) {
      const html = await readFile(path.join(known, page, 'index.html'), 'utf8');
      expect(property(html, 'image'), page).toMatch(
        /^https:\/\/guides\.example\/october-by-rail\/[a-z-]+\/cards\/look-\d+-wide\.png$/,
      );
      expect(property(html, 'url'), page).toBe(`https://guides.example/${page}`);
    }
  });
});
