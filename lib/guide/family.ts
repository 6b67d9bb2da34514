import {
  type CombinedMoods,
  combineMoods,
  compareMoods,
  type Mood,
  type MoodComparison,
  type Together,
  travelTogether,
} from '../capsule/index.ts';
import type { HouseRuleSettings, PackingListPlan } from '../model/index.ts';
import type { Guide } from './record.ts';

/** Two moods of one traveller side by side, and in one bag. */
export interface MoodPair {
  /** Capsule ids. */
  readonly of: readonly [string, string];
  readonly comparison: MoodComparison;
  readonly combined: CombinedMoods;
}

/** Travellers of one trip side by side, each in one capsule. */
export interface Party {
  /** Capsule ids, one a traveller. */
  readonly of: readonly string[];
  readonly together: Together;
}

/** What the guides of one trip say about one another. */
export interface Family {
  /** Every two capsules of one wardrobe, in the order of the guides. */
  readonly moods: readonly MoodPair[];
  /** The party of every capsule, each once; empty when only one person travels. */
  readonly parties: readonly Party[];
}

/** True when both are filled from the same wardrobe, and so for the same person. */
export const areMoods = (a: Pick<Mood, 'capsule'>, b: Pick<Mood, 'capsule'>): boolean =>
  a.capsule.wardrobe === b.capsule.wardrobe;

/** The list on which two capsules are compared: the first one's, as far as both are of one. */
export const moodPair = (
  a: Mood,
  b: Mood,
  lists: readonly PackingListPlan[],
  houseRules: HouseRuleSettings,
): MoodPair => ({
  of: [a.capsule.id, b.capsule.id],
  comparison: compareMoods(
    a,
    b,
    lists.find(({ id }) => id === a.capsule.list),
  ),
  combined: combineMoods(a, b, houseRules),
});

/** One guide a traveller, in their order: this guide, and the first of everybody else. */
export const companionsOf = (guide: Guide, guides: readonly Guide[]): readonly Guide[] => {
  const seen = new Set<string>();
  return guides
    .filter(({ capsule }) => !seen.has(capsule.traveller) && seen.add(capsule.traveller))
    .map((first) => (first.capsule.traveller === guide.capsule.traveller ? guide : first));
};

/** The party that a capsule's page shows; undefined where one travels alone. */
export const partyOf = (guide: Guide, guides: readonly Guide[], { parties }: Family): Together | undefined => {
  const ids = companionsOf(guide, guides).map(({ capsule }) => capsule.id);
  return parties.find(({ of }) => of.join('/') === ids.join('/'))?.together;
};

/** The travellers of these guides, one guide each, on their common trip. */
export const guidesTogether = (guides: readonly Guide[], houseRules: HouseRuleSettings): Together | undefined => {
  const [first] = guides;
  if (first === undefined || guides.length < 2) return undefined;
  return travelTogether(
    first.brief,
    guides.map(({ capsule, pieces, plan, packing }) => ({
      name: capsule.traveller,
      pieces,
      plan,
      packing,
      rules: { ...houseRules, ...capsule.rules },
      never: capsule.never,
      always: capsule.always,
    })),
  );
};

/** Computes what the guides of one trip say about one another. */
export const familyOf = (
  guides: readonly Guide[],
  lists: readonly PackingListPlan[],
  houseRules: HouseRuleSettings,
): Family => {
  const parties = new Map(
    guides.map((guide) => {
      const party = companionsOf(guide, guides);
      return [party.map(({ id }) => id).join(), party] as const;
    }),
  );
  return {
    moods: guides.flatMap((a, index) =>
      guides
        .slice(index + 1)
        .filter((b) => areMoods(a, b))
        .map((b) => moodPair(a, b, lists, houseRules)),
    ),
    parties: [...parties.values()].flatMap((party): readonly Party[] => {
      const together = guidesTogether(party, houseRules);
      return together === undefined ? [] : [{ of: party.map(({ capsule }) => capsule.id), together }];
    }),
  };
};
