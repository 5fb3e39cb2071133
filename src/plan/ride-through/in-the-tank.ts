import type { FuelUse } from '../../routes/route';
import type { BadCase } from './ride-through';

/**
 * The generator's gallons as the gauge shows them where the house burns from the same tank: both run down together, so
 * the tank holds its share of them. Where the fuel is the generator's alone, the same gallons.
 */
export function inTheTank({ tank, atHand }: FuelUse, gallons: number): number {
  if (tank === undefined || atHand === null || atHand.value <= 0) return gallons;
  return (gallons * tank.value) / atHand.value;
}

/** A case of the careful count with the fuel left as read on the gauge: it begins with the low end of what is there. */
export function onTheGauge(badCase: BadCase, fuel: FuelUse | null): BadCase {
  if (fuel?.tank === undefined || fuel.atHand === null || fuel.atHand.low <= 0) return badCase;
  const inTank = fuel.tank.low / fuel.atHand.low;
  return {
    ...badCase,
    hours: badCase.hours.map((hour) => ({
      ...hour,
      fuelLeft: hour.fuelLeft === null ? null : hour.fuelLeft * inTank,
    })),
  };
}
