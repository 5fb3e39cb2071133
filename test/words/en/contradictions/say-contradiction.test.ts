import { expect, test } from 'vitest';
import type { Mismatch } from '../../../../src/plan/contradictions/contradiction';
import { sayContradiction } from '../../../../src/words/en/contradictions/say-contradiction';
import { sayTariff } from '../../../../src/words/en/money/say-tariff';
import { readingGrade } from '../../../interview/reading-grade';
import { answeredHome } from '../../../rules/some-home';

/** One of each, with figures that stand nowhere else. A new one without an example here does not compile. */
const examples: Readonly<Record<Mismatch['id'], Mismatch>> = {
  'gas-heat-without-gas': { id: 'gas-heat-without-gas' },
  'interlock-without-main': { id: 'interlock-without-main' },
  'inlet-without-switch': { id: 'inlet-without-switch' },
  'life-without-second-way': { id: 'life-without-second-way' },
  'nobody-for-engine': { id: 'nobody-for-engine' },
  'battery-below-flood': { id: 'battery-below-flood' },
  'must-run-over-bill': { id: 'must-run-over-bill', mustKwhPerDay: 31.7, billKwhPerDay: 13.9 },
  'month-outside-year': { id: 'month-outside-year', monthKwh: 77, leastKwh: 311, mostKwh: 823 },
  'cheap-hours-at-peak': { id: 'cheap-hours-at-peak', peak: [16, 21], cheap: [0, 17] },
  'bill-not-matched': {
    id: 'bill-not-matched',
    dollars: 267,
    ownTariff: false,
    fit: {
      fits: false,
      expected: { low: 59, high: 122 },
      printed: { kwh: 313, dollars: 267, days: 30 },
      lookAt: { code: 'more-lines', missingDollars: 145 },
    },
  },
  'goal-beyond-fuel': { id: 'goal-beyond-fuel', goalHours: 19, gallons: 3, fuelHours: 7.4 },
  'must-run-at-240': { id: 'must-run-at-240', loads: [{ code: 'well-pump' }] },
  'deep-pump-at-120': { id: 'deep-pump-at-120', depthFt: 353 },
  'pump-volts-amps': { id: 'pump-volts-amps', hp: 2, volts: 240, tableAmps: 10, amps: 33 },
  'start-below-run': { id: 'start-below-run', motor: 'heat-pump', runAmps: 27, startAmps: 13 },
  'over-outlet': { id: 'over-outlet', device: 'other-medical', watts: 2300, outletWatts: 1800 },
  'charger-on-small-service': { id: 'charger-on-small-service', chargerAmps: 50, mainAmps: 60 },
  'main-over-bus': { id: 'main-over-bus', mainAmps: 200, busAmps: 125 },
  'normal-life-small-budget': { id: 'normal-life-small-budget', dollars: 650 },
  'apartment-with': { id: 'apartment-with', what: 'well' },
  'roof-over-home': { id: 'roof-over-home', roofSqFt: 3111, homeSqFt: 977 },
};

test('every example is of its own kind', () => {
  expect(Object.values(examples).map(({ id }) => id)).toEqual(Object.keys(examples));
});

test.each(Object.values(examples))('$id names both answers as given, and asks', (example) => {
  const { answers, asks } = sayContradiction(example);
  for (const answer of answers) expect(answer).toMatch(/^[A-Za-z\d].*\.$/);
  expect(asks).toMatch(/[.?]$/);
  const said = [...answers, asks].join(' ');
  expect(said).not.toMatch(/undefined|NaN|\[object|\bengine\b/i);
  const { fit: _, ...figures } = { fit: null, ...example };
  for (const [unit, figure] of Object.entries(figures)) {
    if (typeof figure !== 'number' || unit === 'fuelHours') continue;
    expect(said.replaceAll(',', ''), unit).toContain(`${figure}`);
  }
});

test('all of them together have a reading grade of 7 or lower', () => {
  const said = Object.values(examples).map((one) => sayContradiction(one));
  const text = said.flatMap(({ answers, asks }) => [...answers, asks]).join(' ');
  expect(readingGrade(text)).toBeLessThanOrEqual(7);
});

test('clock hours are said as a household says them', () => {
  const { answers } = sayContradiction(examples['cheap-hours-at-peak']);
  expect(answers).toEqual([
    'Power is dearest from 4 pm to 9 pm.',
    'Power is cheapest from midnight to 5 pm.',
  ]);
});

test('prices told that do not fit together are said with what is wrong, beside the average taken', () => {
  const home = answeredHome({});
  const problem = {
    code: 'no-period-covers',
    season: 'summer',
    hour: 3,
    weekend: true,
  } as const;
  const price = home.goalHours;
  const said = sayTariff(home, {
    tariff: { name: 'average', fixed: {}, seasons: [], export: { rule: 'none' } },
    told: false,
    from: { code: 'state-average', price: { ...price, value: 0.171 }, problem },
  });
  expect(said).toContain(
    'The prices told do not fit together: season "summer": no period covers 3:00 to 4:00 on weekends. Give that time a price. You told us no price, so we count 17.1 cents',
  );
});
