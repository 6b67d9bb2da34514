import { leavingOut } from '../../bag/index.ts';
import type { Guide } from '../../guide/index.ts';
import { type Phrase, phrase } from '../../words/index.ts';
import { type FrontPlot, frontPlot } from '../svg/front.ts';
import type { SiteVoice } from '../voice.ts';

/** How to get lighter: the picture, and a few of its points as a table. */
export interface LighterView {
  readonly heading: string;
  readonly lead: string;
  readonly found: string | undefined;
  /** What the rows are: the way to fit, or only to be lighter. */
  readonly order: string;
  readonly said: string;
  readonly plot: FrontPlot;
  readonly heads: { readonly leave: string; readonly saves: string; readonly looks: string; readonly unserved: string };
  readonly rows: readonly {
    readonly leave: string;
    readonly saves: string;
    readonly looks: string;
    readonly unserved: string;
  }[];
  readonly worthHeading: string;
  readonly worthLead: string;
  readonly worthHeads: readonly string[];
  readonly worth: readonly {
    readonly name: string;
    readonly grams: string;
    readonly litres: string;
    readonly looks: string;
    readonly unserved: string;
  }[];
}

/** Undefined when the capsule makes no looks, or too few choices for a picture. */
export const lighterView = ({ bagReport, pieces, brief }: Guide, voice: SiteVoice): LighterView | undefined => {
  const { formats } = voice;
  const { front, worth, fits } = bagReport;
  const { lead, steps } = leavingOut(bagReport);
  const whole = front.points.at(-1);
  if (whole === undefined || front.points.length < 3) return undefined;
  const say = (said: Phrase): string => voice.say(said);
  const nameOf = (id: string): string => pieces.find((piece) => piece.id === id)?.name ?? id;
  const occasionOf = (id: string): string => brief.occasions.find((occasion) => occasion.id === id)?.what ?? id;
  return {
    heading: say(phrase('bag', fits ? 'lighter heading' : 'lighter at once', {})),
    lead: say(phrase('bag', 'lighter lead', { looks: whole.looks, grams: whole.grams })),
    found: front.proven ? undefined : say(phrase('bag', 'lighter found', {})),
    said: say(phrase('bag', 'front picture', { points: front.points.length, looks: whole.looks })),
    plot: frontPlot(front.points, {
      weight: (kilograms) => formats.kilograms(kilograms),
      count: (looks) => formats.count(looks),
      title: ({ grams, looks }) => `${formats.kilograms(grams / 1000)}: ${formats.count(looks)}`,
    }),
    heads: {
      leave: say(phrase('bag', 'head leave', {})),
      saves: say(phrase('bag', 'head saves in all', {})),
      looks: say(phrase('bag', 'head looks left', {})),
      unserved: say(phrase('bag', 'head unserved', {})),
    },
    order: say(lead),
    rows: steps.map(({ piece, looksLeft, unserved }, index) => ({
      leave: nameOf(piece),
      saves: formats.grams(steps.slice(0, index + 1).reduce((sum, { grams }) => sum + grams, 0)),
      looks: formats.count(looksLeft),
      unserved: formats.list(unserved.map(occasionOf)),
    })),
    worthHeading: say(phrase('bag', 'worth heading', {})),
    worthLead: say(phrase('bag', 'worth lead', {})),
    worthHeads: [
      say(phrase('bag', 'head leave', {})),
      say(phrase('bag', 'head saves', {})),
      say(phrase('bag', 'head looks lost', {})),
      say(phrase('bag', 'head unserved', {})),
    ],
    worth: worth
      .toSorted((a, b) => a.looksLost - b.looksLost || b.grams - a.grams)
      .map(({ piece, grams, litres, looksLost, unserved }) => ({
        name: nameOf(piece),
        grams: formats.grams(grams),
        litres: formats.litres(litres),
        looks: formats.count(looksLost),
        unserved: formats.list(unserved.map(occasionOf)),
      })),
  };
};
