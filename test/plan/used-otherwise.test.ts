import { describe, expect, test } from 'vitest';
import { loadsIn } from '../../src/advice/ride/route-loads';
import { KWH_PER_MILE, vehicleOf } from '../../src/home/vehicle';
import { SyntheticYears } from '../../src/home/weather/synthetic-years';
import type { RouteKind } from '../../src/kinds/route-kind';
import { neededForEveryStart } from '../../src/outage/every-start';
import { startsOfPieces } from '../../src/outage/season-pieces';
import { valuesInSeason } from '../../src/outage/season-starts';
import { ladderOf } from '../../src/plan/ladder/ladder';
import { energyOf } from '../../src/plan/ride-through/battery-ride';
import { walkLadder } from '../../src/plan/ride-through/ladder-walk';
import { neighborsOf } from '../../src/plan/ride-through/neighbors';
import { seasonNet } from '../../src/plan/ride-through/season-net';
import { variantsOf } from '../../src/plan/ride-through/variants';
import { walkedRide } from '../../src/plan/ride-through/walked-ride';
import { total } from '../../src/routes/costs';
import { english } from '../../src/words/en';
import { sayHowLong } from '../../src/words/en/routes/say-how-long';
import { planOf } from '../households/read-household';

const withVehicle = {
  'goal-hours': 24,
  'own-sources': ['ev-outlet'],
  'vehicle-kind': 'battery-only',
  'vehicle-kwh': 60,
  'vehicle-watts': 3600,
  'vehicle-miles': 40,
};
const homeOf = (away: string) => planOf('mill-lane', { ...withVehicle, 'vehicle-away': away });
const atHome = homeOf('home');
const atWork = homeOf('work-hours');
const drawn = new SyntheticYears(atHome.home, 4);
const routeOf = (plan: typeof atHome, kind: RouteKind) =>
  plan.routes.find((route) => route.kind === kind)!;

describe('a vehicle', () => {
  test('gives what stands in it less the miles kept', () => {
    const store = vehicleOf(atHome.home.facts)!;
    expect(store.reserveKwh).toBeCloseTo(40 * KWH_PER_MILE, 9);
    expect(store.storeKwh).toBeCloseTo(0.7 * 60 - 40 * KWH_PER_MILE, 9);
    expect(store.fullStoreKwh).toBeCloseTo(60 - 40 * KWH_PER_MILE, 9);
    expect(routeOf(atHome, 'vehicle').usableKwh).toBeCloseTo(store.storeKwh, 9);
  });

  test('of an unknown kind is no store', () => {
    const plan = planOf('mill-lane', { ...withVehicle, 'vehicle-kind': 'not sure' });
    expect(vehicleOf(plan.home.facts)).toBeNull();
    expect(routeOf(plan, 'vehicle').usableKwh).toBeNull();
  });

  test('that is away in working hours reaches no goal, and fails because it is away', () => {
    const route = routeOf(atWork, 'vehicle');
    expect(route.lasting.reachesGoal).toBe(false);
    expect(sayHowLong(route.lasting)).toMatch(/You said it is away about 10 hours a day/);
    const unsure = sayHowLong(routeOf(homeOf('not sure'), 'vehicle').lasting);
    expect(unsure).toMatch(/away about/);
    expect(unsure).not.toContain('You said');
    const ride = walkedRide(atWork.home, drawn, route, 'winter');
    expect(ride.failsFirst.code).toBe('vehicle-away');
    expect(english.basis(ride.basis)).toMatch(/a sample for a vehicle, 70 % charged/);
    // Of 24 hours ten are always away.
    expect(ride.odds.must!.find((one) => one.hours === 24)!.season).toBe(0);
    expect(ride.unservedHours).toBeCloseTo(10, 9);
  });

  test('kept at home, and filled before, never does worse', () => {
    const route = routeOf(atWork, 'vehicle');
    const [home, full] = variantsOf(atWork.home, drawn, route, 'winter');
    const away = walkedRide(atWork.home, drawn, route, 'winter').odds.must!;
    expect(home!.use.code).toBe('vehicle-stays-home');
    expect(home!.share).toBeGreaterThan(away.find((one) => one.hours === 24)!.season);
    expect(full!.share).toBeGreaterThanOrEqual(home!.share);
    // Where it is never away, only the filling is told apart.
    expect(variantsOf(atHome.home, drawn, routeOf(atHome, 'vehicle'), 'winter')).toHaveLength(1);
  });
});

describe('refills', () => {
  const plan = planOf('birch-street', {
    'goal-hours': 72,
    'fuel-refill': 'likely',
    'fuel-refill-days': 1,
  });
  const cold = new SyntheticYears(plan.home, 4);
  const route = routeOf(plan, 'engine-cords');

  test('are told beside the plan and never counted in it', () => {
    const own = walkedRide(plan.home, cold, route, 'winter').odds.must!;
    const without = own.find((one) => one.hours === 72)!.season;
    const [refilled] = variantsOf(plan.home, cold, route, 'winter');
    expect(english.otherUse(refilled!.use)).toMatch(
      /as much fuel again every 24 h, which you call likely/,
    );
    expect(refilled!.share).toBeGreaterThan(without);
  });

  test('that nobody counts on, or that come after the goal, are not told', () => {
    const each: Record<string, string | number>[] = [
      { 'fuel-refill': 'no' },
      { 'fuel-refill': 'not sure' },
      { 'fuel-refill': 'sure', 'fuel-refill-days': 3 },
    ];
    for (const changed of each) {
      const other = planOf('birch-street', { 'goal-hours': 72, ...changed });
      expect(variantsOf(other.home, cold, routeOf(other, 'engine-cords'), 'winter')).toEqual([]);
    }
  });
});

