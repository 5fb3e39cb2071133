import { expect, test } from 'vitest';
import { withOdds } from '../../../src/physics/sun/diffuse-share';
import { MONTH_OF_DAY } from '../../../src/physics/weather/calendar';
import { diffuseOdds } from '../../../src/physics/weather/diffuse-odds';
import { weatherYears } from '../../../src/physics/weather/weather-years';
import { allStations } from '../../../src/tables/place/climate';
import { persistenceFigures } from '../../../src/tables/place/weather-persistence';

test('by hand: a share of a half is two thirds at twice the odds, and none or all stay', () => {
  expect(withOdds(0.5, 2)).toBeCloseTo(2 / 3, 12);
  expect([withOdds(0, 9), withOdds(1, 9), withOdds(0.3, 1)]).toEqual([0, 1, 0.3]);
});

test('the odds bring the wished share of all sun together; without sun they are 1', () => {
  const sun = Float64Array.of(1, 2, 4);
  const share = Float64Array.of(0.95, 0.6, 0.2);
  const odds = diffuseOdds({ sun, share }, 0.7);
  const diffuse = sun.reduce((sum, kwh, i) => sum + kwh * withOdds(share[i]!, odds), 0);
  expect(diffuse / 7).toBeCloseTo(0.7, 4);
  expect(diffuseOdds({ sun: new Float64Array(3), share }, 0.7)).toBe(1);
});

// Mean diffuse sun of each month, from the same TMY3 hours as the other station figures (NREL/TP-581-43156).
test('drawn years have the diffuse sun of the station in every month, at every 32nd station', () => {
  for (const { climate, latDeg, name } of allStations().filter((_, i) => i % 32 === 5)) {
    const persistence = persistenceFigures(climate);
    const weather = weatherYears({ climate, persistence, latDeg, years: 10, seed: 20261125 });
    const [diffuse, level] = [new Array<number>(12).fill(0), new Array<number>(12).fill(0)];
    weather.clearness.forEach((k, i) => {
      const m = MONTH_OF_DAY[i % 365]!;
      const kwh = k * weather.sky.extraterrestrialKwh[i % 365]!;
      level[m]! += kwh;
      diffuse[m]! += kwh * weather.diffuseShare[i]!;
    });
    for (let m = 0; m < 12; m++) {
      const wished = climate.diffuseKwhPerM2Day[m]! / climate.ghiKwhPerM2Day[m]!;
      // The last printed digit of the level sun is 0.01 kWh/m2 a day.
      if (climate.ghiKwhPerM2Day[m]! < 0.2) continue;
      expect(Math.abs(diffuse[m]! / level[m]! - wished), `${name} ${m + 1}`).toBeLessThan(0.01);
    }
  }
});
