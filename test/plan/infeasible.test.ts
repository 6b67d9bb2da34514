import { describe, expect, it } from 'vitest';
import { run } from '../cli/run.ts';
import { type Written, withContent } from './written.ts';

const WARDROBE: Written['wardrobe'] = {
  shirt: ['shirt', 'white', 'wears: 1'],
  jumper: ['crew-neck jumper', 'grey'],
  chinos: ['chinos', 'stone'],
  coat: ['wool coat', 'grey'],
  boots: ['lace-up boots', 'brown', 'dress: casual to smart casual'],
  swimsuit: ['swimsuit', 'navy', 'care: {wash: 30, dry hours: 12}'],
};
const WINTER: Written['wardrobe'] = {
  rollneck: ['roll-neck', 'grey'],
  fleece: ['fleece jacket', 'grey'],
  trousers: ['corduroy trousers', 'brown'],
  leggings: ['thermal leggings', 'black'],
  down: ['down jacket', 'navy'],
  boots: ['snow boots', 'black'],
  beanie: ['beanie', 'grey'],
  gloves: ['gloves', 'grey'],
};
const CAPSULE = ['title: Plain', 'pieces: [shirt, jumper, chinos, coat, boots, swimsuit]'];
const MILD = 'weather: {low: 8, high: 18}';
const OUTDOORS = 'dress: casual, where: outdoors, activity: walking';
const INDOORS = 'dress: casual, where: indoors 21, activity: strolling indoors';

/** A brief of three days at one place. */
const brief = (place: string, occasions: readonly string[], more: readonly string[] = []): readonly string[] => [
  'title: Three days',
  'from: 2027-12-18',
  'to: 2027-12-20',
  'travellers: [{name: Ada, wardrobe: ada}]',
  `places: [{name: Here, from: 2027-12-18, to: 2027-12-20, ${place}}]`,
  'occasions:',
  ...occasions.map((occasion) => `  - {${occasion}}`),
  ...more,
];

/** What `check` and `plan` say, as a stylist would see it. */
const told = (
  lines: readonly string[],
): Promise<{ readonly check: string; readonly plan: string; readonly codes: readonly number[] }> =>
  withContent({ wardrobe: WARDROBE, brief: lines, capsule: CAPSULE }, async (folder) => {
    const check = await run(['check', '--content', folder]);
    const plan = await run(['plan', 'trip/plain', '--content', folder]);
    return { check: check.out + check.err, plan: plan.out + plan.err, codes: [check.code, plan.code] };
  });

const BRIEF = 'trips/trip/brief.md';
const NO_STACK = /\bat .*\.ts:\d/;

