import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Input } from '../../../src/commands/calc/calculation';
import { calculations } from '../../../src/commands/calc/registry';
import { type Value, Values } from '../../../src/commands/calc/values';

/** Slow ones draw weather or whole years; a few cases each keep the suite fast. */
const slow = new Set([
  'roof-yield',
  'weather-year',
  'ride-through',
  'battery-savings',
  'kept-charge',
]);

/** Two hundred years of weather would take most of a second each time. */
const MOST_YEARS = 30;

function anyValue(input: Input): fc.Arbitrary<Value> {
  switch (input.kind) {
    case 'number': {
      const { from: min, whole } = input;
      const max = input.key === 'years' ? Math.min(input.to, MOST_YEARS) : input.to;
      const ends = fc.constantFrom(min, max);
      return fc.oneof(
        ends,
        whole ? fc.integer({ min, max }) : fc.double({ min, max, noNaN: true }),
      );
    }
    case 'choice':
      return fc.constantFrom(...input.choices);
    case 'text':
      return fc.stringMatching(input.pattern);
    case 'list':
      return fc.array(
        fc.record({
          name: fc.constantFrom('one', 'two', 'well pump'),
          value: fc.double({ min: 0, max: input.to, noNaN: true }),
        }),
        { minLength: 1, maxLength: 4 },
      );
  }
}

const mayLackOf = (input: Input) => input.optional === true;

test.each(Object.keys(calculations))(
  '%s gives finite numbers or a reason for any inputs in range',
  async (name) => {
    const calculation = await calculations[name]!();
    const inputs = calculation.inputs.map((input) => {
      const value = anyValue(input).map((v) => [input.key, v] as const);
      return mayLackOf(input) ? fc.option(value) : value;
    });
    const any = fc.tuple(...inputs).map((all) => new Map(all.filter((one) => one !== null)));
    fc.assert(
      fc.property(any, (byKey) => {
        const outcome = calculation.run(new Values(byKey));
        if (!outcome.ok) {
          expect(outcome.says).toMatch(/^[^A-Z].*\.$|^"/);
          return;
        }
        expect(outcome.results.length).toBeGreaterThan(0);
        const endless = [...outcome.steps, ...outcome.results].filter(
          ({ value }) => typeof value === 'number' && !Number.isFinite(value),
        );
        expect(endless).toEqual([]);
      }),
      { seed: 20261125, numRuns: slow.has(name) ? 5 : 200 },
    );
  },
);
