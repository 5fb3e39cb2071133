import fc from 'fast-check';
import { expect, test } from 'vitest';
import { hourShare } from '../../../src/physics/sun/hour-share';

const HOUR = Math.PI / 12;

test('24 hours of total and of diffuse sum to one at any place, day and clock, or there is no sun', () => {
  fc.assert(
    fc.property(
      fc.double({ min: -90, max: 90, noNaN: true }),
      fc.double({ min: -23.44, max: 23.44, noNaN: true }),
      fc.double({ min: -2, max: 2, noNaN: true }),
      (latDeg, declinationDeg, shift) => {
        const share = hourShare({ latDeg, declinationDeg });
        if (share === null) return;
        let [total, diffuse] = [0, 0];
        for (let h = -12; h < 12; h++) {
          const hour = share.total((h + shift) * HOUR, (h + 1 + shift) * HOUR);
          expect(hour).toBeGreaterThanOrEqual(-1e-9);
          total += hour;
          diffuse += share.diffuse((h + shift) * HOUR, (h + 1 + shift) * HOUR);
        }
        expect(total).toBeCloseTo(1, 9);
        expect(diffuse).toBeCloseTo(1, 9);
      },
    ),
    { seed: 20261125 },
  );
});

test('the night has no sun though the raw product turns positive there', () => {
  // Sunset at 70 degrees, hour angle 172.5: the unmasked product would be +0.026 of the day.
  const share = hourShare({ latDeg: 43, declinationDeg: -20 })!;
  expect(share.total(11 * HOUR, 12 * HOUR)).toBe(0);
});

test('polar night gives null', () => {
  expect(hourShare({ latDeg: 75, declinationDeg: -23 })).toBeNull();
});
