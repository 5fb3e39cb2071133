import { expect, test } from 'vitest';
import { endedBy } from '../../../src/tables/prices/incentives';

test('a credit is said to have ended from the day after its last', () => {
  expect(endedBy('2025-12-31')).toEqual([]);
  expect(endedBy('2026-01-01')).toHaveLength(2);
  expect(endedBy('2026-11-25')).toHaveLength(3);
});
