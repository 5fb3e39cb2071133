import { expect, test } from 'vitest';
import { sayHardCase } from '../../src/papers/household/details/say-hard-case';
import { planMarkdown } from '../../src/papers/household/to-markdown';
import { formatQuantity } from '../../src/quantity/format-quantity';
import { onceStored } from '../../src/routes/fuel/once-stored';
import { english } from '../../src/words/en';
import { planOf } from '../households/read-household';

/** Rows of the table as cells, the head left out. */
function rowsOf(plan: ReturnType<typeof planOf>): string[][] {
  const [, table] = sayHardCase(plan.rideThrough.routes[0]!, english);
  return table!
    .split('\n')
    .slice(2)
    .map((row) =>
      row
        .split('|')
        .slice(1, -1)
        .map((cell) => cell.trim()),
    );
}

test('the fuel left day by day is what was there less the idle burn and the burn for each kWh', () => {
  const plan = planOf('ridge-road');
  const { fuel, generator } = plan.advice.route;
  const { hours } = plan.rideThrough.routes[0]!.badCase!;
  const rows = rowsOf(plan);
  expect(rows.map(([after]) => after)).toEqual(['24 h', '48 h', '3 days', '4 days', '5 days']);
  // Two days apart show the line of burn against kWh: fuel = idle x hours + a x kWh, with one idle and one a.
  const atEndOf = (day: number) => hours[24 * day + 23]!.fuelLeft!;
  const left = [fuel!.atHand!.low, ...rows.map((_, day) => atEndOf(day))];
  const burned = rows.map((_, day) => left[day]! - left[day + 1]!);
  const kwh = rows.map((_, day) =>
    hours.slice(24 * day, 24 * day + 24).reduce((sum, hour) => sum + hour.loadKw, 0),
  );
  rows.forEach((row, day) => {
    expect(Number.parseFloat(row[1]!)).toBeCloseTo(kwh[day]!, 0);
    expect(Math.abs(Number.parseFloat(row[2]!) - atEndOf(day))).toBeLessThanOrEqual(0.5);
  });
  const [least, most] = [kwh.indexOf(Math.min(...kwh)), kwh.indexOf(Math.max(...kwh))];
  const perKwh = (burned[most]! - burned[least]!) / (kwh[most]! - kwh[least]!);
  const idle = (burned[least]! - perKwh * kwh[least]!) / 24;
  rows.forEach((_, day) => {
    expect(burned[day]).toBeCloseTo(24 * idle + perKwh * kwh[day]!, 6);
  });
  // A generator of its size burns about a twelfth of a gallon an hour at idle for each kW: common practice, no source.
  expect(idle / generator!.ratedKw).toBeGreaterThan(0.04);
  expect(idle / generator!.ratedKw).toBeLessThan(0.16);
});

test('a short outage goes by six hours, and ends in the step in which it ends', () => {
  const plan = planOf('tower-six', { 'budget-now': 700 });
  const { endsAfter } = plan.rideThrough.routes[0]!.badCase!;
  const rows = rowsOf(plan);
  expect(endsAfter).toBeLessThan(48);
  expect(rows.length).toBe(Math.ceil((endsAfter! + 1) / 6));
  expect(rows.at(-1)![2]).toBe('0 kWh');
  const charges = rows.map((row) => Number.parseFloat(row[2]!));
  expect([...charges].sort((a, b) => b - a)).toEqual(charges);
});

test('piped gas leaves nothing to read', () => {
  const piped = planOf('birch-street', { 'budget-later': 30_000, operators: 'none' });
  expect(piped.advice.route.kind).toBe('standby-engine');
  expect(sayHardCase(piped.rideThrough.routes[0]!, english)).toEqual([]);
});

test('an empty battery serves nothing, and never less', () => {
  const { routes } = planOf('tower-six').rideThrough;
  const served = routes.flatMap(({ badCase }) => badCase?.hours.map((h) => h.servedKw) ?? []);
  expect(Math.min(...served)).toBe(0);
});

test.each(['birch-street', 'tower-six', 'ridge-road', 'mill-lane'])(
  'one count has one figure of hours wherever %s says it',
  (name) => {
    const { routes, rideThrough } = planOf(name);
    for (const ride of rideThrough.routes) {
      const { hours } = routes.find(({ kind }) => kind === ride.kind)!.lasting;
      if (hours === null || ride.badCase === null) continue;
      const careful = Math.round(hours.low);
      const { endsAfter } = ride.badCase;
      // A generator's fuel is counted by the day, and drawn by whole hours.
      if (endsAfter === null)
        expect(careful, ride.kind).toBeGreaterThanOrEqual(rideThrough.goalHours - 1);
      else expect(Math.abs(endsAfter - careful), ride.kind).toBeLessThanOrEqual(1);
      const likely = formatQuantity(Math.round(hours.value), 'h');
      const says = english.failsFirst(ride.failsFirst);
      if (/by the likely count/.test(says)) expect(says, ride.kind).toContain(`after ${likely}`);
    }
  },
);

test('where there is no fuel today by the careful count, the case is drawn with the cans filled, and says so', () => {
  const plan = planOf('birch-street', { 'gasoline-gallons': 'not sure' });
  const { badCase } = plan.rideThrough.routes[0]!;
  const stored = onceStored(plan.home, plan.advice.route)!;
  expect(plan.advice.route.lasting.hours!.low).toBe(0);
  expect(badCase!.storedGal).toBe(stored.gallons);
  expect(badCase!.endsAfter ?? badCase!.hours.length).toBeGreaterThan(24);
  expect(badCase!.hours[0]!.fuelLeft).toBeGreaterThan(0);
  const says = planMarkdown(plan, english);
  expect(says).toContain(`is harder) with ${stored.gallons} gal stored it`);
  expect(says).toMatch(
    new RegExp(`day by day, both ways \\(.+, with ${stored.gallons} gal stored\\)`),
  );
  // With some here today it is drawn on that.
  expect(planOf('birch-street').rideThrough.routes[0]!.badCase!.storedGal).toBeUndefined();
});
