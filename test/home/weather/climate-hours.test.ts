import { describe, expect, test } from 'vitest';
import { climateHours, coldShare, heatShare } from '../../../src/home/weather/climate-hours';
import { SyntheticYears } from '../../../src/home/weather/synthetic-years';
import { allStations } from '../../../src/tables/place/climate';
import { planOf } from '../../households/read-household';

describe('running hours by climate', () => {
  test('grow with cold and with heat, and are nothing at the balance', () => {
    expect(coldShare(18.33, -18)).toBe(0);
    expect(coldShare(-18, -18)).toBeCloseTo(1, 9);
    expect(heatShare(18.33, 35)).toBe(0);
    expect(heatShare(35, 35)).toBeCloseTo(1, 9);
  });

  test('stay within the day at every station, and cold places heat longer', () => {
    for (const { climate } of allStations()) {
      const { heating, cooling } = climateHours(climate);
      for (const hours of [...heating.winter, ...cooling.summer, ...heating.mild]) {
        expect(hours).toBeGreaterThanOrEqual(0);
        expect(hours).toBeLessThanOrEqual(24);
      }
    }
  });
});

describe('the drawn hours of a place', () => {
  // Degree days, base 65 F, of the same station data (TMY3, NREL/TP-581-43156): an outside check of the drawn temperatures.
  test.each(['mill-lane', 'ridge-road', 'birch-street'])(
    'at %s keep the published heating degree days within 8 percent',
    (name) => {
      const { home } = planOf(name);
      const air = new SyntheticYears(home, 30).airC();
      let degreeHours = 0;
      for (let day = 0; day < air.length; day += 24) {
        let mean = 0;
        for (let h = 0; h < 24; h++) mean += air[day + h]! / 24;
        degreeHours += Math.max(0, 18.333 - mean) * 1.8;
      }
      const published = home.site.place.climate.heatingDegreeDays65F;
      expect(Math.abs(degreeHours / 30 / published - 1)).toBeLessThan(0.08);
    },
  );
});
