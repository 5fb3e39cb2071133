import { expect, test } from 'vitest';
import { planMarkdown } from '../../src/papers/household/to-markdown';
import { formatRange } from '../../src/quantity/format-quantity';
import { english } from '../../src/words/en';
import { planOf } from '../households/read-household';

test("the caution about a pump's start shows what the pump of this home asks for", () => {
  const plan = planOf('ridge-road');
  const well = plan.home.loads.find((load) => load.id === 'well')!;
  const start = plan.cautions.find((one) => one.id === 'pump-start')!;
  expect(start.figures).toMatchObject([{ load: 'well', at: 'start', figure: well.startVa }]);
  const { low, value, high } = well.startVa!;
  expect(planMarkdown(plan, english)).toContain(
    `Your well pump: ${formatRange(low, value, high, 'VA')} at the start.`,
  );
});

test('a larger pump has the larger figure in its caution', () => {
  const at = (hp: number) =>
    planOf('ridge-road', { 'well-hp': hp, 'well-start-amps': 'not sure' }).cautions.find(
      (one) => one.id === 'pump-start',
    )!.figures![0]!.figure.value;
  expect(at(1.5)).toBeGreaterThan(at(0.5));
});
