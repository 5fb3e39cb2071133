import { describe, expect, test } from 'vitest';
import { planMarkdown } from '../../../src/papers/household/to-markdown';
import { english } from '../../../src/words/en';
import { planOf } from '../../households/read-household';

const winterHeat = (changed: Record<string, string | number>) => {
  const plan = planOf('ridge-road', changed);
  return { plan, pump: plan.home.loads.find((load) => load.id === 'heat-pump')! };
};

describe('two bills', () => {
  const plain = winterHeat({});

  test('without a mild one change nothing and say nothing', () => {
    expect(plain.plan.home.calibration).toBeNull();
  });

  test('set the heating to what the weather took, and say by how much', () => {
    const { plan, pump } = winterHeat({ 'bill-mild-kwh': 780 });
    const billed = (1650 - 780) / (365 / 12);
    expect(english.calibration(plan.home.calibration!)).toContain(
      `${billed.toFixed(1)} kWh a day more in winter`,
    );
    const factor = pump.kwhPerDay.winter.value / plain.pump.kwhPerDay.winter.value;
    expect(factor).not.toBe(1);
    expect(factor).toBeGreaterThan(0.8);
    expect(factor).toBeLessThan(1.25);
    expect(english.calibration(plan.home.calibration!)).toContain(factor.toFixed(2));
    expect(pump.kwhPerDay.winter.high).toBeGreaterThanOrEqual(plain.pump.kwhPerDay.winter.high);
    expect(planMarkdown(plan, english)).toContain('The plan goes by your bills');
  });

  test('that cannot be believed are shown and nothing is changed', () => {
    const { plan, pump } = winterHeat({ 'bill-kwh': 9000, 'bill-mild-kwh': 700 });
    expect(english.calibration(plan.home.calibration!)).toContain('Nothing was changed');
    expect(pump.kwhPerDay.winter).toEqual(plain.pump.kwhPerDay.winter);
  });

  test('of a home whose heat is not electric tell of habits, and are left alone', () => {
    const plan = planOf('mill-lane', { 'bill-kwh': 600, 'bill-mild-kwh': 300 });
    expect(plan.home.calibration).toBeNull();
  });
});