describe('trips that cannot be as they are written, from file to message', () => {
  it('−40 °C: no travel look serves, and what to do', async () => {
    const { check, plan, codes } = await told(
      brief('weather: {low: -40, high: -35}', [`what: Ice walk, on: 2027-12-19, at: day, ${OUTDOORS}`]),
    );
    expect(codes).toEqual([1, 1]);
    expect(check).toContain(`error [too-cold-for-clothes] “Ice walk” may be as cold as`);
    expect(check).toContain('no travel look serves');
    expect(check).toContain('make it short, with breaks indoors, in cold-weather clothing hired there');
    // what is out of doors for its own sake is not moved indoors
    expect(check).not.toContain('Move it indoors');
    expect(check).toContain(`(${BRIEF}:8)`);
    expect(plan).toContain('0 of 1 occasion has its look. No plan with these pieces serves more.');
    expect(plan).toMatch(/At -3\d°C no clothes in a travel bag are enough\. Stay indoors/);
    expect(plan).not.toMatch(NO_STACK);
    // no degree off comfortable and no piece of this wardrobe would do
    expect(plan).not.toMatch(/Accept “Ice walk”/);
  });

  it('standing in hard frost: no other piece is asked for, but what helps', async () => {
    const lights = (low: number, wardrobe: Written['wardrobe']) =>
      withContent(
        {
          wardrobe: { ...WINTER, ...wardrobe },
          brief: brief(`weather: {low: ${low}, high: ${low + 4}}`, [
            'what: Northern lights, on: 2027-12-19, at: evening, dress: casual, where: outdoors, activity: standing',
          ]),
          capsule: ['title: Winter', `pieces: [${Object.keys({ ...WINTER, ...wardrobe }).join(', ')}]`],
        },
        async (folder) => {
          const check = await run(['check', '--content', folder]);
          const plan = await run(['plan', 'trip/plain', '--content', folder]);
          return check.out + check.err + plan.out + plan.err;
        },
      );
    const cold = await lights(-12, {});
    expect(cold).toMatch(/\[too-cold-for-clothes\] “Northern lights” may be as cold as -\d+°C: no travel look serves/);
    expect(cold).toContain(
      'Make it shorter, with breaks indoors, and keep moving; or buy or hire clothing made for such cold.',
    );
    expect(cold).toMatch(/At -\d+°C no clothes in a travel bag are warm enough for standing\./);
    // the client is told how near her clothes come, in her plan and not only among the findings
    expect(cold).toMatch(
      /Northern lights\n +No look serves this\.\n +The nearest is .*, but it is not warm enough for standing/,
    );
    expect(cold).toMatch(/The warmth of \w+ is only estimated: .* writing that as “clo” in its file may help/);
    expect(cold).not.toContain('choose another piece');
    expect(cold).not.toContain('Accept “Northern lights”');
    // where the brief could be lenient, moving about is said beside it
    const mild = await lights(2, {});
    expect(mild).toMatch(/Accept “Northern lights” \d degrees/);
    expect(mild).toContain('No piece of the wardrobe is warm enough. Make it shorter, with breaks indoors');
    // what a stylist hires, with its insulation written down, is worn
    const hired = await lights(-12, { suit: ['parka', 'red', 'clo: 2.2'] });
    expect(hired).not.toContain('too-cold-for-clothes');
    expect(hired).toMatch(/Northern lights[\s\S]*suit/);
  });

  it('polar night: no sun where sun is asked for', async () => {
    const { check, plan } = await told(
      brief('at: [69.65, 18.96], time zone: Europe/Oslo, weather: {low: -4, high: 0}', [
        `what: Town walk, on: 2027-12-19, at: day, ${OUTDOORS}, needs: [sun]`,
      ]),
    );
    expect(check).toContain('warning [no-sun] The sun does not rise in Here on the day of “Town walk”');
    expect(check).toContain('plan for darkness and ice instead');
    expect(plan).not.toContain('UV index');
    // nothing against the sun is asked of a look in the dark, and the client is told of the dark
    expect(plan).not.toContain('strong sun');
    expect(plan).toMatch(/the sun does not rise: .*reflective/i);
    // what falls at -4 to 0 °C is snow
    expect(plan).not.toContain('If it rains');
    const inSun = await told(
      brief('at: [69.65, 18.96], time zone: Europe/Oslo, weather: {low: -4, high: 0}', [
        'what: Town walk, on: 2027-12-19, at: day, dress: casual, where: outdoors sun, activity: walking',
      ]),
    );
    expect(inSun.check).toContain('warning [no-sun] The sun does not rise in Here on the day of “Town walk”');
    expect(inSun.check).toContain('Write “where: outdoors shade”');
  });

  it('a swim in the cold: what stands against it, to the stylist and to the client', async () => {
    const swim = 'dress: casual, where: outdoors, activity: swimming, needs: [swim]';
    const { check, plan } = await told(
      brief('weather: {low: -8, high: -4}', [`what: Fjord swim, on: 2027-12-19, at: day, ${swim}`]),
    );
    expect(check).toMatch(/warning \[cold-swim\] “Fjord swim” is a swim in the open in air of -\d+°C/);
    expect(check).toContain('only where lifeguards watch over it');
    expect(plan).toMatch(/open water will be cold/);
    expect(plan).not.toContain('Keep head, hands and feet covered');
    const june = await told(
      brief('weather: {low: 20, high: 27}', [`what: Lake swim, on: 2027-12-19, at: day, ${swim}`]),
    );
    expect(june.check).not.toContain('cold-swim');
  });

  it('an occasion outside the trip', async () => {
    const { check, plan, codes } = await told(brief(MILD, [`what: Opera, on: 2027-12-28, at: evening, ${INDOORS}`]));
    expect(codes).toEqual([1, 1]);
    for (const text of [check, plan]) {
      expect(text).toContain(`${BRIEF}:8: "Opera" is on 2027-12-28, outside the trip`);
      expect(text).toContain('write a date between 2027-12-18 and 2027-12-20');
    }
  });

  it('two at one hour, by the clock and by the part of the day', async () => {
    const byClock = await told(
      brief(MILD, [
        `what: Museum, on: 2027-12-19, at: "10:00", ${INDOORS}`,
        `what: Market, on: 2027-12-19, at: "10:00", ${OUTDOORS}`,
      ]),
    );
    expect(byClock.check).toContain(`${BRIEF}:9: "Market" is at the same time as "Museum" for Ada`);
    const byPart = await told(
      brief(MILD, [
        `what: Museum, on: 2027-12-19, at: morning, ${INDOORS}`,
        `what: Market, on: 2027-12-19, at: morning, ${OUTDOORS}`,
      ]),
    );
    expect(byPart.check).toContain('error [two-at-one-hour] “Museum” and “Market” are at the same hour');
    expect(byPart.check).toContain('Give one of them another hour');
  });

  it('contradictory needs stop every verb, with what would be right', async () => {
    const { check, plan, codes } = await told(
      brief(MILD, [`what: Sea swim, on: 2027-12-19, at: day, ${INDOORS}, needs: [swim, uneven ground]`]),
    );
    expect(codes).toEqual([1, 1]);
    for (const said of [check, plan]) {
      expect(said).toContain(`${BRIEF}:8: "Sea swim" asks for swim and for uneven ground, which no look meets at once`);
      expect(said).toContain('make two occasions of it: one with needs: [swim]');
    }
  });

  it('cover that the swimwear packed does not give', async () => {
    const { check, plan, codes } = await told(
      brief(MILD, [`what: Chapel pool, on: 2027-12-19, at: day, ${INDOORS}, needs: [swim, knees covered]`]),
    );
    expect(codes).toEqual([1, 1]);
    expect(check).toContain('but it leaves the knees bare');
    expect(plan).toContain('No look serves “Chapel pool”');
    expect(plan).toContain('take knees covered out of “needs”');
  });

  it('a wash day with no drying time before the last occasion', async () => {
    const { check, plan } = await told(
      brief(
        MILD,
        [
          `what: Museum, on: 2027-12-18, at: day, ${INDOORS}`,
          'what: Train, on: 2027-12-19, at: "06:30", dress: casual, where: indoors 21, activity: travelling, transit: true',
        ],
        ['wash days: [2027-12-18]'],
      ),
    );
    for (const said of [check, plan]) {
      expect(said).toMatch(
        /warning \[wash-day\] Nothing washed on Saturday 18 December and hung up at 22:00 is dry for “Train” \(19 Dec, 6:30\).*: chinos, the quickest, takes until 19 Dec, 23:00\. \(trips\/trip\/brief\.md:10\)/,
      );
      expect(said).toContain('Take the wash day out.');
    }
  });

  it('no weather: a finding, and not a guess', async () => {
    const { check, plan } = await told(brief('at: [48.2, 16.4]', [`what: Walk, on: 2027-12-19, at: day, ${OUTDOORS}`]));
    expect(check).toContain('warning [missing-weather] There is no weather for “Walk” in Here');
    expect(check).toContain('add its month to the table of normals');
    expect(plan).toContain('The one occasion has its look.');
  });

  it('an empty trip', async () => {
    const { plan, codes } = await told(brief(MILD, []).filter((line) => line !== 'occasions:'));
    expect(codes[1]).toBe(0);
    expect(plan).toContain('There is no occasion to dress for.');
  });
});
