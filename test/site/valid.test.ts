import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { HtmlValidate, type Report } from 'html-validate';
import { describe, expect, it } from 'vitest';
import { builtSite, pagesOf, type SiteName } from './built.ts';

/**
 * The HTML standard's element and attribute rules, as html-validate knows them offline, with its rules for accessibility.
 * Off: rules of writing style, which say nothing about validity.
 */
const validator = new HtmlValidate({
  root: true,
  extends: ['html-validate:standard', 'html-validate:a11y', 'html-validate:document'],
  rules: {
    // The parser of the HTML standard takes doctype in any case.
    'doctype-style': 'off',
    // Every file comes from the same place as the page.
    'require-sri': 'off',
    // Nothing is sent anywhere: a choice acts at once.
    'wcag/h32': 'off',
  },
});

const said = (page: string, { results }: Report): readonly string[] =>
  results.flatMap(({ messages }) =>
    messages.map(({ ruleId, message, line }) => `${page}:${line} ${ruleId}: ${message}`),
  );

const problemsOf = async (name: SiteName): Promise<readonly string[]> => {
  const site = await builtSite(name);
  const all: string[] = [];
  for (const page of await pagesOf(site))
    all.push(
      ...said(page, await validator.validateString(await readFile(path.join(site, page, 'index.html'), 'utf8'))),
    );
  return all;
};

describe('every page is valid HTML', () => {
  it('finds what is wrong in a page that is', async () => {
    const report = await validator.validateString(
      '<!doctype html><html lang="en"><title>x</title><p><div></div></p></html>',
    );
    expect(report.valid).toBe(false);
  });

  it.each(['demo', 'german', 'one', 'blind'] as const)('%s', async (name) => {
    expect(await problemsOf(name)).toEqual([]);
  });
});
