import { describe, expect, test } from 'vitest';
import { warmRoom } from '../../../src/home/heat/warm-room';
import { hardDaysC } from '../../../src/home/weather/climate-hours';
import { hourlyLoadKw } from '../../../src/home/weather/hourly-load';
import { planOf } from '../../households/read-household';

const { home } = planOf('mill-lane');
const fridge = home.loads.find((load) => load.id === 'fridge')!;

describe('cold food', () => {
  test('takes no more in a cool room, and more with each kelvin of warmth', () => {
    expect(warmRoom(-20)).toEqual({ low: 1, likely: 1, high: 1 });
    expect(warmRoom(21).likely).toBe(1);
    expect(warmRoom(31).likely).toBeCloseTo(1 + 10 * 0.035, 12);
    const { low, likely, high } = warmRoom(31);
    expect(low).toBeLessThan(likely);
    expect(likely).toBeLessThan(high);
  });

  test('of a hard summer day is that of a winter day times the warmth of the place', () => {
    const { hardHot } = hardDaysC(home.site.place.climate);
    expect(hardHot).toBeGreaterThan(21);
    const { winter, summer } = fridge.kwhPerDay;
    expect(summer.value / winter.value).toBeCloseTo(1 + 0.035 * (hardHot - 21), 9);
  });

  test('follows the hour of the day and the heat of that day, not the month', () => {
    const air = new Float32Array(8760).fill(10);
    air.fill(31, 24, 48);
    const kw = hourlyLoadKw([fridge], air, home.site.place.climate);
    const day = (first: number) => kw.subarray(first, first + 24).reduce((sum, x) => sum + x, 0);
    // Hours are kept in single precision: seven digits.
    expect(day(0)).toBeCloseTo(fridge.kwhPerDay.winter.value, 6);
    expect(day(24)).toBeCloseTo(1.35 * fridge.kwhPerDay.winter.value, 6);
    expect(day(190 * 24)).toBeCloseTo(day(0), 9);
    for (let h = 0; h < 24; h++) {
      expect(kw[24 + h]! / kw[h]!).toBeCloseTo(1.35, 6);
      expect(kw[h]! / fridge.kwhPerDay.winter.value).toBeCloseTo(fridge.shape[h]!, 6);
    }
  });
});
