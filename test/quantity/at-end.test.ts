import fc from 'fast-check';
import { expect, test } from 'vitest';
import { atEnd } from '../../src/quantity/at-end';
import { figure } from '../../src/quantity/figure';
import { addFigures, worked } from '../../src/quantity/figure-arithmetic';
import { worth } from '../../src/quantity/made';

const source = { kind: 'table' } as const;
const ranged = (low: number, value: number, high: number, unit = 'gal') =>
  figure({ low, value, high, unit, source });

test('what adds counts with the same end, what takes away or divides with the other', () => {
  const hours = worked(
    { by: 'ratio', of: [ranged(8, 10, 12)], under: [ranged(2, 4, 5, 'gal/h')] },
    { unit: 'h' },
  );
  const { made, value } = atEnd(hours, 'low');
  expect(value).toBe(8 / 5);
  expect(made).toMatchObject({
    of: [{ value: 8, end: 'low' }],
    under: [{ value: 5, end: 'high' }],
  });
});

test('an end that is the likely value is the figure itself', () => {
  const one = ranged(3, 3, 4);
  expect(atEnd(one, 'low')).toBe(one);
});

test('an end set by a rule has no steps, not those of another value', () => {
  const sum = addFigures([ranged(1, 2, 3), ranged(1, 2, 3)], { unit: 'gal' });
  const moved = figure({ value: 4, low: 1, high: 6, unit: 'gal', source, as: () => sum });
  expect(atEnd(moved, 'low').made).toBeUndefined();
  expect(worth(atEnd(moved, 'high').made!)).toBe(6);
});

test('steps of an end that come to something else are not shown for it', () => {
  const sum = addFigures([ranged(2, 2, 2), ranged(2, 2, 2)], { unit: 'gal' });
  const given = { value: 4, low: 1, unit: 'gal', source } as const;
  expect(atEnd(figure({ ...given, endAs: () => sum }), 'low').made).toBeUndefined();
});

test('whatever is added, multiplied and divided: the steps of each end come to it', () => {
  const some = fc
    .tuple(
      fc.double({ min: 0.1, max: 50, noNaN: true }),
      fc.double({ min: 1, max: 3, noNaN: true }),
    )
    .map(([low, by]) => ranged(low, low * by, low * by * by));
  fc.assert(
    fc.property(some, some, some, (a, b, c) => {
      const sum = addFigures([a, b], { unit: 'gal' });
      const share = worked({ by: 'ratio', of: [sum], under: [c] }, { unit: 'count' });
      const rest = worked({ by: 'difference', of: [share, b] }, { unit: 'count' });
      for (const end of ['low', 'high'] as const) {
        expect(worth(atEnd(rest, end).made!)).toBeCloseTo(rest[end], 6);
      }
    }),
  );
});
