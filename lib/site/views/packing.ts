import type { Guide } from '../../guide/index.ts';
import type { PackedBag, PackedPiece } from '../../model/index.ts';
import { phrase } from '../../words/index.ts';
import type { Download, PictureIndex } from '../pictures.ts';
import { type WeightBar, weightBar } from '../svg/tape.ts';
import type { SiteVoice } from '../voice.ts';
import { type Frame, frameOf } from './frame.ts';
import { type PaperView, papersOf } from './papers.ts';
import { type ImageView, pieceImage } from './pictures.ts';

export interface PackingLine {
  /** Stable id for the tick. */
  readonly id: string;
  readonly name: string;
  readonly count: number;
  readonly grams: string;
  readonly estimated: boolean;
  readonly cloth: string | undefined;
  /** How it goes in: folded, rolled, in a pouch; empty for what is not clothing. */
  readonly fold: string;
}

export interface BagView {
  readonly heading: string;
  /** Weight with its limit, or that it has none. */
  readonly weight: Verdict;
  /** That the bag's own weight is counted; empty when it has none. */
  readonly own: string;
  /** Litres packed, of the litres there are. */
  readonly room: Verdict;
  readonly bar: WeightBar;
  readonly lines: readonly PackingLine[];
}

/** Words, marked when something is over a limit. */
export interface Verdict {
  readonly words: string;
  readonly isOver: boolean;
}

export interface PackingView {
  readonly frame: Frame;
  readonly kick: string;
  readonly heading: string;
  /** Everything carried, and how sure that is. */
  readonly total: string;
  readonly verdict: Verdict;
  readonly bags: readonly BagView[];
  readonly worn: {
    readonly heading: string;
    readonly note: string;
    readonly weight: string;
    readonly pieces: readonly (PackingLine & { readonly image: ImageView | undefined })[];
  };
  readonly words: Readonly<
    Record<'toBag' | 'estimated' | 'print' | 'packed' | 'reset' | 'sure' | 'export' | 'refused', string>
  >;
  readonly notes: readonly string[];
  readonly order: string;
  readonly papers: readonly PaperView[];
  readonly lines: number;
  /** Names the ticks in the reader's browser. */
  readonly key: string;
}

export const totalOf = ({ bagReport: { grams }, packing }: Guide, { say }: SiteVoice): string => {
  const spread = (grams.high - grams.low) / 2;
  return `${say(phrase('bag', 'total is', { grams: grams.value, spread, share: packing.weighedShare }))}.`;
};

export const verdictOf = ({ bagReport: { fits } }: Guide, { say }: SiteVoice): Verdict => ({
  words: say(phrase('bag', fits ? 'it fits' : 'it does not fit', {})),
  isOver: !fits,
});

/** Weight and litres of a bag at its departure, each marked when it is over on any journey. */
const measuresOf = (
  { bag, grams, litres }: PackedBag,
  { bagReport }: Guide,
  { word, say }: SiteVoice,
): Pick<BagView, 'weight' | 'own' | 'room'> => {
  const loads = bagReport.loads.filter((load) => load.bag === bag.name);
  const weight = word('weight', { kilograms: grams.value / 1000, spread: (grams.high - grams.low) / 2000 });
  return {
    weight: {
      words:
        bag.limitKg === undefined
          ? `${weight}, ${word('no limit')}`
          : `${weight} ${word('of limit', { limit: bag.limitKg })}`,
      isOver: loads.some(({ over }) => over.grams > 0),
    },
    own: bag.ownGrams > 0 ? say(phrase('bag', 'own weight', { own: bag.ownGrams })) : '',
    room: {
      words: say(phrase('bag', 'litres of', { litres: litres.value, room: bag.litres })),
      isOver: loads.some(({ over }) => over.litres > 0),
    },
  };
};

const nameOf = (guide: Guide, id: string): string => guide.pieces.find((piece) => piece.id === id)?.name ?? id;

const lineOf = (
  { piece, grams, fold }: PackedPiece,
  guide: Guide,
  pictures: PictureIndex,
  { formats, say }: SiteVoice,
): PackingLine => ({
  id: piece,
  name: nameOf(guide, piece),
  count: 1,
  grams: formats.grams(grams.value),
  estimated: grams.basis === 'estimated',
  cloth: pictures.cloth[piece]?.address,
  fold: say(phrase('bag', `fold ${fold}`, {})),
});

/** Every bag with its weight as a bar of cloth, and its lines in the order of packing. */
export const bagViews = (guide: Guide, pictures: PictureIndex, voice: SiteVoice): readonly BagView[] => {
  const { formats } = voice;
  return guide.packing.bags.map((packedBag, index): BagView => {
    const { bag, pieces, sundries, grams } = packedBag;
    const packed = pieces.reduce((sum, piece) => sum + piece.grams.value, 0);
    return {
      heading: bag.name,
      ...measuresOf(packedBag, guide, voice),
      bar: weightBar(
        pieces.map(({ piece, grams: each }) => ({
          grams: each.value,
          fill: guide.pieces.find(({ id }) => id === piece)?.colours[0]?.hex ?? '#888888',
          title: nameOf(guide, piece),
        })),
        Math.max(0, grams.value - packed),
        bag.limitKg,
        (kilograms) => formats.kilograms(kilograms, 0),
      ),
      lines: [
        ...pieces.map((piece) => lineOf(piece, guide, pictures, voice)),
        ...sundries.map(({ sundry, grams: each }) => ({
          id: `${index} ${sundry.name}`,
          name: sundry.name,
          count: sundry.count,
          grams: formats.grams(each.value),
          estimated: each.basis === 'estimated',
          cloth: undefined,
          fold: '',
        })),
      ],
    };
  });
};

export const packingView = (
  guide: Guide,
  pictures: PictureIndex,
  downloads: readonly Download[],
  voice: SiteVoice,
): PackingView => {
  const { word, say } = voice;
  const bags = bagViews(guide, pictures, voice);
  const lines = bags.reduce((sum, bag) => sum + bag.lines.length, 0);
  return {
    frame: frameOf({
      guide,
      voice,
      page: 'packing',
      path: 'packing/',
      title: word('packing title'),
      description: guide.brief.title,
    }),
    kick: guide.capsule.title,
    heading: word('packing title'),
    total: totalOf(guide, voice),
    verdict: verdictOf(guide, voice),
    bags,
    worn: {
      heading: word('worn in transit'),
      note: word('not in the bag'),
      weight: word('weight', {
        kilograms: guide.packing.wornGrams.value / 1000,
        spread: (guide.packing.wornGrams.high - guide.packing.wornGrams.low) / 2000,
      }),
      pieces: guide.packing.worn.map((packed) => ({
        ...lineOf(packed, guide, pictures, voice),
        image: pieceImage(packed.piece, pictures),
      })),
    },
    words: {
      toBag: say(phrase('bag', 'to the bag', {})),
      estimated: word('estimated means'),
      print: word('to print'),
      packed: word('packed'),
      reset: word('ticks reset'),
      sure: word('ticks reset sure'),
      export: word('ticks export'),
      refused: word('ticks not kept'),
    },
    notes: guide.packing.notes.map(say),
    order: say(phrase('bag', 'packing order', {})),
    papers: papersOf(downloads, voice),
    lines,
    key: guide.id,
  };
};
