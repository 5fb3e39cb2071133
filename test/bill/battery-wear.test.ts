import { describe, expect, test } from 'vitest';
import { KWH_THROUGH, workedLife } from '../../src/bill/lifecycle/battery-wear';

const of = { lifeYears: 15, nameplateKwh: 10 };

describe('the life of a battery that works', () => {
  test('is its age where use is lighter: 2,000 kWh a year use up 40,000 in 20 years', () => {
    expect(KWH_THROUGH).toBe(4000);
    expect(workedLife({ ...of, kwhOutPerYear: 2000 })).toEqual({ years: 15, byUse: false });
  });

  test('is its use where that is heavier: 4,000 kWh a year use up 40,000 in 10', () => {
    expect(workedLife({ ...of, kwhOutPerYear: 4000 })).toEqual({ years: 10, byUse: true });
  });

  test('is its age when it only waits', () => {
    expect(workedLife({ ...of, kwhOutPerYear: 0 })).toEqual({ years: 15, byUse: false });
  });
});
