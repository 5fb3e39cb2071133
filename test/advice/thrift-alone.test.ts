import { expect, test } from 'vitest';
import { planMarkdown } from '../../src/papers/household/to-markdown';
import { english } from '../../src/words/en';
import { frozenPlan } from '../frozen-plans';
import { answersOf } from '../households/read-household';

const lit = { ...answersOf('upstairs-flat'), 'must-run': ['lights'], 'goal-hours': 72 };
const plan = frozenPlan(lit, '2026-11-25', 5);
const { advice } = plan;
const text = planMarkdown(plan, english);

test('a home that wants nothing but light is told of lanterns, and sold no battery', () => {
  expect(advice.route.kind).toBe('preparation');
  expect(advice.route.way).toBe('thrifty');
  const line = advice.list[advice.advised!]!;
  expect(line).toMatchObject({ reaches: true, withinBudget: true });
  expect(line.usd).toBeLessThan(400);
  expect(line.carried).toEqual({ carried: 1, of: 1 });
  expect(advice.waysOn).toBeNull();
});

test('the papers say that nothing needs power, what thrifty means, and what it costs', () => {
  expect(text).toContain('what must keep running needs no power');
  expect(text).toContain('battery lanterns for the lights');
  expect(text).not.toMatch(/It gives no power: what needs power stops/);
  expect(text).toMatch(/for what living thriftily takes/);
  expect(text).not.toMatch(/NaN|undefined|null/);
});

test('however much money there is, and the reason says what it would take to go on as usual', () => {
  const rich = frozenPlan({ ...lit, 'budget-now': 60000 }, '2026-11-25', 5).advice;
  expect(rich.route.kind).toBe('preparation');
  expect(rich.reason.code).toBe('no-power-needed');
  const [asUsual] = rich.reason.others;
  const line = rich.list.find(({ way, reaches }) => way === 'usual' && reaches)!;
  expect(asUsual).toMatchObject({ standing: 'as-usual', usd: line.usd });
  expect(english.whyAdvised(rich.reason)).toMatch(
    /To go on as usual would take the .*, \$[\d,]+ in all/,
  );
  expect(english.whyAdvised(rich.reason)).not.toContain('costs least');
});