describe('the sizes beside a route', () => {
  const plan = planOf('mill-lane', { 'goal-hours': 48 });
  const few = new SyntheticYears(plan.home, 4);
  const beside = (kind: RouteKind) => neighborsOf(plan.home, few, routeOf(plan, kind), 'winter');

  test('have better odds for more battery and for more fuel, and worse for less', () => {
    for (const kind of ['battery-circuits', 'battery-engine', 'engine-cords'] as const) {
      const all = beside(kind);
      const [less, more] = [false, true].map((larger) =>
        all
          .filter(({ step }) => step.larger === larger && ['battery', 'fuel'].includes(step.code))
          .map((one) => one.odds!),
      ) as [number[], number[]];
      expect(more.length).toBeGreaterThan(0);
      expect(Math.max(0, ...less)).toBeLessThanOrEqual(Math.min(...more));
    }
  });

  test('are counted from the hours of the season alone, as from all hours of the record', () => {
    const route = routeOf(plan, 'battery-circuits');
    const { pieces, netKwh } = seasonNet(plan.home, few, route, { season: 'winter' });
    const loads = loadsIn(plan.home, route, 'must')!;
    const all = energyOf(few, route, { loads, season: 'winter' }).netKwh;
    expect(netKwh.length).toBeLessThan(all.length / 3);
    const needed = startsOfPieces(pieces, neededForEveryStart(netKwh, 48));
    const ofAll = valuesInSeason(pieces.season, neededForEveryStart(all, 48));
    expect(needed.length).toBe(ofAll.length);
    for (const [start, kwh] of needed.entries()) {
      if (Math.abs(kwh - ofAll[start]!) > 1e-9) expect(kwh).toBe(ofAll[start]);
    }
  });

  test('are priced by the same parts with one exchanged: low ends together, high ends together', () => {
    const route = routeOf(plan, 'battery-circuits');
    const [smaller] = beside('battery-circuits');
    const rest = total(route.parts.filter((part) => part.equipmentClass !== 'battery'));
    const battery = route.parts.find((part) => part.equipmentClass === 'battery')!;
    const perKwh = battery.costUsd.low / battery.units;
    // To the ten dollars a price is rounded to.
    expect(
      Math.abs(smaller!.costUsd.low - rest.low - perKwh * smaller!.nameplateKwh!),
    ).toBeLessThan(10);
    expect(smaller!.costUsd.low).toBeLessThan(route.costUsd.low);
    expect(smaller!.costUsd.high).toBeLessThan(route.costUsd.high);
  });

  test('a pack or an engine that cannot start or run the loads has no odds', () => {
    const small = beside('engine-cords').find(
      ({ step }) => step.code === 'generator' && !step.larger,
    );
    expect(small!.odds).toBeNull();
    expect(beside('power-pack').map(({ step }) => step.code)).toContain('pack');
  });
});

describe('the order of switching off, walked', () => {
  const plan = planOf('ridge-road', { 'goal-hours': 168 });
  const cold = new SyntheticYears(plan.home, 4);
  const route = routeOf(plan, 'battery-engine');
  const steps = ladderOf(plan.home, route);
  const walked = walkLadder(plan.home, cold, route, steps, 'winter');

  test('keeps the steps and says what each buys, in hours of two weeks at most', () => {
    expect(walked.steps.map((step) => step.switchOff)).toEqual(steps.map((step) => step.switchOff));
    const gains = walked.steps.map((step) => step.gainsHours).filter((hours) => hours !== null);
    expect(gains.length).toBeGreaterThan(0);
    for (const hours of gains) expect(hours).toBeGreaterThanOrEqual(0.5);
    expect(gains.reduce((sum, hours) => sum + hours, 0)).toBeLessThanOrEqual(336);
  });

  test('has both counts of what a step buys, and of what stays on to the end', () => {
    const careful = walked.steps.map((step) => step.carefulGainsHours).filter((h) => h !== null);
    expect(careful.length).toBeGreaterThan(0);
    for (const hours of careful) expect(hours).toBeGreaterThanOrEqual(0.5);
    const { share, standardError, carefulShare } = walked.variant!;
    expect(carefulShare).toBeLessThanOrEqual(share + 2 * (standardError ?? 0));
  });

  test('what stays on to the end rides through no less than everything did without it', () => {
    const everything = walkLadder(
      plan.home,
      cold,
      route,
      steps.map((step) => ({ ...step, switchOff: [], lessens: [] })),
      'winter',
    );
    expect(everything.variant).toBeNull();
    const all = walkedRide(plan.home, cold, route, 'winter').odds.must!;
    const without = all.find((one) => one.hours === 168)!;
    // Two standard errors: one is a sample of other starts than the other.
    expect(walked.variant!.share).toBeGreaterThanOrEqual(
      without.season - 2 * (without.standardError ?? 0),
    );
  });

  test('buys nothing where the gas is piped', () => {
    const piped = { ...route, usableKwh: null, fuel: { ...route.fuel!, atHand: null } };
    const none = walkLadder(plan.home, cold, piped, steps, 'winter');
    expect(none.variant).toBeNull();
    for (const step of none.steps) {
      expect(step.gainsHours).toBeNull();
      expect(step.carefulGainsHours).toBeNull();
    }
  });
});
