/** Thin on purpose: everything Eleventy needs is written in TypeScript below lib/site. */
export default async function (eleventyConfig) {
  const { tsImport } = await import('tsx/esm/api');
  const { configureSite } = await tsImport('./lib/site/configure.ts', import.meta.url);
  return configureSite(eleventyConfig);
}
