import { expect, test } from 'vitest';
import { planOf } from '../households/read-household';

test('fuel left in a tank that the house burns from too is what the gauge shows, in the table and in the sizes beside', () => {
  const plan = planOf('ridge-road', { 'heat-main': 'gas-furnace', 'water-heater': 'gas-pilot' });
  const { fuel, kind } = plan.advice.route;
  expect(fuel!.tank!.value).toBeGreaterThan(fuel!.atHand!.value + 1);
  const ride = plan.rideThrough.routes.find((one) => one.kind === kind)!;
  const [first] = ride.badCase!.hours;
  // After one hour the gauge stands less than a day's burn below the start, of the generator and of the house.
  const day = fuel!.perDay.high + fuel!.besidePerDay!.high;
  expect(first!.fuelLeft!).toBeLessThanOrEqual(fuel!.tank!.value);
  // The careful count begins with the low end of what is in the tank.
  expect(first!.fuelLeft!).toBeGreaterThan(fuel!.tank!.low - day);
  const more = ride.neighbors.flatMap(({ step }) =>
    step.code === 'fuel' && step.larger ? step.gallons : [],
  );
  expect(more).toHaveLength(1);
  expect(more[0]).toBeGreaterThan(fuel!.tank!.value);
});
