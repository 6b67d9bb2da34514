import type { Guide } from '../../guide/index.ts';
import type { SiteVoice } from '../voice.ts';

export interface NavItem {
  readonly text: string;
  readonly href: string;
  readonly current: boolean;
}

/** What every page of a guide has around its content. Addresses are relative, so that a guide works below any folder. */
export interface Frame {
  readonly lang: string;
  readonly title: string;
  readonly description: string;
  /** From the page to the root of the site: `../../`. */
  readonly root: string;
  /** From the page to the root of its guide. */
  readonly base: string;
  /** Where the page goes, below the output folder. */
  readonly permalink: string;
  readonly mark: string;
  readonly nav: readonly NavItem[];
  readonly navLabel: string;
  readonly skip: string;
  readonly foot: string;
  readonly noindex: boolean;
  /** A script of this page's own, below the assets folder. */
  readonly script?: string;
  /** The page's full address, when the studio's is known. */
  readonly url?: string;
  /** Leads from a link preview to the guide's root: its full address when one is known, since previews are drawn elsewhere. */
  readonly previewRoot: string;
  /** The picture for link previews; its address is below the guide's root. */
  readonly preview?: {
    readonly address: string;
    readonly width: number;
    readonly height: number;
    readonly alt: string;
  };
  readonly bodyClass: string;
}

export type PageName = 'cover' | 'pieces' | 'pairs' | 'looks' | 'days' | 'packing' | 'findings' | 'try';

const NAV = [
  ['cover', '', 'nav trip'],
  ['pieces', 'pieces/', 'nav pieces'],
  ['pairs', 'pairs/', 'nav pairs'],
  ['looks', 'looks/', 'nav looks'],
  ['days', 'days/', 'nav days'],
  ['packing', 'packing/', 'nav packing'],
  ['try', 'try/', 'nav try'],
] as const;

/** The address, below the guide's root, at which pieces are tried together. */
export const tryHref = (pieces: readonly string[]): string =>
  `try/?${new URLSearchParams(pieces.map((id): [string, string] => ['piece', id]))}`;

const up = (path: string): string => '../'.repeat(path.split('/').filter((step) => step !== '').length);

export interface FrameQuestion {
  readonly guide: Guide;
  readonly voice: SiteVoice;
  readonly page: PageName;
  /** Below the guide's folder: `looks/look-01/`. */
  readonly path: string;
  readonly title: string;
  readonly description: string;
  readonly preview?: Frame['preview'];
  readonly script?: string;
}

/** Pages where each small picture of a look fills its place, and so has a scale of its own. */
const TILED: ReadonlySet<string> = new Set(['', 'looks/', 'days/', 'together/']);

/** The frame of one page of a guide. */
export const frameOf = ({ guide, voice, page, path, title, description, preview, script }: FrameQuestion): Frame => {
  const { brief, capsule, studio } = guide;
  const base = up(path);
  const address = studio.address?.replace(/\/$/, '');
  return {
    lang: voice.language,
    title: `${title} · ${brief.title}`,
    description,
    root: base + up(guide.id),
    base: base === '' ? './' : base,
    permalink: `/${guide.id}/${path}index.html`,
    mark: capsule.title,
    nav: NAV.map(([name, href, key]) => ({
      text: voice.word(key),
      href: `${base === '' ? './' : base}${href}`,
      current: name === page,
    })),
    navLabel: voice.word('nav label'),
    skip: voice.word('skip to content'),
    foot: voice.word(TILED.has(path) ? 'cut for tiled' : 'cut for', {
      traveller: capsule.traveller,
      studio: studio.name,
    }),
    noindex: true,
    bodyClass: `p-${page}`,
    previewRoot: address === undefined ? base : `${address}/${guide.id}/`,
    ...(address === undefined ? {} : { url: `${address}/${guide.id}/${path}` }),
    ...(script === undefined ? {} : { script }),
    ...(preview === undefined ? {} : { preview }),
  };
};
