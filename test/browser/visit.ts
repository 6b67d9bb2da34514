import type { Browser, BrowserContext, BrowserContextOptions, Page } from 'playwright-core';
import { launchBrowser } from './chromium.ts';
import { type StaticServer, serveFolder } from './server.ts';

export interface Visit {
  readonly browser: Browser;
  readonly server: StaticServer;
  /** A new context with a page at an address below the site. Whatever the page complains about is kept. */
  open(address: string, options?: BrowserContextOptions): Promise<Page>;
  /** The context's next page, at an address below the site. */
  also(context: BrowserContext, address: string): Promise<Page>;
  /** Errors of scripts and of the content security policy, since the last call. */
  complaints(): readonly string[];
  close(): Promise<void>;
}

/** A phone held upright: CSS pixels. */
export const PHONE = { width: 390, height: 844 } as const;
export const DESK = { width: 1280, height: 900 } as const;

/** A browser before a served site. Service workers are kept out unless a context asks for them. */
export const visitSite = async (site: string): Promise<Visit> => {
  const server = await serveFolder(site);
  const browser = await launchBrowser();
  let said: string[] = [];
  const also = async (context: BrowserContext, address: string): Promise<Page> => {
    const page = await context.newPage();
    page.on('pageerror', (error) => said.push(`${address}: ${error.message}`));
    page.on('console', (message) => {
      if (message.type() === 'error') said.push(`${address}: ${message.text()}`);
    });
    await page.goto(server.address + address);
    return page;
  };
  return {
    browser,
    server,
    also,
    async open(address, options = {}) {
      return also(await browser.newContext({ viewport: PHONE, serviceWorkers: 'block', ...options }), address);
    },
    complaints() {
      const since = said;
      said = [];
      return since;
    },
    async close() {
      await browser.close();
      await server.close();
    },
  };
};
