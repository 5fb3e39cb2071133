import { describe, expect, test } from 'vitest';
import { planOf } from './read-household';

/**
 * A home whose sums are done by hand, from the label of its sump pump (4 A at 115 V) and the table's likely values:
 * refrigerator 150 W, power factor 0.85, start 1,000 VA, 1.5 kWh a day; internet 20 W, 0.65; lights 70 W, 0.8, six hours
 * in winter; phones 10 W, 0.55, three hours.
 */
describe('mill-lane, added up by hand', () => {
  const { must } = planOf('mill-lane').home.demand;

  test('running power is the plain sum of the loads', () => {
    const sump = 4 * 110; // A x 115 V x power factor 0.957, as the pump is taken
    expect(must.runningWatts.value).toBeCloseTo(150 + sump + 20 + 70 + 10, 6);
  });

  test('the hardest moment is all running, the sump pump starting, the refrigerator starting too', () => {
    const running = 150 / 0.85 + 440 / 0.8 + 20 / 0.65 + 70 / 0.8 + 10 / 0.55;
    const sumpStep = 6 * 4 * 115 - 440 / 0.8;
    const fridgeStep = 1000 - 150 / 0.85;
    expect(must.startVa.value).toBeCloseTo(running + sumpStep + fridgeStep, 6);
    expect(must.hardestStart).toBe('sump');
  });

  test('a winter day is watts times hours', () => {
    const sump = (440 * (10 / 60) * 24) / 1000; // ten minutes in each hour of a storm day
    const byHand = 1.5 + sump + (20 * 24) / 1000 + (70 * 6) / 1000 + (10 * 3) / 1000;
    expect(byHand).toBeCloseTo(4.19, 6);
    expect(must.kwhPerDay.winter.value).toBeCloseTo(byHand, 6);
  });

  test('the hours of the day add up to the day', () => {
    const sum = must.wattsByHour.winter.reduce((total, watts) => total + watts, 0) / 1000;
    expect(sum).toBeCloseTo(must.kwhPerDay.winter.value, 9);
  });

  test('the bill is 300 kWh over 30.4 days, and the loads fit under it', () => {
    const { billCheck } = planOf('mill-lane').home;
    expect(billCheck.verdict).toBe('fits');
    if (billCheck.verdict === 'not-possible') throw new Error('a bill was given');
    expect(billCheck.billKwhPerDay.value).toBeCloseTo(300 / (365 / 12), 9);
  });

  test('a bill of 80 kWh is under the likely loads: both are shown, nothing is scaled', () => {
    const plan = planOf('mill-lane', { 'bill-kwh': 80 });
    expect(plan.billCheck.verdict).toBe('loads-likely-high');
    expect(plan.home.demand.must.kwhPerDay.winter.value).toBeCloseTo(4.19, 6);
  });

  test('a bill of 20 kWh is under even the low end of the loads', () => {
    expect(planOf('mill-lane', { 'bill-kwh': 20 }).billCheck.verdict).toBe('loads-over-bill');
  });

  test('without a bill, or with solar of unknown use, the check is said not to be possible', () => {
    expect(planOf('mill-lane', { 'bill-kwh': 'not sure' }).billCheck.verdict).toBe('not-possible');
    const solar = { 'own-sources': ['solar'], 'bill-solar-kwh': 'not sure' };
    expect(planOf('mill-lane', solar).billCheck.verdict).toBe('not-possible');
  });
});
