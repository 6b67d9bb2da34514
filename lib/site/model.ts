import { PAPER_LIGHT } from '../colour/index.ts';
import type { Content } from '../content/index.ts';
import { type Beside, companionsOf, type Guide, partyOf } from '../guide/index.ts';
import type { Download, PictureIndex } from './pictures.ts';
import { type BagPageView, bagView } from './views/bag.ts';
import { type CoverView, coverView } from './views/cover.ts';
import { type DaysView, daysView } from './views/days.ts';
import { type FindingsView, findingsView } from './views/findings.ts';
import type { Frame } from './views/frame.ts';
import { type HomeView, homeView } from './views/home.ts';
import { type LookView, lookView } from './views/look.ts';
import { type LooksView, looksView } from './views/looks.ts';
import { type MoodsView, moodsView } from './views/moods.ts';
import { type NumbersView, numbersView } from './views/numbers.ts';
import { type PackingView, packingView } from './views/packing.ts';
import { type PairsView, pairsView } from './views/pairs.ts';
import { type PaletteView, paletteView } from './views/palette.ts';
import { type PieceView, pieceView } from './views/piece.ts';
import { type PiecesView, piecesView } from './views/pieces.ts';
import { hasShopping, type ShoppingView, shoppingView } from './views/shopping.ts';
import { type TogetherView, togetherView } from './views/together.ts';
import { type TryView, tryView } from './views/try.ts';
import { type WearView, wearView } from './views/wear.ts';
import { type SiteVoice, siteVoice } from './voice.ts';

export interface SitePart {
  readonly guide: Guide;
  readonly pictures: PictureIndex;
  readonly downloads: readonly Download[];
}

export interface SiteInput {
  readonly parts: readonly SitePart[];
  readonly content: Content;
  readonly edition: 'client' | 'stylist';
  readonly beside: Beside;
}

/** Every page as plain text, numbers and addresses; one list a kind of page, for one paginated template each. */
export interface SiteModel {
  readonly home: HomeView;
  readonly covers: readonly CoverView[];
  readonly pieces: readonly PiecesView[];
  readonly piecePages: readonly PieceView[];
  readonly palettes: readonly PaletteView[];
  readonly pairs: readonly PairsView[];
  readonly wear: readonly WearView[];
  readonly numbers: readonly NumbersView[];
  /** Where a trip has two capsules of one wardrobe. */
  readonly moods: readonly MoodsView[];
  /** Where two or more travel. */
  readonly together: readonly TogetherView[];
  /** In the client's edition only where something is still to buy. */
  readonly shopping: readonly ShoppingView[];
  /** Garments that are in no guide, a file each. */
  readonly drawings: readonly { readonly permalink: string; readonly svg: string }[];
  /** Empty in the client's edition. */
  readonly findings: readonly FindingsView[];
  readonly looks: readonly LooksView[];
  readonly lookPages: readonly LookView[];
  readonly trials: readonly TryView[];
  readonly days: readonly DaysView[];
  readonly packing: readonly PackingView[];
  readonly bags: readonly BagPageView[];
  /** What lets a phone install the guide, as JSON that the builder wrote. */
  readonly manifests: readonly { readonly permalink: string; readonly json: string }[];
  /** A small style sheet a guide: its accent. */
  readonly accents: readonly { readonly permalink: string; readonly light: string; readonly dark: string }[];
}

const manifestOf = ({ id, capsule, brief }: Guide, { language }: SiteVoice): string => {
  const assets = `${'../'.repeat(id.split('/').length)}assets/`;
  return JSON.stringify({
    name: `${capsule.title} · ${brief.title}`,
    short_name: capsule.title,
    lang: language,
    start_url: './',
    scope: './',
    display: 'standalone',
    background_color: PAPER_LIGHT,
    theme_color: PAPER_LIGHT,
    icons: [
      { src: `${assets}icon.svg`, sizes: 'any', type: 'image/svg+xml', purpose: 'any' },
      { src: `${assets}icon-512.png`, sizes: '512x512', type: 'image/png', purpose: 'any maskable' },
    ],
  });
};

const hasFrame = (view: unknown): view is { readonly frame: Frame } =>
  typeof view === 'object' && view !== null && 'frame' in view;

