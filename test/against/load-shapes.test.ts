import { expect, test } from 'vitest';
import { loadShape, loadShapes } from '../../src/tables/load-shapes';

// ANSI/RESNET/ICC 301-2022 Addendum C, table C.3, as carried in an open building model of a US national laboratory.
test.each([
  ['lighting', 20, 0.11],
  ['television', 20, 0.132],
  ['range', 17, 0.134],
  ['dishwasher', 19, 0.111],
  ['washer', 9, 0.086],
  ['hot-water', 7, 0.086],
  ['well-pump', 21, 0.086],
  ['pool-pump', 10, 0.127],
])('%s peaks in hour %i with %f of the day (table C.3)', (id, hour, share) => {
  const row = loadShapes.rows.find((r) => r.id === id)!;
  expect(row.fractions[hour]).toBe(share);
  expect(Math.max(...row.fractions)).toBe(share);
});

test('every printed row adds up to 1 within the rounding of 24 thousandths, as a share of the day must', () => {
  for (const row of loadShapes.rows.filter((r) => r.standing === 'published')) {
    const sum = row.fractions.reduce((a, b) => a + b, 0);
    expect(Math.abs(sum - 1), row.id).toBeLessThanOrEqual(24 * 0.0005);
    expect(loadShape(row.id).reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12);
  }
});
