import { describe, expect, it } from 'vitest';
import { weatherSign } from '../../lib/print/days/weather.ts';
import { dayPlanPdf, wearTablePdf } from '../../lib/print/index.ts';
import { dayViews } from '../../lib/site/views/days.ts';
import { siteVoice } from '../../lib/site/voice.ts';
import { phrase } from '../../lib/words/index.ts';
import { makeGuide, OCCASIONS, PIECES } from './guide.ts';
import { bytesOf, elements, paintPage, readPdf } from './reader.ts';
import { SOURCES } from './sources.ts';

const textOf = async (made: ReturnType<typeof dayPlanPdf>): Promise<string> =>
  (await readPdf(bytesOf(await made))).pages.map(({ text }) => text).join(' ');

describe('the day plan', () => {
  const guide = makeGuide();

  it('has a line for every occasion, in order, under its day', async () => {
    const { pages } = await readPdf(bytesOf(await dayPlanPdf(guide, SOURCES)));
    const all = pages.map(({ text }) => text).join(' ');
    const places = OCCASIONS.map(({ what }) => all.indexOf(what));
    expect(places.every((at) => at >= 0)).toBe(true);
    expect([...places].sort((a, b) => a - b)).toEqual(places);
    const tags = pages.flatMap(({ structure }) => elements(structure));
    expect(tags.filter(({ role }) => role === 'H3')).toHaveLength(OCCASIONS.length);
    expect(tags.filter(({ role }) => role === 'H2')).toHaveLength(9);
  });

  it('shows the sun only while it is up', () => {
    const air = { lowC: 4, highC: 9, windMs: 2, humidityPercent: 60, source: 'test' };
    expect(weatherSign({ ...air, rainPercent: 10 }, false)).toBe('sun');
    expect(weatherSign({ ...air, rainPercent: 10 }, true)).toBe('moon');
    expect(weatherSign({ ...air, rainPercent: 70 }, true)).toBe('rain');
    // flakes are for what falls, and a dry frost is a dry day
    const frost = { ...air, lowC: -9, highC: -3 };
    expect(weatherSign({ ...frost, rainPercent: 20 }, true)).toBe('moon');
    expect(weatherSign({ ...frost, rainPercent: 70 }, true)).toBe('cold');
  });

  it('draws a look where clothes change, and says so where they do not', async () => {
    const { pages } = await readPdf(bytesOf(await dayPlanPdf(guide, SOURCES)));
    const rails = pages.flatMap(({ structure }) => elements(structure)).filter(({ role }) => role === 'Figure');
    const changes = guide.plan.days.flatMap(({ occasions }) => occasions).filter(({ change }) => change !== 'goes on');
    expect(rails).toHaveLength(changes.length);
    expect(rails[0]?.alt).toBe(
      'Drawing of the look: Herringbone wool coat, Ecru ribbed roll-neck, Charcoal wide trousers, Chestnut ankle boots, Tan leather tote and Gold hoops.',
    );
    expect(pages.map(({ text }) => text).join(' ')).toContain('Stay as you are.');
  });

  it('fills the rail by the width of the look: ink reaches both halves of it', async () => {
    const { data, width, height } = await paintPage(bytesOf(await dayPlanPdf(guide, SOURCES)), 0, 50);
    const scale = width / 210;
    const inked = (from: number, to: number): boolean => {
      for (let y = Math.round(40 * scale); y < Math.round(60 * scale); y++) {
        for (let x = Math.round(from * scale); x < Math.round(to * scale); x++) {
          if ((data[(y * width + x) * 4] ?? 255) < 200) return true;
        }
      }
      return false;
    };
    expect(height).toBeGreaterThan(0);
    expect(inked(128, 160)).toBe(true);
    expect(inked(165, 194)).toBe(true);
  });

  it('names in words what some cannot tell apart by colour, beside the rail', async () => {
    const planned = guide.plan.days.flatMap(({ occasions }) => occasions).find(({ look }) => look !== undefined)?.look;
    const [one, two] = planned?.worn.map(({ piece }) => PIECES.find(({ id }) => id === piece)) ?? [];
    if (one === undefined || two === undefined) throw new Error('no look of two pieces');
    const names = `In words: ${one.name.toLowerCase()} and ${two.name.toLowerCase()}.`;
    const unclear = guide.looks.map((shown) =>
      shown.look.id === planned?.id
        ? { ...shown, hardToTell: [{ one: one.id, two: two.id, visions: ['deuteranopia' as const] }] }
        : shown,
    );
    const plain = (text: string): string => text.replaceAll(/\s+/g, ' ');
    expect(plain(await textOf(dayPlanPdf(guide, SOURCES)))).not.toContain(names);
    expect(plain(await textOf(dayPlanPdf({ ...guide, looks: unclear }, SOURCES)))).toContain(names);
  });

  it('says which occasion has no look, and how near the pieces come, in the words of the day page', async () => {
    const [day, ...others] = guide.plan.days;
    const [first, ...rest] = day?.occasions ?? [];
    if (day === undefined || first === undefined) throw new Error('no plan');
    const { look: _, ...bare } = first;
    const lacking = {
      ...guide,
      plan: {
        ...guide.plan,
        days: [{ ...day, occasions: [bare, ...rest] }, ...others],
        unserved: [
          {
            occasion: first.occasion,
            ...(first.look === undefined ? {} : { nearest: first.look }),
            lacks: [phrase('guide', 'as written', { text: 'it has no shoes for rain' })],
            mends: [],
          },
        ],
      },
    };
    const text = (await textOf(dayPlanPdf(lacking, SOURCES))).replaceAll(/\s+/g, ' ');
    const pictures = { looks: {}, cards: {}, pieces: {}, cloth: {} };
    const [page] = dayViews(lacking, pictures, siteVoice(guide.studio))[0]?.occasions ?? [];
    expect(page?.missing[0]).toBe('No look serves this.');
    expect(page?.missing[1]).toMatch(/^The nearest is .*, but it has no shoes for rain\.$/);
    expect(text).toContain(page?.missing.join(' '));
    const german = dayViews(lacking, pictures, siteVoice({ ...guide.studio, language: 'de' }))[0]?.occasions[0];
    expect(german?.missing[0]).toBe('Dafür gibt es keinen Look.');
    expect(text).toContain('1 occasion has no look yet');
  });

  it('says a caution in full on its first day, and points back to that day on later ones', async () => {
    const caution = phrase('guide', 'as written', { text: 'Wet stones: wear shoes that grip.' });
    const days = guide.plan.days.map((day, index) => ({
      ...day,
      occasions: day.occasions.map((planned, at) =>
        at === 0 && (index === 1 || index === 3) ? { ...planned, cautions: [caution] } : { ...planned, cautions: [] },
      ),
    }));
    const text = await textOf(dayPlanPdf({ ...guide, plan: { ...guide.plan, days } }, SOURCES));
    expect(text.split('Wet stones: wear shoes that grip.')).toHaveLength(2);
    expect(text).toContain('Cautions as on 3 Oct.');
  });

  it('says what returns on many days once with its days, and marks them shortly', async () => {
    const dark = phrase('comfort', 'dark all day', {});
    const days = guide.plan.days.map((day) => ({
      ...day,
      occasions: day.occasions.map((planned, at) => ({ ...planned, cautions: at === 0 ? [dark] : [] })),
    }));
    const busy = days.filter(({ occasions }) => occasions.length > 0).length;
    const text = await textOf(dayPlanPdf({ ...guide, plan: { ...guide.plan, days } }, SOURCES));
    expect(text.split('the sun does not rise')).toHaveLength(2);
    expect(text.split('No sunrise.')).toHaveLength(busy);
    expect(text).not.toContain('Cautions as on');
  });

  it('leaves no page with a stray day: the last is at least half as full as the first', async () => {
    for (const paper of ['A4', 'Letter'] as const) {
      const { pages } = await readPdf(bytesOf(await dayPlanPdf(guide, SOURCES, { paper })));
      const headings = pages.map(({ structure }) => elements(structure).filter(({ role }) => role === 'H3').length);
      expect(headings.at(-1) ?? 0).toBeGreaterThanOrEqual((headings[0] ?? 0) / 2);
    }
  });

  it('names the sun only from index 3, as the World Health Organization advises', async () => {
    const withSun = (uvIndex: number) => ({
      ...guide,
      plan: {
        ...guide.plan,
        days: guide.plan.days.map((day) => ({
          ...day,
          occasions: day.occasions.map((planned) => ({ ...planned, uvIndex })),
        })),
      },
    });
    expect(await textOf(dayPlanPdf(withSun(2), SOURCES))).not.toContain('UV');
    expect(await textOf(dayPlanPdf(withSun(6), SOURCES))).toContain('UV 6');
  });

  it('gives degrees Fahrenheit to a studio that thinks in them', async () => {
    expect(await textOf(dayPlanPdf(makeGuide({ studio: { temperature: 'F' } }), SOURCES))).toMatch(/46\s?–\s?55\s?°F/);
  });

  it('prints a sheet for a brief without occasions', async () => {
    expect(await textOf(dayPlanPdf(makeGuide({ looks: 0 }), SOURCES))).toContain(
      'There are no occasions in this brief.',
    );
  });

  it('has no type under 7 points', async () => {
    const { pages } = await readPdf(bytesOf(await dayPlanPdf(guide, SOURCES)));
    expect(Math.min(...pages.flatMap(({ words }) => words.map(({ points }) => points)))).toBeGreaterThanOrEqual(
      7 - 1e-3,
    );
  });
});

