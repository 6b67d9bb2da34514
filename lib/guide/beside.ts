import type { Improvements } from '../capsule/index.ts';
import { type Content, wardrobeOn } from '../content/index.ts';
import { improveGuide } from './better.ts';
import { type Family, familyOf } from './family.ts';
import type { Guide } from './record.ts';

/** What stands beside the guides: what those of one trip say about one another, and how each could be better. */
export interface Beside {
  /** By trip. */
  readonly families: ReadonlyMap<string, Family>;
  /** By guide; empty unless it was asked for. */
  readonly improvements: ReadonlyMap<string, Improvements>;
}

/** Gives what was computed before from the same question, or computes it. */
export type Keep = <T>(what: string, question: unknown, compute: () => T) => Promise<T>;

const computeAlways: Keep = async (_what, _question, compute) => compute();

/** What a guide is computed from, without what other trips are made of. */
const sourcesOf = ({ studio, houseRules, lists, sundries, wardrobes }: Content, guides: readonly Guide[]) => ({
  studio,
  houseRules,
  lists,
  sundries,
  of: guides.map(({ brief, capsule }) => ({ brief, capsule, wardrobe: wardrobes.get(capsule.wardrobe) ?? [] })),
});

/** Computes what stands beside the guides of a content folder. */
export const besideGuides = async (
  guides: readonly Guide[],
  content: Content,
  options: { readonly improve: boolean; readonly keep?: Keep },
): Promise<Beside> => {
  const { keep = computeAlways } = options;
  const { lists, houseRules, wardrobes } = content;
  const families = new Map<string, Family>();
  for (const trip of new Set(guides.map(({ brief }) => brief.id))) {
    const ofTrip = guides.filter(({ brief }) => brief.id === trip);
    const compute = (): Family => familyOf(ofTrip, lists, houseRules);
    families.set(trip, ofTrip.length < 2 ? compute() : await keep('family', sourcesOf(content, ofTrip), compute));
  }
  const improvements = new Map<string, Improvements>();
  for (const guide of options.improve ? guides : []) {
    const { brief, capsule } = guide;
    const list = lists.find(({ id }) => id === capsule.list);
    const question = { wardrobe: wardrobeOn(wardrobes, brief, capsule), list, houseRules };
    const compute = (): Improvements => improveGuide(guide, question);
    improvements.set(guide.id, await keep('improvements', sourcesOf(content, [guide]), compute));
  }
  return { families, improvements };
};
