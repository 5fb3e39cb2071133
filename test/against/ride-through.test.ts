import { expect, test } from 'vitest';
import { ridesThrough, rideThroughSeconds } from '../../src/physics/ride-through';
import { iticCurve } from '../../src/tables/itic-curve';

// ITI (CBEMA) Curve Application Note, Information Technology Industry Council, 2000 revision, 120 V single phase.
test.each([
  [0, 0.02],
  [69, 0.02],
  [70, 0.5],
  [79, 0.5],
  [80, 10],
  [89, 10],
  [90, null],
  [100, null],
  [110, null],
  [111, 0.5],
  [120, 0.5],
  [130, 0],
])('at %i %% of 120 V office electronics are built to last %s s', (percent, seconds) => {
  expect(rideThroughSeconds(percent, iticCurve.rows)).toBe(seconds);
});

test('a gap of 20.0 ms is just within the curve and one of 30 ms is not', () => {
  expect(ridesThrough({ percentOfNominal: 0, seconds: 0.02 }, iticCurve.rows)).toBe(true);
  expect(ridesThrough({ percentOfNominal: 0, seconds: 0.03 }, iticCurve.rows)).toBe(false);
});
