import axe from 'axe-core';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { launchBrowser } from './chromium.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(async () => {
  await browser?.close();
});

describe('the browser the tests use', () => {
  it('renders text: words take up room', async () => {
    const page = await browser.newPage();
    await page.setContent('<p style="display:inline-block">Herringbone</p>');
    const width = await page.locator('p').evaluate((element) => element.getBoundingClientRect().width);
    expect(width).toBeGreaterThan(40);
    await page.close();
  });

  it('sees a contrast that is too low, so that silence of the contrast check means something', async () => {
    const page = await browser.newPage();
    await page.setContent(
      '<html lang="en"><title>x</title><main><p style="color:#bbb;background:#fff">pale words</p></main></html>',
    );
    await page.addScriptTag({ content: axe.source });
    const violations = await page.evaluate(async () => {
      const tool = (globalThis as unknown as { axe: typeof axe }).axe;
      return (await tool.run({ runOnly: ['wcag2aa'] })).violations.map(({ id }) => id);
    });
    expect(violations).toContain('color-contrast');
    await page.close();
  });
});
