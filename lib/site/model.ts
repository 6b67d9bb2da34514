import type { Content } from '../content/index.ts';
import type { Guide } from '../guide/index.ts';
import type { Download, PictureIndex } from './pictures.ts';
import { type CoverView, coverView } from './views/cover.ts';
import { type DaysView, daysView } from './views/days.ts';
import { type HomeView, homeView } from './views/home.ts';
import { type LooksView, type LookView, looksView, lookView } from './views/looks.ts';
import { type PackingView, packingView } from './views/packing.ts';
import { type PiecesView, piecesView } from './views/pieces.ts';
import { siteVoice } from './voice.ts';

export interface SitePart {
  readonly guide: Guide;
  readonly pictures: PictureIndex;
  readonly downloads: readonly Download[];
}

export interface SiteInput {
  readonly parts: readonly SitePart[];
  readonly content: Content;
  readonly edition: 'client' | 'stylist';
}

/** Every page as plain text, numbers and addresses; one list a kind of page, for one paginated template each. */
export interface SiteModel {
  readonly home: HomeView;
  readonly covers: readonly CoverView[];
  readonly pieces: readonly PiecesView[];
  readonly looks: readonly LooksView[];
  readonly lookPages: readonly LookView[];
  readonly days: readonly DaysView[];
  readonly packing: readonly PackingView[];
  /** A small style sheet a guide: its accent. */
  readonly accents: readonly { readonly permalink: string; readonly light: string; readonly dark: string }[];
}

/** Computes every page. Pure. */
export const siteModel = ({ parts, content }: SiteInput): SiteModel => {
  const voice = siteVoice(content.studio);
  return {
    home: homeView(parts, content.studio, voice),
    covers: parts.map(({ guide, pictures, downloads }) =>
      coverView(
        { guide, pictures, downloads, family: parts.filter((part) => part.guide.brief.id === guide.brief.id) },
        voice,
      ),
    ),
    pieces: parts.map(({ guide, pictures }) => piecesView(guide, pictures, voice)),
    looks: parts.map(({ guide, pictures }) => looksView(guide, pictures, voice)),
    lookPages: parts.flatMap(({ guide, pictures }) =>
      guide.looks.map((look) => lookView(guide, look, pictures, voice)),
    ),
    days: parts.map(({ guide, pictures }) => daysView(guide, pictures, voice)),
    packing: parts.map(({ guide, pictures, downloads }) => packingView(guide, pictures, downloads, voice)),
    accents: parts.map(({ guide }) => ({ permalink: `/${guide.id}/accent.css`, ...guide.accent })),
  };
};
