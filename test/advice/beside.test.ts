import { expect, test } from 'vitest';
import { besideOf } from '../../src/advice/beside';
import { planMarkdown } from '../../src/papers/household/to-markdown';
import { familySheet } from '../../src/papers/sheets/family';
import type { Route } from '../../src/routes/route';
import { english } from '../../src/words/en';
import { planOf } from '../households/read-household';

const YEARS = 5;
const plan = planOf('sunny-fork', {}, YEARS);

test('beside a battery of their own that lasts, nothing is laid that gains nothing', () => {
  const { route, beside } = plan.advice;
  expect(route.kind).toBe('own-battery');
  expect(route.lasting.hours!.low).toBeGreaterThan(plan.home.goalHours.value);
  expect(beside).toEqual([]);
  expect(JSON.stringify(familySheet(plan, english).blocks)).not.toContain('Beside it');
  expect(planMarkdown(plan, english)).not.toMatch(/NaN|undefined/);
});

test('what gains something is: more carried, more careful hours up to the goal, no generator, nobody at home, wires', () => {
  const { home, routes, advice } = plan;
  const advised = advice.route;
  const cords = routes.find(({ kind }) => kind === 'engine-cords')!;
  const beside = (more: Partial<Route>, own: Partial<Route> = {}) =>
    besideOf(home, [{ ...cords, ...more }], { ...advised, ...own }).length;
  expect(cords.verdict).not.toBe('cannot');
  expect(beside({})).toBe(0);
  expect(beside({ costUsd: advised.costUsd })).toBe(0);
  const dear = { costUsd: { ...advised.costUsd, value: cords.costUsd.value + 1 } };
  expect(beside({}, dear)).toBe(1);
  expect(beside({ carries: [...cords.carries, 'well'] })).toBe(1);
  const short = { ...advised.lasting, hours: { ...advised.lasting.hours!, low: 1 } };
  expect(beside({}, { lasting: short })).toBe(1);
  expect(beside({ kind: 'battery-whole' }, { kind: 'engine-cords' })).toBe(1);
  expect(beside({ kind: 'engine-inlet' }, { kind: 'engine-cords' })).toBe(1);
});
