import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { SyntheticYears } from '../../src/home/weather/synthetic-years';
import { planMarkdown } from '../../src/papers/household/to-markdown';
import { batteryRide } from '../../src/plan/ride-through/battery-ride';
import { LENGTHS, lengthsFor } from '../../src/plan/ride-through/lengths';
import { walkedRide } from '../../src/plan/ride-through/walked-ride';
import { IDLE_KW, limitsOf } from '../../src/routes/battery-hours';
import type { Route } from '../../src/routes/route';
import { english } from '../../src/words/en';
import { planOf } from '../households/read-household';

const plan = planOf('mill-lane', { 'goal-hours': 72 });
const drawn = new SyntheticYears(plan.home, 4);
const route = (kind: Route['kind']) => plan.routes.find((r) => r.kind === kind)!;
const circuits = route('battery-circuits');
const solar = route('battery-solar');
const must = (ride: ReturnType<typeof batteryRide>) => ride.odds.must!;

describe('odds of a battery', () => {
  test('agree with a plain walk of the hours from sampled starts', () => {
    const capKwh = 9;
    const ride = batteryRide(
      plan.home,
      drawn,
      { ...solar, usableKwh: capKwh, solarKw: 2 },
      'winter',
    );
    const load = drawn.loadKw(plan.mustRun);
    const sun = drawn.sunKwhPerKw()!;
    const { chargeEfficiency, dischargeEfficiency, chargeKw } = limitsOf(
      solar.power!.continuousWatts / 1000,
    );
    const rides = (start: number, hours: number) => {
      let charge = capKwh;
      for (let h = 0; h < hours; h++) {
        const at = (start + h) % load.length;
        const surplus = sun[at]! * 2 - load[at]!;
        charge +=
          surplus >= 0
            ? Math.min(surplus, chargeKw) * chargeEfficiency
            : surplus / dischargeEfficiency;
        charge = Math.min(capKwh, charge - IDLE_KW);
        if (charge < -1e-9) return false;
      }
      return true;
    };
    for (const hours of [12, 24, 72]) {
      let rode = 0;
      for (let start = 0; start < load.length; start++) if (rides(start, hours)) rode += 1;
      expect(must(ride).find((one) => one.hours === hours)!.year).toBeCloseTo(
        rode / load.length,
        9,
      );
    }
  });

  test('fall with the length, and months average to the year', () => {
    const odds = must(
      batteryRide(plan.home, drawn, { ...solar, usableKwh: 12, solarKw: 4 }, 'winter'),
    );
    expect(odds.map((one) => one.hours)).toEqual(lengthsFor(plan.home.goalHours.value));
    for (const hours of LENGTHS) expect(odds.some((one) => one.hours === hours)).toBe(true);
    for (let i = 1; i < odds.length; i++)
      expect(odds[i]!.year).toBeLessThanOrEqual(odds[i - 1]!.year);
    const days = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
    const mean =
      odds[2]!.months.reduce<number>((sum, share, m) => sum + share! * days[m]!, 0) / 365;
    expect(mean).toBeCloseTo(odds[2]!.year, 9);
  });

  test('never fall with a larger battery or more sun, with the same inverter and no ladder', () => {
    const size = fc.record({
      kwh: fc.double({ min: 1, max: 30, noNaN: true }),
      kw: fc.double({ min: 0, max: 6, noNaN: true }),
    });
    fc.assert(
      fc.property(
        size,
        fc.double({ min: 0, max: 10, noNaN: true }),
        fc.double({ min: 0, max: 3, noNaN: true }),
        (at, moreKwh, moreKw) => {
          const ride = (usableKwh: number, solarKw: number) =>
            must(batteryRide(plan.home, drawn, { ...solar, usableKwh, solarKw }, 'winter'));
          const small = ride(at.kwh, at.kw);
          const large = ride(at.kwh + moreKwh, at.kw + moreKw);
          for (const [i, one] of small.entries()) {
            expect(large[i]!.year).toBeGreaterThanOrEqual(one.year - 1e-12);
          }
        },
      ),
      { seed: 20261125, numRuns: 12 },
    );
  });

  test('with more loads are never better', () => {
    const { odds } = batteryRide(plan.home, drawn, circuits, 'winter');
    const at = (scope: 'must' | 'good' | 'all') =>
      (odds[scope] ?? odds.must)!.map((one) => one.year);
    for (const [i, share] of at('all').entries()) expect(share).toBeLessThanOrEqual(at('must')[i]!);
  });

  test('the charge to keep is enough and never more than all of it', () => {
    const ride = batteryRide(plan.home, drawn, { ...circuits, usableKwh: 30 }, 'winter');
    for (const share of ride.keepByMonth!) {
      expect(share).toBeGreaterThan(0);
      expect(share).toBeLessThanOrEqual(1);
    }
    const { median, oneInTen, worst } = ride.chargeAtStart!;
    expect(median!).toBeLessThanOrEqual(oneInTen!);
    expect(oneInTen!).toBeLessThanOrEqual(worst!);
  });

  test('a drawn hard case starts full and ends when the odds say so', () => {
    const ride = batteryRide(plan.home, drawn, { ...circuits, usableKwh: 5 }, 'winter');
    const bad = ride.badCase!;
    expect(bad.hours[0]!.chargeKwh).toBeLessThanOrEqual(5);
    expect(bad.endsAfter).toBeGreaterThan(0);
    for (const hour of bad.hours) expect(hour.chargeKwh).toBeGreaterThanOrEqual(0);
  });
});

