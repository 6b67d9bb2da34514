import path from 'node:path';
import Eleventy from '@11ty/eleventy';
import type { EleventyConfig } from './configure.ts';
import type { SiteModel } from './model.ts';
import { writeWorker } from './offline.ts';

/** The project's own folder: templates and the configuration lie there, wherever the content is. */
const HOME = path.join(import.meta.dirname, '..', '..');

/** Renders every page of the model into a folder with Eleventy, which reads templates only and never the content. */
export const renderSite = async (model: SiteModel, out: string): Promise<{ readonly pages: number }> => {
  process.chdir(HOME);
  const eleventy = new Eleventy('templates/pages', path.relative(HOME, out), {
    quietMode: true,
    configPath: '.eleventy.js',
    config: (eleventyConfig: EleventyConfig) => {
      eleventyConfig.addGlobalData('site', () => model);
    },
  });
  // its own lines are for its own command line; what fails is thrown
  eleventy.disableLogger();
  const [, templates] = (await eleventy.write()) as [unknown, readonly unknown[] | undefined];
  for (const { permalink } of model.manifests) await writeWorker(out, path.dirname(permalink).slice(1));
  return { pages: templates?.length ?? 0 };
};
