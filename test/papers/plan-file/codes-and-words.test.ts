import { expect, test } from 'vitest';
import { planData } from '../../../src/papers/plan-file/plan-data';
import { english } from '../../../src/words/en';
import { planOf } from '../../households/read-household';

/** A code is the same in every language: letters and figures joined by hyphens, and no word to a person. */
const CODE = /^[A-Za-z0-9]+(-[A-Za-z0-9]+)*$/;

/** Every object below a value. */
function objectsIn(value: unknown): Record<string, unknown>[] {
  if (Array.isArray(value)) return value.flatMap(objectsIn);
  if (typeof value !== 'object' || value === null) return [];
  return [value as Record<string, unknown>, ...Object.values(value).flatMap(objectsIn)];
}

test.each(['birch-street', 'mill-lane', 'ridge-road', 'tower-six'])(
  '%s: in the plan file every code is one, and has its words',
  (name) => {
    const coded = objectsIn(planData(planOf(name), english)).filter((one) => 'code' in one);
    expect(coded.length).toBeGreaterThan(60);
    for (const one of coded) {
      expect(one.code, JSON.stringify(one)).toMatch(CODE);
      const words = Object.entries(one).filter(
        ([key, said]) => key !== 'code' && typeof said === 'string',
      );
      expect(words.length, JSON.stringify(one)).toBeGreaterThan(0);
      for (const [, said] of words) expect(said).not.toMatch(/undefined|\[object|^$/);
    }
  },
);
