import { describe, expect, it } from 'vitest';
import { generatorFuelDays } from '../../src/outage/generator-fuel-days';

const flat = (watts: number) => new Array<number>(24).fill(watts);
const line = { noLoadPerHour: 0.2, perKwh: 0.1 };

describe('days of fuel for an engine that carries the load itself', () => {
  it('burns at no load in every hour it runs, and more by what it delivers', () => {
    const got = generatorFuelDays({
      loadWattsByHour: flat(1000),
      ratedKw: 5,
      fuelLine: line,
      usableFuel: 20,
    });
    expect(got.fuelPerDay).toBeCloseTo(24 * (0.2 + 0.1 * 1), 12);
    expect(got.days).toBeCloseTo(20 / 7.2, 12);
    expect(got.kwhPerUnit).toBeCloseTo(24 / 7.2, 12);
    expect(got.unservedKwhPerDay).toBe(0);
  });

  it('serves only the hours of its timetable and says what goes without', () => {
    const runsByHour = flat(0).map((_, h) => (h >= 6 && h < 10 ? 1 : 0));
    const got = generatorFuelDays({
      loadWattsByHour: flat(1000),
      ratedKw: 5,
      fuelLine: line,
      usableFuel: 12,
      runsByHour,
    });
    expect(got.runHoursPerDay).toBe(4);
    expect(got.servedKwhPerDay).toBe(4);
    expect(got.unservedKwhPerDay).toBe(20);
    expect(got.days).toBeCloseTo(12 / (4 * 0.3), 12);
  });

  it('cuts an hour off at the rating and counts it', () => {
    const load = flat(500).map((w, h) => (h === 18 ? 7000 : w));
    const got = generatorFuelDays({
      loadWattsByHour: load,
      ratedKw: 5,
      fuelLine: line,
      usableFuel: 1,
    });
    expect(got.overloadedHoursPerDay).toBe(1);
    expect(got.unservedKwhPerDay).toBeCloseTo(2, 12);
  });

  it('has no number of days for piped fuel, and 0 days for an empty can', () => {
    const input = { loadWattsByHour: flat(0), ratedKw: 5, fuelLine: line };
    expect(generatorFuelDays({ ...input, usableFuel: null }).days).toBeNull();
    expect(generatorFuelDays({ ...input, usableFuel: 0 }).days).toBe(0);
    const never = generatorFuelDays({ ...input, usableFuel: 5, runsByHour: flat(0) });
    expect([never.days, never.kwhPerUnit, never.fuelPerDay]).toEqual([null, null, 0]);
  });
});
