import { expect, test } from 'vitest';
import { atHeight } from '../../../src/tables/place/at-height';
import { allStations } from '../../../src/tables/place/climate';

const { climate } = allStations().find((one) => one.state === 'CO')!;

test('a kilometre up is 6.5 K colder in every month, with more heating and less cooling', () => {
  const up = atHeight(climate, 1000);
  up.meanC.forEach((c, m) => {
    expect(climate.meanC[m]! - c).toBeCloseTo(6.5, 10);
  });
  expect(climate.heat99C - up.heat99C).toBeCloseTo(6.5, 10);
  expect(up.heatingDegreeDays65F).toBeGreaterThan(climate.heatingDegreeDays65F);
  expect(up.coolingDegreeDays65F).toBeLessThanOrEqual(climate.coolingDegreeDays65F);
});

test('no height is no change, and degree days never fall below nothing', () => {
  expect(atHeight(climate, 0)).toEqual(climate);
  expect(atHeight(climate, 5000).coolingDegreeDays65F).toBeGreaterThanOrEqual(0);
});

test('the sun is left as it is', () => {
  expect(atHeight(climate, 1000).ghiKwhPerM2Day).toEqual(climate.ghiKwhPerM2Day);
});
