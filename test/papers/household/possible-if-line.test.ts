import { expect, test } from 'vitest';
import { frontLines } from '../../../src/papers/household/front/front-page';
import { english } from '../../../src/words/en';
import { frozenPlan } from '../../frozen-plans';
import { answersOf } from '../../households/read-household';

const front = (changed: Record<string, unknown>) => {
  const plan = frozenPlan({ ...answersOf('ridge-road'), ...changed } as never, '2026-11-25', 5);
  return {
    plan,
    lines: frontLines(plan, english).filter((line) => line.includes(' would be possible if ')),
  };
};

/** $16,000, a tank of propane, a wood stove, and a pad for a generator that is too near a window: our own invention. */
const pad = {
  'heat-second': 'wood-stove',
  'engine-place': 'open-closer',
  'budget-now': 16_000,
  'budget-later': 0,
};

test('a pad too near a window: the first page says what a place 20 feet away would change, and buys nothing of it', () => {
  const { plan, lines } = front(pad);
  expect(plan.possibleIf.flatMap(({ routes }) => routes.map(({ kind }) => kind))).toContain(
    'engine-inlet',
  );
  expect(lines).toHaveLength(1);
  expect(lines[0]).toMatch(/20 feet or more from every door, window and vent/);
  expect(lines[0]).not.toMatch(/\$|generator with/);
});

test('where the place is there, nothing has to be true first', () => {
  expect(front({ 'engine-place': 'open-20ft' }).lines).toEqual([]);
});

test('a condition whose routes no money here can buy sends nobody to look for it on the first page', () => {
  const closed = { ...pad, 'must-run': ['heat', 'fridge', 'lights'] };
  const rich = front(closed);
  expect(rich.lines).toHaveLength(1);
  const poor = front({ ...closed, 'budget-now': 300 });
  const named = poor.plan.possibleIf.filter(({ gain }) => gain !== 'other-way');
  expect(named.length).toBeGreaterThan(0);
  expect(named.map(({ payable }) => payable)).toEqual(named.map(() => false));
  expect(poor.lines).toEqual([]);
  expect(poor.plan.nextSteps.map(({ id }) => id)).not.toContain('find-out-first');
});
