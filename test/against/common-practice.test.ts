import { expect, test } from 'vitest';
import { chargingTime } from '../../src/physics/charging-time';
import { ridesThrough } from '../../src/physics/ride-through';
import { iticCurve } from '../../src/tables/itic-curve';

// Rules of thumb of the trade: common practice, no source. They do not count as outside checks.

const tenKwhFrom10To90 = { storedKwh: 8, sourceKw: 5, chargerInputKw: 5 };

test.each([
  [1, 1.6],
  [0.95, 1.6842],
  [0.9, 1.7778],
])(
  '8 kWh from 5 kW at %f efficiency takes %f h (common practice, no source)',
  (efficiency, hours) => {
    expect(chargingTime({ ...tenKwhFrom10To90, efficiency }).hours).toBeCloseTo(hours, 4);
  },
);

test('a charger that takes 3 kW makes it 2.8070 h, however large the source (common practice, no source)', () => {
  const slow = chargingTime({ storedKwh: 8, sourceKw: 5, chargerInputKw: 3, efficiency: 0.95 });
  expect(slow.hours).toBeCloseTo(8 / (3 * 0.95), 9);
  expect(slow.limitedBy).toBe('charger');
});

test('a transfer within 20 ms keeps office electronics on (common practice, no source)', () => {
  expect(ridesThrough({ percentOfNominal: 0, seconds: 0.02 }, iticCurve.rows)).toBe(true);
});
