import { expect, test } from 'vitest';
import { SyntheticYears } from '../../../src/home/weather/synthetic-years';
import { MONTH_DAYS, MONTH_START } from '../../../src/physics/weather/calendar';
import { houseYear } from '../../../src/plan/money/house-year';
import { sayUse } from '../../../src/words/en/money/say-use';
import { planOf } from '../../households/read-household';

const { home } = planOf('mill-lane');
const drawn = new SyntheticYears(home, 5);
const winterKwh = (loadKwh: Float64Array) => {
  const days = Array.from({ length: 365 }, (_, day) => day).filter((d) => d < 59 || d >= 334);
  const sum = days.reduce(
    (total, day) => total + loadKwh.slice(day * 24, day * 24 + 24).reduce((a, b) => a + b, 0),
    0,
  );
  return sum / days.length;
};

test('a year of hours uses in the season of the bill what the bill shows: 300 kWh in 30.4 days', () => {
  const { loadKwh } = houseYear(home, drawn, false);
  expect(loadKwh).toHaveLength(8760);
  expect(winterKwh(loadKwh)).toBeCloseTo(300 / (365 / 12), 6);
});

test('loads over the bill are brought down to it, and it is said', () => {
  const low = planOf('mill-lane', { 'bill-kwh': 60 }).home;
  const { loadKwh, use } = houseYear(low, new SyntheticYears(low, 5), false);
  expect(winterKwh(loadKwh)).toBeCloseTo(60 / (365 / 12), 6);
  expect(use.code).toBe('brought-down');
  expect(sayUse({ use, peaks: null })).toContain('brought down');
});

test('without a bill the loads named are counted, and it is said', () => {
  const none = planOf('mill-lane', { 'bill-kwh': 'not sure' }).home;
  const { use } = houseYear(none, new SyntheticYears(none, 5), false);
  expect(sayUse({ use, peaks: null })).toContain('no bill');
});

test('with twelve bills every month of the year comes to its own, loads named or not', () => {
  const months = [300, 280, 260, 240, 20, 220, 250, 260, 230, 220, 250, 310];
  const year = { 'bill-year-known': 'yes', 'bill-year-kwh': months };
  const twelve = planOf('mill-lane', year).home;
  const { loadKwh, use } = houseYear(twelve, new SyntheticYears(twelve, 5), false);
  for (const [month, days] of MONTH_DAYS.entries()) {
    const from = MONTH_START[month]! * 24;
    const kwh = loadKwh.subarray(from, from + days * 24).reduce((a, b) => a + b, 0);
    expect(kwh).toBeCloseTo(months[month]!, 6);
  }
  expect(sayUse({ use, peaks: null })).toContain('each month as on its own bill');
  expect(sayUse({ use, peaks: null })).toContain('In May the loads named were more');
  expect(Math.min(...loadKwh)).toBeGreaterThanOrEqual(0);
});
