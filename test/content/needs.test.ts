import { describe, expect, it } from 'vitest';
import { readBrief } from '../../lib/content/brief.ts';
import { parse } from '../../lib/content/front-matter.ts';
import { CONTRADICTORY_NEEDS, type DressCode, type Need } from '../../lib/vocabulary/index.ts';

const problemsOf = (needs: readonly Need[], dress: DressCode = 'casual', where = 'outdoors'): readonly string[] => {
  const written = [
    '---\ntitle: Graz',
    'from: 2027-10-02',
    'to: 2027-10-02',
    'travellers: [{name: Ada, wardrobe: ada}]',
    'places: [{name: Graz, from: 2027-10-02, to: 2027-10-02}]',
    'occasions:',
    `  - {what: Bath, on: 2027-10-02, at: day, dress: ${dress}, where: ${where}, activity: swimming, needs: [${needs.join(', ')}]}`,
    '---\n',
  ];
  const { problems = [] } = parse({ path: 'trips/graz/brief.md', text: written.join('\n') }, (matter) =>
    readBrief('graz', matter),
  );
  return problems.map(({ line, wrong, mend }) => `${line} ${wrong}: ${mend}`);
};

/** common practice, no source */
describe('needs of one occasion', () => {
  it.each(CONTRADICTORY_NEEDS)(
    'are refused where no look meets both, with two to write: %s and %s',
    (first, second) => {
      expect(problemsOf([second, first])).toEqual([
        `8 "Bath" asks for ${first} and for ${second}, which no look meets at once: make two occasions of it: one with needs: [${first}], and the way there with needs: [${second}]`,
      ]);
    },
  );

  it('may be what swimwear can cover', () => {
    expect(problemsOf(['swim', 'shoulders covered', 'knees covered', 'head covered', 'sun'])).toEqual([]);
  });

  it('are refused in a room where they are of the weather', () => {
    expect(problemsOf(['rain', 'long walking', 'sun'], 'casual', 'indoors 21')).toEqual([
      '8 "Bath" is indoors and asks for rain and sun: take rain and sun out of "needs", or write "where: outdoors"; the way there can be an occasion of its own',
    ]);
    expect(problemsOf(['uneven ground', 'long walking', 'head covered'], 'casual', 'indoors 21')).toEqual([]);
    expect(problemsOf(['rain', 'sun'])).toEqual([]);
  });

  it('are refused for a swim in more than casual dress', () => {
    expect(problemsOf(['swim'], 'formal')).toEqual([expect.stringContaining('asks for swim and for formal dress')]);
  });
});
