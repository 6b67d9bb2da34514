import type { Studio } from '../../model/index.ts';
import type { SitePart } from '../model.ts';
import type { SiteVoice } from '../voice.ts';
import { type ImageView, lookImage } from './pictures.ts';

export interface HomeView {
  readonly lang: string;
  readonly title: string;
  readonly line: string;
  readonly note: string;
  readonly heading: string;
  readonly skip: string;
  readonly trips: readonly {
    readonly title: string;
    readonly dates: string;
    readonly places: string;
    readonly capsules: readonly {
      readonly title: string;
      readonly who: string;
      readonly href: string;
      /** Prefix of the pictures' addresses. */
      readonly base: string;
      readonly image: ImageView | undefined;
    }[];
  }[];
}

/** The studio's own page: every trip with its capsules. */
export const homeView = (parts: readonly SitePart[], studio: Studio, voice: SiteVoice): HomeView => {
  const trips = [...new Set(parts.map(({ guide }) => guide.brief))];
  return {
    lang: voice.language,
    title: studio.name,
    line: studio.line,
    note: voice.markdown(studio.note),
    heading: voice.word('home guides'),
    skip: voice.word('skip to content'),
    trips: trips.map((brief) => ({
      title: brief.title,
      dates: voice.word('trip dates', { from: brief.from, to: brief.to }),
      places: voice.formats.list([...new Set(brief.places.map(({ name }) => name))]),
      capsules: parts
        .filter(({ guide }) => guide.brief === brief)
        .map(({ guide, pictures }) => {
          const look = guide.looks.find(({ favourite }) => favourite) ?? guide.looks[0];
          return {
            title: guide.capsule.title,
            who: `${voice.word('capsule for', { traveller: guide.capsule.traveller })}, ${voice.word('capsule pieces', { pieces: guide.pieces.length })}`,
            href: `${guide.id}/`,
            base: `${guide.id}/`,
            image: look === undefined ? undefined : lookImage(guide, look, pictures, voice, 480),
          };
        }),
    })),
  };
};
