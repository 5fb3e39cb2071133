import fc from 'fast-check';
import { expect, test } from 'vitest';
import { AnswerPaths } from '../../src/advice/answer-paths';
import { remembered } from '../../src/advice/remembered';
import type { Known, Resolved } from '../../src/interview/questions/resolve';

const IDS = ['a', 'b', 'c', 'd', 'e', 'f'] as const;

const known: fc.Arbitrary<Resolved> = fc
  .array(fc.tuple(fc.constantFrom(...IDS), fc.constantFrom<Known['value']>(0, 1, '1', ['x'], null)))
  .map((told) => new Map(told.map(([id, value]) => [id, { value, how: 'told' } as Known])));

/** Asks for one answer after another, which one by what the last was found to be. */
function walk(of: Resolved): string {
  const seen: string[] = [];
  let at = 0;
  for (let step = 0; step < 4; step++) {
    const id = IDS[at % IDS.length]!;
    const found = JSON.stringify(of.get(id)?.value);
    seen.push(`${id}=${found}`);
    at += 1 + (found ?? '').length;
  }
  return seen.join(' ');
}

test('whatever was told before, what is remembered is what would be made now, and made once for all that asks the same', () => {
  fc.assert(
    fc.property(fc.array(known, { minLength: 1, maxLength: 40 }), (all) => {
      let made = 0;
      const paths = remembered((of) => {
        made += 1;
        return walk(of);
      });
      for (const one of [...all, ...all]) expect(paths(one)).toBe(walk(one));
      expect(made).toBe(new Set(all.map(walk)).size);
    }),
    { seed: 20261129, numRuns: 100 },
  );
});

test('what is asked on the way to a result is told in its order, however paths have parted', () => {
  const paths = new AnswerPaths<number>();
  const told = (...values: number[]): Resolved =>
    new Map(values.map((value, i) => [IDS[i]!, { value, how: 'told' } as Known]));
  paths.put(told(1, 1, 1), ['a', 'b', 'c'], 1);
  paths.put(told(1, 2, 1), ['a', 'b', 'd'], 2);
  paths.put(told(2), ['a'], 3);
  expect([told(1, 1, 1), told(1, 2, 1), told(2)].map((one) => paths.askedOn(one))).toEqual([
    ['a', 'b', 'c'],
    ['a', 'b', 'd'],
    ['a'],
  ]);
  expect(paths.find(told(1, 2))).toEqual({ made: 2 });
  expect(paths.find(told(1, 3))).toBeUndefined();
  expect(paths.find(told())).toBeUndefined();
  // After the same answers another question would mean that it rests on something else.
  expect(() => paths.put(told(1, 2), ['a', 'e'], 4)).toThrow('asked for e where it asked for b');
});
