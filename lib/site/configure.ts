import nunjucks from 'nunjucks';

/** What of Eleventy's configuration object is used. */
export interface EleventyConfig {
  setLibrary(name: string, library: unknown): void;
  setQuietMode(quiet: boolean): void;
  addGlobalData(name: string, value: unknown): void;
  setTemplateFormats(formats: string[]): void;
}

/** Where templates lie, and a nunjucks that escapes everything and fails on a name it does not know. */
export const configureSite = (eleventyConfig: EleventyConfig): unknown => {
  const loader = new nunjucks.FileSystemLoader(['templates/layouts', 'templates/parts']);
  const environment = new nunjucks.Environment(loader, {
    autoescape: true,
    throwOnUndefined: true,
    trimBlocks: true,
    lstripBlocks: true,
  });
  eleventyConfig.setLibrary('njk', environment);
  eleventyConfig.setQuietMode(true);
  eleventyConfig.setTemplateFormats(['njk']);
  return { dir: { input: 'templates/pages', includes: '../parts', layouts: '../layouts' }, htmlTemplateEngine: 'njk' };
};
