import { describe, expect, it } from 'vitest';
import { daysView, dayViews } from '../../lib/site/views/days.ts';
import { siteVoice } from '../../lib/site/voice.ts';
import { makeGuide } from '../print/guide.ts';

const PICTURES = { looks: {}, cards: {}, pieces: {}, cloth: {} };
const guide = makeGuide();
const voice = siteVoice(guide.studio);
const nameOf = (id: string): string => guide.pieces.find((piece) => piece.id === id)?.name ?? id;
const planned = guide.plan.days.flatMap(({ occasions }) => occasions);
const views = dayViews(guide, PICTURES, voice).flatMap(({ occasions }) => occasions);

describe('the page of days', () => {
  it('names every look alike, by its number', () => {
    const looks = views.filter(({ tile }) => tile !== undefined);
    expect(looks.length).toBeGreaterThan(2);
    for (const { look, tile } of looks) expect(look).toBe(`Look ${tile?.number}`);
  });

  it('says which layers are on, as the paper does, and the air of the hour out of doors alone', () => {
    let layered = 0;
    views.forEach(({ layersOn, air }, index) => {
      const { layersOn: on = [], occasion: id, airC } = planned[index] ?? {};
      for (const piece of on) expect(layersOn).toContain(nameOf(piece));
      layered += on.length;
      const { setting } = guide.brief.occasions.find((occasion) => occasion.id === id) ?? {};
      if (setting?.where === 'indoors' || airC === undefined) expect(air).toBe('');
      else if (air !== '') expect(air).toContain(String(Math.round(airC.low)));
    });
    expect(layered).toBeGreaterThan(0);
  });

  it('tells on the day of a journey what travels damp', () => {
    const [piece] = guide.pieces;
    const journey = guide.brief.occasions.find(
      ({ id, transit, on }) => transit && on > guide.brief.from && planned.some(({ occasion }) => occasion === id),
    );
    if (piece === undefined || journey === undefined) throw new Error('the guide has no journey after its first day');
    const wash = [{ piece: piece.id, dryBy: journey.on, dryAt: '23:00' }];
    const days = guide.plan.days.map((day, index) => ({ ...day, wash: index === 0 ? wash : [] }));
    const damp = daysView({ ...guide, plan: { ...guide.plan, days } }, PICTURES, voice).days.filter(
      (day) => day.damp.length > 0,
    );
    expect(damp.map(({ date }) => date)).toEqual([journey.on]);
    expect(damp[0]?.damp.join(' ')).toMatch(new RegExp(`${piece.name}.*bag of its own`, 'u'));
  });
});
