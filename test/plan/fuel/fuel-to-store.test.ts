import { describe, expect, test } from 'vitest';
import { planMarkdown } from '../../../src/papers/household/to-markdown';
import { fuelToStore } from '../../../src/plan/fuel/fuel-to-store';
import { formatQuantity } from '../../../src/quantity/format-quantity';
import { onceStored } from '../../../src/routes/fuel/once-stored';
import { fuelStorage } from '../../../src/tables/fuel-storage';
import { namedValue } from '../../../src/tables/named-values';
import { english } from '../../../src/words/en';
import { sayIf } from '../../../src/words/en/routes/say-if';
import { planOf } from '../../households/read-household';

const limit = (id: string) => namedValue(fuelStorage, id).value;

describe('fuel for the goal', () => {
  test('three days at the burn of the plan, less what is kept, are the gallons to store', () => {
    const plan = planOf('birch-street');
    const gallons = Math.ceil(3 * plan.advice.route.fuel!.perDay.value);
    expect(gallons).toBeLessThanOrEqual(limit('gasoline-total-gal'));
    expect(plan.fuelToStore).toMatchObject({ moreGallons: gallons - 10, reachesGoal: true });
    const says = `Store ${gallons - 10} more gallons`;
    expect(plan.nextSteps.map((step) => english.step(step, plan.home)).join('\n')).toContain(says);
    expect(planMarkdown(plan, english)).toContain(
      `Approved cans for ${gallons - 10} more gal of gasoline`,
    );
    expect(plan.willNotDo.map(({ code }) => code)).toContain('whole-job-once-stored');
  });

  test('more than the usual limit is never sent for: the limit, how long it lasts, and other ways', () => {
    const { fuelToStore: found } = planOf('birch-street', { 'goal-hours': 168 });
    expect(found).toMatchObject({
      moreGallons: limit('gasoline-total-gal') - 10,
      reachesGoal: false,
      who: 'building or fire department',
    });
    expect(english.fuelToStore(found!)).toMatch(
      /and no more: 7 days .*25 gallons is a usual limit.*For the rest: a refill/,
    );
    // The same hours as beside the route: likely, and by the careful count.
    const { advice, home } = planOf('birch-street', { 'goal-hours': 168 });
    const then = onceStored(home, advice.route)!.route.lasting.hours!;
    const [likely, careful] = [then.value, then.low].map((h) => formatQuantity(Math.round(h), 'h'));
    expect(english.fuelToStore(found!)).toContain(
      `lasts about ${likely} (careful count ${careful})`,
    );
  });

  test('the limit is lower in a garage that is part of the house', () => {
    const { fuelToStore: found } = planOf('birch-street', { 'gasoline-place': 'attached-garage' });
    expect(limit('gasoline-attached-garage-gal')).toBeLessThan(limit('gasoline-total-gal'));
    expect(found).toMatchObject({ moreGallons: 0, reachesGoal: false });
    expect(english.fuelToStore(found!)).toContain('Store no more');
  });

  test('what is only assumed to be kept still has to be stored', () => {
    const plan = planOf('mill-lane', { 'gasoline-gallons': 0 });
    const gallons = Math.ceil(plan.advice.route.fuel!.perDay.value);
    expect(plan.fuelToStore!.moreGallons).toBe(gallons);
    expect(english.fuelToStore(plan.fuelToStore!)).toContain('none is kept now');
  });

  test('enough fuel, piped gas or no engine: nothing to store', () => {
    expect(planOf('birch-street', { 'gasoline-gallons': 25 }).fuelToStore).toBeNull();
    const piped = planOf('birch-street', { 'budget-later': 30_000, operators: 'none' });
    expect(piped.advice.route.kind).toBe('standby-engine');
    expect(piped.fuelToStore).toBeNull();
    expect(planOf('tower-six').fuelToStore).toBeNull();
  });

  test('fuel that may be stored counts where routes are weighed, and the front page says how long it lasts', () => {
    const plan = planOf('ridge-road', { 'gas-supply': 'none', 'gasoline-gallons': 5 });
    const { route, reason } = plan.advice;
    const { gallons } = onceStored(plan.home, route)!;
    expect(gallons).toBeLessThanOrEqual(limit('gasoline-total-gal'));
    const hours = (24 * gallons) / route.fuel!.perDay.value;
    // Everything for a day on stored fuel, which can be fetched again, goes before a part of it for longer.
    expect(route.kind).toBe('engine-inlet');
    expect(reason.code).toBe('nearest-all');
    expect(hours).toBeGreaterThanOrEqual(24);
    expect(hours).toBeLessThan(0.5 * plan.home.goalHours.value);
    expect(hours).toBeGreaterThan(2 * route.lasting.hours!.value);
    expect(Math.round(plan.fuelToStore!.thenHours!)).toBe(Math.round(hours));
    const stored = formatQuantity(Math.round(hours), 'h');
    const page = planMarkdown(plan, english);
    expect(page).toContain(`with ${gallons} gal stored about ${stored}`);
    const { perDay } = route.fuel!;
    expect(page).toContain(
      `What may not be kept has to be fetched, about ${formatQuantity(perDay.value, perDay.unit)}; nothing here counts on that.`,
    );
    // A battery that carries more of the loads for less of the time would win on the fuel at hand alone.
    const kindOf = (kind: string) => plan.routes.find((one) => one.kind === kind)!;
    const [battery, cords] = [kindOf('battery-circuits'), kindOf('engine-cords')];
    const share = (kind: typeof route, lasts: number) =>
      (kind.carries.length / plan.mustRun.length) * Math.min(1, lasts / plan.home.goalHours.value);
    const ofBattery = share(battery, battery.lasting.hours!.value);
    expect(ofBattery).toBeGreaterThan(share(cords, cords.lasting.hours!.value));
    const filled = onceStored(plan.home, cords)!.route.lasting.hours!.value;
    expect(share(cords, filled)).toBeGreaterThan(ofBattery);
  });

  test('everything for most of the time goes before a part of it for all of it', () => {
    const plan = planOf('birch-street', { 'goal-hours': 168 });
    const { route, reason } = plan.advice;
    const cords = plan.routes.find((one) => one.kind === 'engine-cords')!;
    expect(cords.leavesOut.filter((load) => load.must).map((one) => one.load)).toEqual([
      'furnace-gas',
    ]);
    expect(route.kind).toBe('engine-inlet');
    expect(reason.code).toBe('nearest-all');
    expect(plan.fuelToStore!.thenHours!).toBeGreaterThan(0.5 * plan.home.goalHours.value);
    expect(plan.fuelToStore!.thenHours!).toBeLessThan(plan.home.goalHours.value);
  });

  test('a propane tank too small for the goal is said in gallons', () => {
    const plan = planOf('ridge-road', { 'propane-gallons': 120 });
    const route = plan.routes.find((one) => one.kind === 'engine-inlet')!;
    const need = Math.ceil((route.fuel!.perDay.value * plan.home.goalHours.value) / 24);
    expect(need).toBeGreaterThan(route.fuel!.atHand!.value);
    const found = fuelToStore(plan.home, { ...plan.advice, route })!;
    expect(english.fuelToStore(found)).toContain(`about ${need} gallons of propane`);
    expect(found.who).toBe('gas fitter');
  });
});

test('an engine fed from the house tank is priced with the connection, not with cans', () => {
  const { route } = planOf('ridge-road').advice;
  expect(route.fuel?.fuel).toBe('propane');
  const codes = route.parts.map(({ called }) => called.code);
  expect(codes).toContain('connection-to-tank');
  expect(codes).not.toContain('cans');
  expect(codes).not.toContain('propane-cylinders');
  expect(route.ifs.map(sayIf).join('\n')).toContain(
    'a gas fitter agrees to feed the generator from the house tank',
  );
  expect(route.ifs.map(sayIf).join('\n')).toContain(
    'the dealer who owns the propane tank agrees in writing',
  );
});
