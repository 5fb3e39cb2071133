import { describe, expect, test } from 'vitest';
import { sampledStarts } from '../../src/advice/ride/sampled-starts';
import type { Walkable } from '../../src/advice/ride/walkable';
import { SyntheticYears } from '../../src/home/weather/synthetic-years';
import { hoursSurvived } from '../../src/outage/hours-survived';
import { netEnergy } from '../../src/outage/net-energy';
import { quantileInPlace } from '../../src/outage/quantile';
import { seasonMonths } from '../../src/outage/season';
import { shareOfSeason } from '../../src/outage/season-starts';
import { unservedByMonth } from '../../src/outage/unserved-by-month';
import { sampleOutages } from '../../src/outage/walk/sampled-odds';
import { walkOutage } from '../../src/outage/walk/walk';
import { failingOf, failsFirst } from '../../src/plan/ride-through/failing';
import { goalWalks } from '../../src/plan/ride-through/goal-walks';
import { walkedRide } from '../../src/plan/ride-through/walked-ride';
import { limitsOf, monthsOf } from '../../src/routes/battery-hours';
import { english } from '../../src/words/en';
import { planOf } from '../households/read-household';

const plan = planOf('mill-lane', { 'goal-hours': 72 });
const drawn = new SyntheticYears(plan.home, 4);
const loadKw = drawn.loadKw(plan.mustRun);
const sun = drawn.sunKwhPerKw()!;
const solarKw = Float64Array.from(sun, (kwh) => 2 * kwh);
const limits = limitsOf(7.6);
const capKwh = 9;
const energy = netEnergy({ loadKw, supplyKw: solarKw, limits });

/** A battery with 2 kW of sun in winter; its hours can be passed over exactly, which is what the walks are held to. */
const battery: Walkable = {
  system: { battery: { capKwh, limits }, generator: null, vehicle: null, ladder: [] },
  record: { loadsKw: [loadKw], solarKw },
  startKwh: capKwh,
  months: monthsOf.winter,
};

describe('walks of a battery', () => {
  test('from every start hour have the share in winter that the passes give', () => {
    const survived = hoursSurvived({ ...energy, capKwh, limitHours: 72 });
    const [day, three] = sampleOutages({
      ...battery,
      lengths: [24, 72],
      everyHours: 1,
      seasonMonths: seasonMonths(monthsOf.winter),
      untilFailure: true,
    });
    const exact = (hours: number) =>
      shareOfSeason(monthsOf.winter, survived.length, (start) => survived[start]! >= hours);
    expect(day!.season!.share).toBeCloseTo(exact(24), 9);
    expect(three!.season!.share).toBeCloseTo(exact(72), 9);
    expect(three!.season!.share).toBeLessThan(day!.season!.share);
  });

  test('fail when the passes say', () => {
    const survived = hoursSurvived({ ...energy, capKwh, limitHours: 336 });
    const starts = sampledStarts(survived.length, monthsOf.winter);
    const whole = starts.map((start) => Math.floor(survived[start]! + 1e-9));
    const failed = whole.filter((hours) => hours < 336);
    const found = failingOf(battery);
    expect(found.failure).toBe('battery-empty');
    expect(found.share).toBeCloseTo(failed.length / starts.length, 9);
    expect(found.afterHours).toBe(quantileInPlace(Float64Array.from(failed), 0.5));
  });

  test('leave as much unserved as the passes over every start hour, to the width of the sample', () => {
    // Without sun every outage of three days outlasts 9 kWh, and the needs lie close together.
    const noSun = new Float64Array(loadKw.length);
    const dark = { ...battery, record: { ...battery.record, solarKw: noSun } };
    const walked = goalWalks(dark, 72);
    const { months } = unservedByMonth({
      ...netEnergy({ loadKw, supplyKw: noSun, limits }),
      capKwh,
      startKwh: capKwh,
      outageHours: 72,
      dischargeEfficiency: limits.dischargeEfficiency,
    });
    const exact = (months[11]! + months[0]! + months[1]!) / 3;
    const { record, system, startKwh } = dark;
    const each = sampledStarts(loadKw.length, monthsOf.winter).map(
      (start) =>
        walkOutage({ system, record, start, outageHours: 72, startKwh }).unservedKwh - exact,
    );
    const spread = Math.sqrt(each.reduce((sum, off) => sum + off ** 2, 0) / each.length);
    // Three standard errors of the mean of the sample, and the sample is no wider than a tenth of the need.
    expect(spread / exact).toBeLessThan(0.1);
    expect(Math.abs(walked.unservedKwh - exact)).toBeLessThan(
      (3 * spread) / Math.sqrt(each.length),
    );
    expect(walked.unservedHours).toBeGreaterThan(0);
    expect(walked.unservedHours).toBeLessThan(72);
  });

  test('name the inverter where the loads are too much for it, from the first hour', () => {
    const weak = { ...battery.system.battery!, limits: { ...limits, dischargeKw: 0.01 } };
    const dark = { ...battery.record, solarKw: new Float64Array(loadKw.length) };
    const found = failingOf({
      ...battery,
      record: dark,
      system: { ...battery.system, battery: weak },
    });
    expect(found).toEqual({ failure: 'power-limit', share: 1, afterHours: 0 });
    const first = failsFirst(found, { fuel: null, lasting: plan.routes[0]!.lasting });
    expect(english.failsFirst(first)).toBe(
      'first, the loads together are more than the source gives, in the first hour by the likely count',
    );
  });

  test('come upon every hour of the day', () => {
    const hours = new Set(sampledStarts(100 * 8760, monthsOf.winter).map((start) => start % 24));
    expect(hours.size).toBe(24);
  });
});

describe('walks of an engine', () => {
  const cords = plan.routes.find((route) => route.kind === 'engine-cords')!;
  const withGallons = (value: number) =>
    walkedRide(
      plan.home,
      drawn,
      { ...cords, fuel: { ...cords.fuel!, atHand: { ...cords.fuel!.atHand!, value, low: value } } },
      'winter',
    );

  test('burn fuel hour by hour in the hard case, until it is gone', () => {
    const { badCase, failsFirst: first, unservedHours } = withGallons(5);
    const fuel = badCase!.hours.map((hour) => hour.fuelLeft!);
    expect(fuel).toHaveLength(72);
    for (let h = 1; h < fuel.length; h++) expect(fuel[h]!).toBeLessThanOrEqual(fuel[h - 1]!);
    expect(fuel[badCase!.endsAfter! - 1]!).toBeGreaterThan(0);
    expect(fuel.at(-1)).toBe(0);
    expect(english.failsFirst(first)).toMatch(/^first, the fuel runs out, after \d+ h/);
    // What is gone after so many hours of three days is missing for the rest of them.
    expect(unservedHours).toBeGreaterThan(0.5 * (72 - badCase!.endsAfter!));
  });

  test('leave nothing unserved with fuel for a month', () => {
    const { unservedHours, unservedKwh, badCase } = withGallons(300);
    expect(unservedHours).toBe(0);
    expect(unservedKwh).toBe(0);
    expect(badCase!.endsAfter).toBeNull();
  });
});

test('every battery route that works has its odds, in the plan or beside it', () => {
  const { routes, others } = plan.rideThrough;
  const told = [...routes, ...others].map((one) => one.kind);
  const able = plan.routes.filter(
    (route) => route.verdict !== 'cannot' && route.usableKwh !== null && route.carries.length > 0,
  );
  expect(able.length).toBeGreaterThan(3);
  for (const { kind } of able) expect(told).toContain(kind);
  expect(new Set(told).size).toBe(told.length);
});