/** A page without a picture of its own for link previews shows the card of the guide's first favourite. */
const withPreviews = (model: SiteModel, parts: readonly SitePart[]): SiteModel => {
  const shown = (view: unknown): unknown => {
    if (!hasFrame(view) || view.frame.preview !== undefined) return view;
    const part = parts.find(({ guide }) => view.frame.permalink.startsWith(`/${guide.id}/`));
    const look = part?.guide.looks.find(({ favourite }) => favourite) ?? part?.guide.looks[0];
    const card = look === undefined ? undefined : part?.pictures.cards[look.slug];
    if (part === undefined || card === undefined) return view;
    return { ...view, frame: { ...view.frame, preview: { ...card.landscape, alt: part.guide.capsule.title } } };
  };
  const lists = Object.entries(model).map(([name, views]) => [name, Array.isArray(views) ? views.map(shown) : views]);
  return Object.fromEntries(lists) as SiteModel;
};

/** Computes every page. Pure. */
export const siteModel = ({ parts, content, edition, beside }: SiteInput): SiteModel => {
  const voice = siteVoice(content.studio);
  const familyOf = ({ brief }: Guide): readonly SitePart[] => parts.filter(({ guide }) => guide.brief.id === brief.id);
  const togetherOf = (guide: Guide): TogetherView | undefined => {
    const family = familyOf(guide);
    const guides = family.map((part) => part.guide);
    const ofTrip = beside.families.get(guide.brief.id);
    const companions = companionsOf(guide, guides);
    return togetherView(
      guide,
      companions.flatMap((each) => family.find((part) => part.guide === each) ?? []),
      ofTrip === undefined ? undefined : partyOf(guide, guides, ofTrip),
      voice,
    );
  };
  const shopping = parts
    .filter(({ guide }) => hasShopping(guide, edition))
    .map(({ guide, pictures }) => ({
      guide,
      view: shoppingView(guide, beside.improvements.get(guide.id), pictures, voice),
    }));
  const model: SiteModel = {
    home: homeView(parts, content.studio, voice),
    covers: parts.map(({ guide, pictures, downloads }) =>
      coverView(
        { guide, pictures, downloads, edition, family: familyOf(guide), beside: beside.families.get(guide.brief.id) },
        voice,
      ),
    ),
    pieces: parts.map(({ guide, pictures }) => piecesView(guide, pictures, voice)),
    piecePages: parts.flatMap(({ guide, pictures }) =>
      guide.pieces.map((piece) => pieceView(guide, piece, pictures, voice)),
    ),
    palettes: parts.map(({ guide, pictures }) => paletteView(guide, pictures, voice)),
    pairs: parts.map(({ guide, pictures }) => pairsView(guide, pictures, voice)),
    wear: parts.map(({ guide, pictures }) => wearView(guide, pictures, voice)),
    numbers: parts.map(({ guide }) => numbersView(guide, voice)),
    moods: parts.flatMap(
      ({ guide }) => moodsView(guide, familyOf(guide), beside.families.get(guide.brief.id)?.moods ?? [], voice) ?? [],
    ),
    together: parts.flatMap(({ guide }) => togetherOf(guide) ?? []),
    shopping: shopping.map(({ view }) => view),
    drawings: shopping.flatMap(({ guide, view }) =>
      view.helps.flatMap(({ entries }) =>
        entries.map(({ drawing }) => ({ permalink: `/${guide.id}/${drawing.address}`, svg: drawing.svg })),
      ),
    ),
    findings: edition === 'stylist' ? parts.map(({ guide }) => findingsView(guide, voice)) : [],
    looks: parts.map(({ guide, pictures }) =>
      looksView(
        guide,
        familyOf(guide).map((part) => part.guide),
        pictures,
        voice,
      ),
    ),
    lookPages: parts.flatMap(({ guide, pictures }) =>
      guide.looks.map((look) => lookView(guide, look, pictures, voice)),
    ),
    trials: parts.map(({ guide, pictures }) => tryView(guide, pictures, content.houseRules, voice)),
    days: parts.map(({ guide, pictures }) => daysView(guide, pictures, voice)),
    packing: parts.map(({ guide, pictures, downloads }) => packingView(guide, pictures, downloads, voice)),
    bags: parts.map(({ guide, pictures }) => bagView(guide, pictures, voice)),
    manifests: parts.map(({ guide }) => ({
      permalink: `/${guide.id}/guide.webmanifest`,
      json: manifestOf(guide, voice),
    })),
    accents: parts.map(({ guide }) => ({ permalink: `/${guide.id}/accent.css`, ...guide.accent })),
  };
  return withPreviews(model, parts);
};
