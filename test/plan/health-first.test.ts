import { describe, expect, test } from 'vitest';
import { PACK_IDLE_WATTS } from '../../src/home/loads/pack-idle';
import { planMarkdown } from '../../src/papers/household/to-markdown';
import { english } from '../../src/words/en';
import { planOf } from '../households/read-household';

/** A CPAP on a pack that does not carry all of it for the goal. */
const plan = planOf('tower-six', { 'goal-hours': 52 });
const [front, details] = planMarkdown(plan, english).split('\n# The details\n') as [string, string];

describe('a pack that carries everything for less than the goal', () => {
  const { healthFirst, advice, home } = plan;
  const covered = healthFirst!.covered!;

  test('is shown also in its thrifty use, by the CPAP alone', () => {
    expect(advice.route.kind).toBe('power-pack');
    expect(advice.route.lasting.reachesGoal).toBe(false);
    expect(healthFirst!.carried).toContain('cpap');
    // By hand: 34 W x 8 h a night, and the pack's own draw in the hours in which it is on, out of what is usable;
    // 5 % and more are lost on the way out. Nights are counted whole, so within a day of it.
    const perDayKwh = (8 * 34) / 1000 + (12 * PACK_IDLE_WATTS) / 1000;
    const days = (0.93 * advice.route.usableKwh!) / perDayKwh;
    expect(Math.abs(covered.likelyHours / 24 - days)).toBeLessThan(1.3);
    expect(covered.likelyHours).toBeGreaterThan(advice.route.lasting.hours!.value);
    expect(covered.likelyShare).toBeGreaterThan(0.99);
  });

  test('the careful count is never the better one', () => {
    expect(covered.carefulHours).toBeLessThanOrEqual(covered.likelyHours);
    expect(covered.carefulShare).toBeLessThanOrEqual(covered.likelyShare);
    for (const ride of plan.rideThrough.routes) {
      const likely = ride.odds.must!.find(({ hours }) => hours === plan.rideThrough.goalHours)!;
      expect(ride.carefulShare).toBeLessThanOrEqual(likely.season + 0.01);
    }
  });

  test('the first page says how long the devices are covered', () => {
    expect(front).toMatch(/How long(?: for the rest)?: .* The CPAP alone: about .*, careful .*\./);
    expect(home.goalHours.value).toBe(52);
    expect(details).toContain('through more than 99 of 100 outages of 2 days 4 h');
  });

  test('no step before the last switches a device off', () => {
    expect(home.loads.map(({ id }) => id)).toContain('cpap');
    for (const step of plan.ladder) expect(step.switchOff).not.toContain('cpap');
  });
});

test('at the hungry end odds are counted apart from the likely ones, and printed beside them', () => {
  const generator = planOf('mill-lane');
  const { routes, goalHours } = generator.rideThrough;
  const ride = routes.find(({ kind }) => kind === 'battery-engine')!;
  const likely = ride.odds.must!.find(({ hours }) => hours === goalHours)!;
  expect(ride.carefulShare).toBeLessThan(likely.season - 0.3);
  expect(planMarkdown(generator, english)).toMatch(/\| 24 h, careful count \| /);
  expect(generator.healthFirst).toBeNull();
});
