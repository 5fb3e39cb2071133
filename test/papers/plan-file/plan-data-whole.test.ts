import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { planOf } from '../../households/read-household';

const read = (file: string) =>
  readFileSync(join(import.meta.dirname, '../../../src/papers/plan-file', file), 'utf8');

test('every part of a plan stands in the plan file', () => {
  const data = read('plan-data.ts');
  const parts = Object.keys(planOf('ridge-road'));
  expect(
    parts.filter((part) => !new RegExp(`\\b${part}\\b`).test(data)),
    'Put each into planData (src/papers/plan-file/plan-data.ts) and give it a row in src/papers/plan-file/plan-schema.ts',
  ).toEqual([]);
});
