import { expect, test } from 'vitest';
import { hardDaysC } from '../../../src/home/weather/climate-hours';
import { hourlyLoadKw } from '../../../src/home/weather/hourly-load';
import { planOf } from '../../households/read-household';

/** kWh of one January or July day at an even temperature. */
function dayKwh(home: ReturnType<typeof planOf>['home'], airC: number, firstHour: number): number {
  const loads = home.loads.map((load) => ({ ...load, offInOutage: false }));
  const hours = hourlyLoadKw(loads, new Float32Array(8760).fill(airC), home.site.place.climate);
  return hours.subarray(firstHour, firstHour + 24).reduce((sum, kw) => sum + kw, 0);
}

test.each(['ridge-road', 'mill-lane', 'birch-street'])(
  'the hours of %s come to the day of its loads on a hard winter and a hard summer day',
  (name) => {
    const { home } = planOf(name);
    const { hardCold, hardHot } = hardDaysC(home.site.place.climate);
    const total = (season: 'winter' | 'summer') =>
      home.loads.reduce((sum, load) => sum + load.kwhPerDay[season].value, 0);
    expect(dayKwh(home, hardCold, 0)).toBeCloseTo(total('winter'), 4);
    expect(dayKwh(home, hardHot, 190 * 24)).toBeCloseTo(total('summer'), 4);
  },
);
