import { briefFor, type Content, wardrobeOn } from '../content/index.ts';
import type { Solver } from '../plan/index.ts';
import { buildGuide, type GuideQuestion } from './build.ts';
import type { Guide } from './record.ts';

/** The guides of every capsule of a content folder, or of one trip, in order. */
export const buildGuides = async (
  content: Content,
  solver: Solver,
  options: {
    readonly trip?: string;
    readonly onGuide?: (done: number, of: number, guide: Pick<GuideQuestion, 'brief' | 'capsule'>) => void;
    /** Gives a guide that was computed before from the same question, or computes it. */
    readonly keep?: (question: Omit<GuideQuestion, 'solver'>, compute: () => Promise<Guide>) => Promise<Guide>;
  } = {},
): Promise<readonly Guide[]> => {
  const wanted = content.trips
    .filter(({ brief }) => options.trip === undefined || brief.id === options.trip)
    .flatMap(({ brief, capsules }) =>
      capsules.map((capsule) => ({ brief: briefFor(brief, capsule.traveller), capsule })),
    );
  const guides: Guide[] = [];
  for (const { brief, capsule } of wanted) {
    options.onGuide?.(guides.length + 1, wanted.length, { brief, capsule });
    const question = {
      studio: content.studio,
      houseRules: content.houseRules,
      brief,
      capsule,
      wardrobe: wardrobeOn(content.wardrobes, brief, capsule),
      sundries: content.sundries,
      list: content.lists.find(({ id }) => id === capsule.list),
    };
    const compute = (): Promise<Guide> => buildGuide({ ...question, solver });
    guides.push(await (options.keep === undefined ? compute() : options.keep(question, compute)));
  }
  return guides;
};
