import { describe, expect, test } from 'vitest';
import { planMarkdown } from '../../src/papers/household/to-markdown';
import { fuelForGoal } from '../../src/plan/fuel/fuel-for-goal';
import type { Plan } from '../../src/plan/plan';
import { english } from '../../src/words/en';
import { sayHowLong } from '../../src/words/en/routes/say-how-long';
import { planOf } from '../households/read-household';

const plans: [string, Plan][] = [
  ...['birch-street', 'tower-six', 'ridge-road', 'mill-lane'].map((name): [string, Plan] => [
    name,
    planOf(name),
  ]),
  [
    'birch-street with life support',
    planOf('birch-street', {
      'medical-devices': ['oxygen-concentrator'],
      'second-source': ['none'],
      'device-safe-hours': 1,
    }),
  ],
];

describe.each(plans)('the two counts of %s', (_, plan) => {
  test('careful hours are never above the likely ones, on any route', () => {
    for (const { kind, lasting } of plan.routes) {
      if (lasting.hours === null) continue;
      const { low, value, high } = lasting.hours;
      expect(low, kind).toBeLessThanOrEqual(value);
      expect(value, kind).toBeLessThanOrEqual(high);
    }
  });

  test('where they differ, each route that gives hours names both', () => {
    for (const { kind, lasting, carries } of plan.routes) {
      if (lasting.hours === null || carries.length === 0) continue;
      const [low, likely] = [lasting.hours.low, lasting.hours.value].map(Math.round);
      if (low === likely) continue;
      expect(sayHowLong(lasting), kind).toContain('careful count');
      expect(sayHowLong(lasting), kind).toContain('about');
    }
  });

  test('careful odds of the goal are never better, and stand beside the likely ones', () => {
    const { routes, goalHours } = plan.rideThrough;
    for (const ride of routes.filter(({ odds }) => odds.must !== undefined && odds.must !== null)) {
      const likely = ride.odds.must!.find(({ hours }) => hours === goalHours)!;
      // Each count is a sample of starts; a hundredth is their noise.
      expect(ride.carefulShare, ride.kind).toBeLessThanOrEqual(likely.season + 0.01);
    }
    if (routes.length > 0) expect(planMarkdown(plan, english)).toMatch(/careful count \| /);
  });

  test('the careful count never takes less fuel', () => {
    for (const { fuel, kind } of plan.routes) {
      const need = fuel === null ? null : fuelForGoal(plan.home, fuel);
      if (need !== null) expect(need.careful, kind).toBeGreaterThanOrEqual(need.likely);
    }
  });

  test('the first page names both', () => {
    const front = planMarkdown(plan, english).split('\n# The details\n')[0]!;
    expect(front).toMatch(/How long(?: for the rest)?: (about .*careful count|It goes on)/);
  });
});

test('a size beside a route has both counts of odds, and the careful one is never above the likely', () => {
  const steps = ['birch-street', 'tower-six', 'ridge-road', 'mill-lane'].flatMap((name) =>
    planOf(name).rideThrough.routes.flatMap((route) => route.neighbors),
  );
  expect(steps.length).toBeGreaterThan(10);
  for (const { step, odds, carefulOdds } of steps) {
    if (odds === null) expect(carefulOdds, step.code).toBeNull();
    // One is a sample of the starts of the other.
    else expect(carefulOdds!, step.code).toBeLessThanOrEqual(odds + 0.03);
  }
  expect(planMarkdown(planOf('tower-six'), english)).toMatch(
    /a larger pack of [^\n]*\(careful count /,
  );
});
