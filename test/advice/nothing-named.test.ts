import { expect, test } from 'vitest';
import { planMarkdown } from '../../src/papers/household/to-markdown';
import { english } from '../../src/words/en';
import { frozenPlan } from '../frozen-plans';
import { answersOf } from '../households/read-household';

test('a home that names nothing is told so, and not that no route is open or that it must plan to leave', () => {
  const nothing = { 'must-run': ['none'], 'must-also': ['none'], 'nice-run': ['none'] };
  const plan = frozenPlan({ ...answersOf('upstairs-flat'), ...nothing }, '2026-11-25', 5);
  const { advice } = plan;
  expect(advice.route.kind).toBe('preparation');
  expect(advice.reason.code).toBe('nothing-named');
  expect(advice.waysOn).toBeNull();
  const text = planMarkdown(plan, english);
  expect(text).toContain('You named nothing that must keep running');
  expect(text).not.toMatch(/No route that gives power|Plan to leave|Nothing within your money/);
});