describe('an engine', () => {
  const cords = route('engine-cords');
  test('never rides through less with more fuel', () => {
    const odds = [1, 3, 10, 30].map((gallons) => {
      const fuel = { ...cords.fuel!, atHand: { ...cords.fuel!.atHand!, value: gallons } };
      return walkedRide(plan.home, drawn, { ...cords, fuel }, 'winter').odds.must!.map(
        (one) => one.year,
      );
    });
    for (let i = 1; i < odds.length; i++) {
      for (const [l, share] of odds[i]!.entries()) {
        expect(share).toBeGreaterThanOrEqual(odds[i - 1]![l]!);
      }
    }
    expect(odds[0]![4]).toBe(0);
  });

  test('alone is counted from every hour, and says what fails first', () => {
    const ride = walkedRide(plan.home, drawn, cords, 'winter');
    expect(english.basis(ride.basis)).toMatch(
      /^every hour of 4 drawn years .* on a generator alone; .*no refill counted$/,
    );
    expect(ride.failsFirst.code).toBe('fuel-gone');
  });
});

describe('homes at the edge give a true plan', () => {
  const edges: [string, Record<string, string | number | string[]>, RegExp][] = [
    ['a territory', { 'home-zip': '00901' }, /ZIP/],
    ['the far north, with polar night', { 'home-zip': '99723' }, /ZIP/],
    ['a ZIP nobody has', { 'home-zip': '00000' }, /ZIP/],
    [
      'a roof larger than the home',
      { 'roof-area': 9000, 'home-area': 500 },
      /cannot be that much larger than the home/,
    ],
    ['no roof', { 'roof-face': 'none' }, /no room for panels on a roof/],
    ['a roof too small for panels', { 'roof-area': 30 }, /too little to help/],
    [
      'nothing that must run',
      { 'must-run': ['none'], 'nice-run': ['none'] },
      /nothing was named that must keep running/i,
    ],
    ['no fuel kept', { 'gasoline-gallons': 0, 'engine-place': 'open-20ft' }, /gal of gasoline/],
    ['a goal of 400 hours', { 'goal-hours': 400 }, /16 days 16 h/],
    ['a goal of two hours', { 'goal-hours': 2 }, /for 2 h/],
    ['all shade', { 'roof-shade': 'most', 'roof-face': 'north' }, /solar/],
  ];
  test.each(edges)(
    '%s',
    (_, changed, says) => {
      const text = planMarkdown(planOf('mill-lane', changed), english);
      expect(text).toMatch(says);
      expect(text).not.toMatch(/NaN|Infinity|undefined|null/);
    },
    20_000,
  );
});

test('chances are told without certainty', () => {
  expect([0, 0.004, 0.5, 0.994, 1].map(english.share)).toEqual([
    'fewer than 1',
    'fewer than 1',
    '50',
    '99',
    'more than 99',
  ]);
});
