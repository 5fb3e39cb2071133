import { Ajv2020 } from 'ajv/dist/2020.js';
import { expect, test } from 'vitest';
import { planData } from '../../../src/papers/plan-file/plan-data';
import { planJsonSchema } from '../../../src/papers/plan-file/plan-schema';
import { english } from '../../../src/words/en';
import { planOf } from '../../households/read-household';

/** Outside check: an independent validator of JSON Schema (draft 2020-12) reads the published form of the plan file. */
const ajv = new Ajv2020({ strict: false, allErrors: true });
const valid = ajv.compile(planJsonSchema() as object);

test.each(['birch-street', 'mill-lane', 'ridge-road', 'tower-six'])(
  '%s: the plan file has the form that is published',
  (name) => {
    const data = JSON.parse(JSON.stringify(planData(planOf(name), english)));
    valid(data);
    expect(valid.errors ?? []).toEqual([]);
  },
);

test('a plan file without what is advised, or with a word for a number, does not', () => {
  const data = JSON.parse(JSON.stringify(planData(planOf('tower-six'), english)));
  expect(valid({ ...data, schemaVersion: 'four' })).toBe(false);
  const { advised: _, ...without } = data;
  expect(valid(without)).toBe(false);
});
