import type { Bag, Brief } from '../model/index.ts';

/** What each of those who share a bag may put in it: an equal part of its room, its limit and its own weight. */
const shareOf = (bag: Bag, of: number): Bag => ({
  ...bag,
  litres: bag.litres / of,
  ownGrams: bag.ownGrams / of,
  ...(bag.limitKg === undefined ? {} : { limitKg: bag.limitKg / of }),
});

/** The brief as one traveller packs for it: bags of their own, and their shares of those that are packed together. */
export const briefToPack = (brief: Brief, traveller: string): Brief => ({
  ...brief,
  bags: brief.bags.flatMap((bag) => {
    if (bag.traveller !== undefined) return bag.traveller === traveller ? [bag] : [];
    if (bag.sharedBy === undefined) return [bag];
    return bag.sharedBy.includes(traveller) ? [shareOf(bag, bag.sharedBy.length)] : [];
  }),
});
