import path from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { type Content, readContent } from '../../lib/content/index.ts';
import { buildGuides, companionsOf, familyOf, type Guide, partyOf } from '../../lib/guide/index.ts';
import { togetherView } from '../../lib/site/views/together.ts';
import { siteVoice } from '../../lib/site/voice.ts';
import { loadSolver } from '../../lib/solver/index.ts';

const CONTENT = path.join(import.meta.dirname, '..', '..', 'content');
const NO_PICTURES = { looks: {}, cards: {}, pieces: {}, cloth: {}, scales: {} };

let content: Content;
let jonas: Guide;
let livia: Guide;
/** A second capsule of Jonas. */
let again: Guide;
beforeAll(async () => {
  const read = await readContent(CONTENT);
  if (read.content === undefined) throw new Error(JSON.stringify(read.problems));
  content = read.content;
  const [one, two] = await buildGuides(content, await loadSolver(), { trip: 'wedding-in-the-alentejo' });
  if (one === undefined || two === undefined) throw new Error('the trip has two capsules');
  jonas = one;
  livia = two;
  const capsule = { ...jonas.capsule, id: 'again', title: 'Again' };
  again = { ...jonas, id: `${jonas.brief.id}/again`, capsule };
}, 300_000);

describe('the travellers’ page of a capsule', () => {
  it('has that capsule, and the first of everybody else', () => {
    const guides = [jonas, again, livia];
    const idsOf = (guide: Guide): readonly string[] => companionsOf(guide, guides).map(({ capsule }) => capsule.id);
    expect(idsOf(jonas)).toEqual(['linen-and-ink', 'terracotta-and-sage']);
    expect(idsOf(again)).toEqual(['again', 'terracotta-and-sage']);
    expect(idsOf(livia)).toEqual(['linen-and-ink', 'terracotta-and-sage']);
  });

  it('links to looks of that capsule, never of another of the same person', () => {
    const guides = [jonas, again, livia];
    const family = familyOf(guides, content.lists, content.houseRules);
    expect(family.parties.map(({ of }) => of)).toEqual([
      ['linen-and-ink', 'terracotta-and-sage'],
      ['again', 'terracotta-and-sage'],
    ]);
    const members = companionsOf(again, guides).map((guide) => ({ guide, pictures: NO_PICTURES }));
    const view = togetherView(again, members, partyOf(again, guides, family), siteVoice(content.studio));
    const links = view?.days.flatMap(({ occasions }) =>
      occasions.flatMap(({ looks }) => looks.map(({ href }) => href)),
    );
    expect(links).toHaveLength(16);
    for (const link of links ?? []) expect(link).toMatch(/^(looks|\.\.\/terracotta-and-sage\/looks)\//);
    expect(view?.lede).toContain('“Again” for Jonas');
  });

  it('is not there for one who travels alone', () => {
    expect(familyOf([jonas, again], content.lists, content.houseRules).parties).toEqual([]);
  });
});
