import { expect, test } from 'vitest';
import { planMarkdown } from '../../../src/papers/household/to-markdown';
import { fuelForGoal } from '../../../src/plan/fuel/fuel-for-goal';
import { english } from '../../../src/words/en';
import { planOf } from '../../households/read-household';

/** Propane from a tank, five days. */
const plan = planOf('ridge-road');
const { fuel, lasting } = plan.advice.route;

test('the fuel for the goal is the burn of a day times its days, by both counts', () => {
  const need = fuelForGoal(plan.home, fuel!)!;
  const days = plan.home.goalHours.value / 24;
  const beside = fuel!.besidePerDay;
  expect(need.likely).toBe(Math.ceil(days * (fuel!.perDay.value + (beside?.value ?? 0))));
  expect(need.careful).toBeGreaterThan(need.likely);
  // The hours and the gallons are one count: the tank's careful contents over the careful hours burn the same a day.
  const perDay = (24 * (fuel!.tank ?? fuel!.atHand)!.low) / lasting.hours!.low;
  expect(need.careful).toBe(Math.ceil(days * perDay - 1e-9));
});

test('the gauge stands for gallons: percent of the tank times its size holds them, and no tank is asked for over 80 %', () => {
  const { gauge, keepInTank, careful } = fuelForGoal(plan.home, fuel!)!;
  expect(keepInTank).toBeGreaterThanOrEqual(careful);
  expect(gauge.length).toBeGreaterThan(0);
  for (const { tankGal, percent } of gauge) {
    expect((tankGal * percent) / 100).toBeGreaterThanOrEqual(keepInTank!);
    expect((tankGal * (percent - 1)) / 100).toBeLessThan(keepInTank!);
    expect(percent).toBeLessThanOrEqual(80);
  }
  expect(planMarkdown(plan, english)).toContain(`keep the gauge above ${gauge[0]!.percent} %`);
});

test('hungry use burns more than a thirsty generator alone', () => {
  const { value, low, high } = fuel!.perDay;
  // The spread of the generator is near even to both sides; what is beyond it is the use.
  expect(high / value).toBeGreaterThan(value / low);
});

const front = (of: ReturnType<typeof planOf>) =>
  planMarkdown(of, english).split('\n# The details\n')[0]!;

test('the first page says how much to keep, for a tank on its gauge, for cans in gallons', () => {
  const { gauge, keepInTank } = fuelForGoal(plan.home, fuel!)!;
  expect(front(plan)).toMatch(
    new RegExp(
      `Fuel for .*, careful count: keep at least ${keepInTank} gal in the tank; keep the gauge above`,
    ),
  );
  expect(front(plan)).toContain(`${gauge[0]!.percent} % on a tank of`);
  const cans = planOf('birch-street');
  const need = fuelForGoal(cans.home, cans.advice.route.fuel!)!;
  expect(need.keepInTank).toBeNull();
  expect(front(cans)).toContain(`, careful count: ${need.careful} gal of gasoline`);
});

test('a first page without a store of fuel says nothing of one', () => {
  expect(front(planOf('tower-six'))).not.toContain('Fuel for');
});
