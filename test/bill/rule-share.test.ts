import { expect, test } from 'vitest';
import { ruleShare } from '../../src/bill/dispatch/rule-share';
import { demoSetting, rowShare } from '../bench/bench-dispatch';
import { dispatchRows } from '../fixtures/dispatch-rows';

test('on every demo tariff the day-ahead rule keeps at least 75 % of what could be saved', () => {
  for (const letter of ['B', 'C', 'D'] as const) {
    for (const withSolar of [true, false]) {
      const found = ruleShare(demoSetting(letter, withSolar), 'peak-limit');
      expect(found.share, `${letter} ${withSolar}`).toBeGreaterThan(0.75);
      expect(found.share, `${letter} ${withSolar}`).toBeLessThanOrEqual(1);
      expect(found.short === null, `${letter} ${withSolar}`).toBe(found.share! >= 0.9);
    }
  }
}, 30_000);

test('where nothing can be saved there is no share', () => {
  expect(ruleShare(demoSetting('A'), 'both').share).toBeNull();
});

test('a plain rule that falls short says why', () => {
  const found = ruleShare(demoSetting('B'), 'self-use');
  expect(found.share!).toBeLessThan(0.9);
  expect(found.short).toBe('price-of-hour');
});

test('the rows of one day that the benchmark prints all keep more than 75 %', () => {
  for (const row of dispatchRows) expect(rowShare(row)!, row.name).toBeGreaterThan(0.75);
});
