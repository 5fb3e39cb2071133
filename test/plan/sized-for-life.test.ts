import { describe, expect, test } from 'vitest';
import { batteryStepsKwh } from '../../src/tables/generic-steps';
import { sayHowLong } from '../../src/words/en/routes/say-how-long';
import { planOf } from '../households/read-household';

type Plan = ReturnType<typeof planOf>;
const base = { 'goal-hours': 72, 'device-safe-hours': 1 };
const batteryOf = (plan: Plan) => plan.routes.find((one) => one.kind === 'battery-solar')!;

/** The smallest step whose usable share of its nameplate holds so much. */
function stepFor(plan: Plan, usableKwh: number): number | undefined {
  const { nameplateKwh, usableKwh: usable } = batteryOf(plan);
  const share = usable! / nameplateKwh!;
  return batteryStepsKwh().find((kwh) => kwh * share >= usableKwh);
}

describe.each([
  ['depends on a device', ['oxygen-concentrator'], true],
  ['may depend on one, nobody knows', 'not sure', true],
  ['depends on none', ['none'], false],
] as const)('where somebody %s', (_, devices, byYears) => {
  const plan = planOf('mill-lane', { ...base, 'medical-devices': devices as never });
  const route = batteryOf(plan);
  const { nineOutagesInTenKwh, nineYearsInTenKwh } = route.sizeByOdds!;

  test('the battery holds what its measure asks, or says what it would take', () => {
    expect(nineYearsInTenKwh).toBeGreaterThanOrEqual(nineOutagesInTenKwh);
    const asked = byYears ? nineYearsInTenKwh : nineOutagesInTenKwh;
    if (route.lasting.reachesGoal) {
      expect(route.nameplateKwh).toBe(stepFor(plan, asked));
    } else {
      expect(sayHowLong(route.lasting)).toContain('would take about');
      expect(stepFor(plan, asked) ?? Infinity).toBeGreaterThan(route.nameplateKwh!);
    }
  });

  test('and the words name the measure', () => {
    expect(sayHowLong(route.lasting)).toMatch(
      byYears ? /in 9 years in 10, whenever it starts/ : /9 in 10 outages/,
    );
    expect(route.notes.includes('sized-for-life')).toBe(byYears);
  });
});
