import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { createWardrobeEngine } from '../../lib/outfit/index.ts';
import { createFormats, english, LANGUAGES, phrase, say } from '../../lib/words/index.ts';
import { DESK, PHONE, type Visit, visitSite } from '../browser/visit.ts';
import { wardrobes } from '../outfit/random-wardrobe.ts';
import { builtSite } from './built.ts';

const PAIRS = 'october-by-rail/chestnut-and-rain/pairs/';

let visit: Visit;
beforeAll(async () => {
  visit = await visitSite(await builtSite('client'));
});
afterAll(() => visit.close());

describe('the grid of pairs', () => {
  it('has a few words for whatever a rule can have against a top and a bottom, in every language', () => {
    const rules = new Set<string>();
    for (const wardrobe of fc.sample(wardrobes, { numRuns: 400, seed: 11 }))
      for (const { reasons } of createWardrobeEngine(wardrobe).pairs())
        for (const { rule, severity } of reasons) if (severity === 'rules out') rules.add(rule);
    expect(rules.size).toBeGreaterThan(8);
    for (const [language, sentences] of Object.entries(LANGUAGES)) {
      const formats = createFormats({ language, temperature: 'C', length: 'cm', weight: 'kg' });
      for (const rule of rules) {
        const short = say(sentences, formats, phrase('site', 'short reason', { rule }));
        expect(short, `${language} ${rule}`).not.toBe(rule);
        expect(short.length, short).toBeLessThan(30);
      }
    }
    expect(english.site['short reason']({ rule: 'no such rule' })).toBe('no such rule');
  });

  it('has a heading over every column, that of the tops too, and beside every row', async () => {
    const page = await visit.open(PAIRS);
    expect(await page.locator('.pairs thead td').count()).toBe(0);
    const heads = await page.locator('.pairs thead th[scope=col]').count();
    for (const row of await page.locator('.pairs tbody tr').all()) {
      expect(await row.locator('th[scope=row]').count()).toBe(1);
      expect(await row.locator('th, td').count()).toBe(heads);
    }
    await page.context().close();
  });

  it('gives the few words on a phone, the whole reason on a desk and on paper', async () => {
    const page = await visit.open(PAIRS, { viewport: PHONE });
    const brief = page.locator('.no .brief').first();
    const full = page.locator('.no .full').first();
    expect([await brief.isVisible(), await full.isVisible()]).toEqual([true, false]);
    await page.emulateMedia({ media: 'print' });
    expect([await brief.isVisible(), await full.isVisible()]).toEqual([false, true]);
    await page.emulateMedia({ media: 'screen' });
    await page.setViewportSize(DESK);
    expect([await brief.isVisible(), await full.isVisible()]).toEqual([false, true]);
    await page.context().close();
  });

  it('leads from a pair to where it can be tried: one that does not go says why there, a spare one goes', async () => {
    const page = await visit.open(PAIRS, { viewport: PHONE });
    const reason = await page.locator('.no .full span').first().textContent();
    await page.locator('.no .brief').first().click();
    await page.waitForURL(/\/try\/\?piece=/);
    expect(await page.locator('[data-try-reasons]').textContent()).toContain(reason);
    await page.goBack();
    await page.locator('.ok a', { hasText: 'spare' }).first().click();
    await page.waitForURL(/\/try\/\?piece=/);
    expect(await page.locator('[data-try-state]').getAttribute('data-try-state')).toBe('so far');
    expect(await page.locator('input[name=piece]:checked').count()).toBe(2);
    expect(visit.complaints()).toEqual([]);
    await page.context().close();
  });
});
