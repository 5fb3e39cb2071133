import { describe, expect, it } from 'vitest';
import { neededForEveryStart } from '../../src/outage/every-start';
import { netEnergy } from '../../src/outage/net-energy';
import { WHOLE_YEAR } from '../../src/outage/season';
import { sizeForShareOfOutages, sizeForShareOfYears } from '../../src/outage/size-by-odds';
import { sizeSweep } from '../../src/outage/size-sweep';
import type { HourSeries } from '../../src/quantity/hour-series';
import { limits, madeUpRecord } from './walk/made-up-system';

const YEARS = 3;
const winter = { firstMonth: 11, months: 3 };
const { loadsKw, solarKw } = madeUpRecord(365 * YEARS, 8, 1, 0.4);
const loadKw = loadsKw[0]!;
const yearAt = (year: number) => {
  const cut = (all: HourSeries) => all.subarray(8760 * year, 8760 * (year + 1));
  return { loadKw: cut(loadKw), solarPerKw: cut(solarKw) };
};

describe('a battery for each size of array', () => {
  const sweep = sizeSweep({
    years: YEARS,
    yearAt,
    solarSteps: [0, 3, 6],
    limits: { ...limits, dischargeKw: 0.55 },
    lengths: [24, 72],
  });

  it('is the one the whole record asks for, year by year or at once', () => {
    for (const { solarKw: kw, overloadHoursPerYear, tallies } of sweep) {
      const supplyKw = solarKw.map((x) => x * kw);
      const all = netEnergy({ loadKw, supplyKw, limits: { ...limits, dischargeKw: 0.55 } });
      const over = all.overloadKwh.filter((kwh) => kwh > 0).length / YEARS;
      expect(overloadHoursPerYear).toBeCloseTo(over, 9);
      [24, 72].forEach((hours, i) => {
        const needed = neededForEveryStart(all.netKwh, hours);
        for (const season of [winter, WHOLE_YEAR]) {
          const exact = sizeForShareOfOutages(needed, season, 0.9)!;
          const got = tallies[i]!.sizeForShareOfOutages(season, 0.9)!;
          expect(got - exact).toBeGreaterThan(-1e-6);
          expect(got - exact).toBeLessThan(0.02 + 1e-6); // one bin
          const years = tallies[i]!.sizeForShareOfYears(season, 0.9)!;
          expect(years).toBeCloseTo(sizeForShareOfYears(needed, season, 0.9)!, 9);
          expect(years).toBeGreaterThanOrEqual(exact);
        }
      });
    }
  });

  it('never grows with the array', () => {
    const sizes = sweep.map((step) => step.tallies[1]!.sizeForShareOfOutages(winter, 0.9)!);
    expect(sizes[1]).toBeLessThan(sizes[0]!);
    expect(sizes[2]).toBeLessThanOrEqual(sizes[1]!);
    expect(sweep[0]!.overloadHoursPerYear).toBeGreaterThan(0);
  });

  it('has no size for no years', () => {
    const [none] = sizeSweep({ years: 0, yearAt, solarSteps: [3], limits, lengths: [24] });
    expect(none!.tallies[0]!.sizeForShareOfOutages(winter, 0.9)).toBeNull();
    expect(none!.overloadHoursPerYear).toBe(0);
  });
});