describe('the wear table', () => {
  const guide = makeGuide();

  it.each([
    ['A4', 'portrait'],
    ['A4', 'landscape'],
    ['Letter', 'portrait'],
    ['Letter', 'landscape'],
  ] as const)(
    'is one page of %s %s with every piece and every day, nothing under 7 points',
    async (paper, orientation) => {
      const { pages } = await readPdf(bytesOf(await wearTablePdf(guide, SOURCES, { paper, orientation })));
      expect(Math.min(...(pages[0]?.words ?? []).map(({ points }) => points))).toBeGreaterThanOrEqual(7 - 1e-3);
      expect(pages).toHaveLength(1);
      const plain = pages[0]?.text.replaceAll(/[\s-]/g, '') ?? '';
      for (const { name } of PIECES) expect(plain).toContain(name.replaceAll(/[\s-]/g, ''));
      const rows = elements(pages[0]?.structure).filter(({ role }) => role === 'TR');
      expect(rows).toHaveLength(1 + 4 + PIECES.length + 1);
    },
  );

  it('marks a wash day only where something is washed', async () => {
    expect(await textOf(wearTablePdf(guide, SOURCES))).toContain('wash that night');
    const days = guide.plan.days.map((day) => ({ ...day, wash: [] }));
    const unwashed = { ...guide, plan: { ...guide.plan, days } };
    expect(await textOf(wearTablePdf(unwashed, SOURCES))).not.toContain('wash that night');
  });

  it('counts what the plan wears on each day, and the grams a wearing costs', async () => {
    const { pages } = await readPdf(bytesOf(await wearTablePdf(guide, SOURCES)));
    const words = pages[0]?.words ?? [];
    const coat = words.find(({ text }) => text.startsWith('Herringbone'));
    const line = words
      .filter(({ y, x }) => Math.abs(y - (coat?.y ?? 0)) < 1.5 && x > 300)
      .map(({ text }) => text.trim());
    const times = guide.plan.wears.coat ?? 0;
    expect(line).toEqual([String(times), String(Math.round(1450 / times))]);
    const day = guide.plan.days[1];
    const used = new Set((day?.occasions ?? []).flatMap(({ look }) => look?.worn.map(({ piece }) => piece) ?? []));
    const totals = words.filter(
      ({ y }) => Math.abs(y - (words.find(({ text }) => text.startsWith('pieces used'))?.y ?? 0)) < 1.5,
    );
    expect(totals.map(({ text }) => text.trim())[2]).toBe(String(used.size));
  });

  it('tells what is worn in the evening only from what is worn by day', async () => {
    const { pages } = await readPdf(bytesOf(await wearTablePdf(guide, SOURCES)));
    const alts = elements(pages[0]?.structure).flatMap(({ role, alt }) => (role === 'Figure' ? [alt] : []));
    expect(alts).toContain('worn by day');
    expect(alts).toContain('evening only');
    const text = pages[0]?.text ?? '';
    for (const sign of ['worn by day', 'evening only', 'taken along, not worn'])
      expect(text, 'in the key').toContain(sign);
  });

  it('holds fifty pieces on one page, and goes on to another with two hundred', async () => {
    const many = (count: number) =>
      Array.from({ length: count }, (_, index) => {
        const base = PIECES[index % PIECES.length];
        if (base === undefined) throw new Error('no pieces');
        return index < PIECES.length ? base : { ...base, id: `${base.id}-${index}` };
      });
    expect((await wearTablePdf(makeGuide({ pieces: many(50) }), SOURCES)).pages).toBe(1);
    const long = await wearTablePdf(makeGuide({ pieces: many(200) }), SOURCES);
    expect(long.pages).toBeGreaterThan(1);
    expect(long.findings.map(({ rule }) => rule)).toEqual(['print-table-pages']);
  });

  it('prints a sheet that says so when there are no pieces', async () => {
    expect(await textOf(wearTablePdf(makeGuide({ pieces: [], looks: 0 }), SOURCES))).toContain(
      'The capsule has no pieces yet.',
    );
  });
});
