import { expect, test } from 'vitest';
import { fridgeSheet } from '../../../src/papers/sheets/fridge';
import { daysOfCase } from '../../../src/plan/ways/days-of-case';
import { english } from '../../../src/words/en';
import { planOf } from '../../households/read-household';

const hour = (i: number, servedKw: number, chargeKwh: number) => ({
  hour: i,
  loadKw: 0.1,
  servedKw,
  sunKw: 0,
  chargeKwh,
  fuelLeft: null,
});

test('a case of 36 h has two days, with what was served and when it stopped', () => {
  // 0.1 kW from 3 kWh: 30 h.
  const hours = Array.from({ length: 36 }, (_, i) =>
    hour(i, i < 30 ? 0.1 : 0, Math.max(0, 3 - 0.1 * (i + 1))),
  );
  const days = daysOfCase({ month: 0, hourOfDay: 0, hours, endsAfter: 30 });
  expect(days.map((day) => day.afterHours)).toEqual([24, 36]);
  expect(days[0]).toMatchObject({ stoppedAfter: null, fuelLeft: null });
  expect(days[0]!.servedKwh).toBeCloseTo(2.4, 9);
  expect(days[0]!.chargeKwh).toBeCloseTo(0.6, 9);
  expect(days[1]!.stoppedAfter).toBe(30);
});

test('on the sixth floor the pack stops on the first day as usual, and never thriftily', () => {
  const { days, routes, usual, thrifty } = planOf('tower-six').waysOfLiving;
  expect(days!.usual[0]!.stoppedAfter).toBeLessThan(24);
  expect(days!.thrifty.map((day) => day.stoppedAfter)).toEqual([null, null]);
  // By the hour it is the same energy as by the day.
  for (const profile of [usual, thrifty]) {
    const kwh = profile.wattsByHour.reduce((sum, watts) => sum + watts, 0) / 1000;
    expect(kwh).toBeCloseTo(profile.kwhPerDay.value, 6);
  }
  expect(days!.thrifty[1]!.servedKwh).toBeCloseTo(2 * thrifty.kwhPerDay.value, 1);
  expect(routes[0]).toMatchObject({ kind: 'power-pack', sizedFor: 'thrifty' });
  expect(routes[0]!.thrifty.reaches).toBe(true);
  expect(routes[0]!.usual.reaches).toBe(false);
});

test('the sheet of the night says what its hours hang on where the route is sized for thrift, and only there', () => {
  const lines = (name: string) => JSON.stringify(fridgeSheet(planOf(name), english).blocks);
  expect(lines('tower-six')).toContain('Only while you live thriftily: battery lanterns');
  expect(lines('tower-six')).toContain('internet from 7 until 8 am and 7 until 9 pm');
  const usual = ['birch-street', 'ridge-road', 'mill-lane'].filter(
    (name) => planOf(name).advice.route.way === 'usual',
  );
  expect(usual.length).toBeGreaterThan(0);
  for (const name of usual) expect(lines(name)).not.toContain('thriftily');
});
