import type { Download } from '../pictures.ts';
import type { SiteVoice } from '../voice.ts';

/** The sheets of one paper, named in words. */
export interface PaperView {
  readonly paper: string;
  readonly links: readonly { readonly href: string; readonly text: string }[];
}

/** The sheets to print, a row a paper. */
export const papersOf = (downloads: readonly Download[], { word }: SiteVoice): readonly PaperView[] =>
  [...new Set(downloads.map(({ paper }) => paper))].map((paper) => ({
    paper,
    links: downloads
      .filter((download) => download.paper === paper)
      .map(({ kind, address }) => ({ href: address, text: word(`sheet ${kind}`) })),
  }));
