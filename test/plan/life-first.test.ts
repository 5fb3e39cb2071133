import { describe, expect, test } from 'vitest';
import { planMarkdown } from '../../src/papers/household/to-markdown';
import { mustCarried } from '../../src/routes/must-carried';
import { english } from '../../src/words/en';
import { frozenPlan } from '../frozen-plans';
import { answersOf, planOf } from '../households/read-household';

/** An invented home: a ventilator, no money, a battery nobody timed. */
const ventilator = {
  ...answersOf('tower-six'),
  'medical-devices': ['ventilator'],
  'device-safe-hours': 0,
  'device-battery-hours': 4,
  'device-battery-tested': 'no',
  'second-source': ['none'],
  'device-team': ['supplier'],
  'budget-now': 0,
  'budget-later': 0,
};
const plan = frozenPlan(ventilator, '2026-11-25', 5);
const front = (of: typeof plan) => planMarkdown(of, english).split('\n# The details\n')[0]!;

describe('where somebody cannot live without a device', () => {
  test('nothing is ever "what to buy": whom to call, the own battery, the second way and leaving come first', () => {
    const page = front(plan);
    expect(page).not.toContain('What to buy');
    const order = [
      'Call today',
      'own battery timed',
      'second way that needs no power',
      'Beside that',
    ];
    const at = order.map((text) => page.indexOf(text));
    expect(at.every((one) => one > 0)).toBe(true);
    expect([...at].sort((a, b) => a - b)).toEqual(at);
    expect(plan.lifeFirst!.callToday).toEqual(['clinician', 'power-company', 'fire-department']);
  });

  test('a battery nobody timed counts half', () => {
    expect(plan.lifeFirst!.ownBattery).toEqual({ toldHours: 4, tested: false, countedHours: 2 });
    const timed = frozenPlan({ ...ventilator, 'device-battery-tested': 'yes' }, '2026-11-25', 3);
    expect(timed.lifeFirst!.ownBattery.countedHours).toBe(4);
  });

  test('less than the leaving figure: leave when the power fails, or before the storm', () => {
    // A trip of half an hour: 3 x 0.5 + 2 = 3.5 h must be left; 2 h are counted.
    expect(plan.lifeFirst).toMatchObject({ leaveAtHours: 3.5, leaveAtOnce: true });
    expect(front(plan)).toMatch(
      /leave as soon as the power fails, or before a storm or a cut that is announced/,
    );
    const long = frozenPlan(
      { ...ventilator, 'device-battery-hours': 8, 'device-battery-tested': 'yes' },
      '2026-11-25',
      3,
    );
    expect(long.lifeFirst!.leaveAtOnce).toBe(false);
    expect(front(long)).toMatch(/leave while what you can carry .* still covers 3.5 h/);
  });
});

describe('what was told to run never vanishes', () => {
  const heat = planOf('tower-six', {
    'one-room': 'no',
    'must-run': ['heat', 'internet', 'phones', 'lights'],
  });

  test('electric heat stands in the job, beside what no backup carries', () => {
    expect(english.job(heat.job, heat.home)[0]).toContain('electric baseboard heat');
    expect(english.job(heat.job, heat.home)[1]).toContain(
      'The electric baseboard heat draws more than any backup',
    );
    expect(heat.advice.route.leavesOut.map((one) => one.load)).toContain('heat-strips');
  });

  test('the first page says that there is no heat, and when to leave', () => {
    const page = front(heat);
    expect(page).toMatch(/Expect no heat while the power is out: .*electric baseboard heat/);
    expect(page).toContain('leave before it stays below 60 °F');
    expect(page).toMatch(
      /What it does not carry, though it must keep running: electric baseboard heat/,
    );
    expect(heat.cautions.map((one) => one.id)).toContain('heat-off');
    expect(heat.comfortLost.heat).toEqual(['heat-strips']);
  });

  test('one home has one fraction', () => {
    for (const of of [heat, plan, planOf('birch-street'), planOf('ridge-road')]) {
      for (const route of of.routes.filter((one) => one.carries.length > 0)) {
        const { carried, of: all } = mustCarried(of.home, route);
        expect(all).toBe(of.mustRun.length);
        const ride = of.rideThrough.routes.find((one) => one.kind === route.kind)?.carries;
        if (ride !== undefined) expect(ride).toEqual({ things: carried, of: all });
        const money = of.money.routes.find((one) => one.kind === route.kind)?.ridden;
        if (money !== undefined) expect(money).toMatchObject({ carried, of: all });
        const missed = new Set(route.leavesOut.filter((one) => one.must).map((one) => one.load));
        expect(missed.size).toBe(all - carried);
      }
    }
  });
});
