import type { Home } from '../../home/home';
import { atEnd } from '../../quantity/at-end';
import { type Figure, figure } from '../../quantity/figure';
import { addFigures, formula, worked } from '../../quantity/figure-arithmetic';
import { fuelHours } from '../generator-size';
import { lastsHours } from '../make-route';
import type { FuelUse, Route } from '../route';
import { cansSteps } from './cans-steps';
import { cansGal } from './fuel-containers';

/** A route once the cans in its list of parts are filled, and how many gallons there are then. */
export interface OnceStored {
  readonly gallons: number;
  /** The same route with that fuel; its hours and whether it reaches the goal are those of that fuel. */
  readonly route: Route;
}

/** Null where no fuel is to be stored, and where more of it would carry the route no further. */
export function onceStored(home: Home, route: Route): OnceStored | null {
  const { fuel, lasting } = route;
  const today = fuel === null ? null : fuelHours(fuel);
  if (fuel === null || today === null || lasting.hours === null) return null;
  const gallons = cansGal(home, fuel);
  if (gallons === null || gallons <= fuel.atHand!.value) return null;
  // Where a battery is empty before the morning, its hours and not the fuel end the route.
  if (lasting.hours.value < today.value) return null;
  const filled = withFuel(home, fuel, gallons);
  const then = fuelHours(filled)!;
  const value = lasting.hours.value - today.value + then.value;
  // By the careful count too a battery that ends it before the fuel does gains nothing.
  const low =
    lasting.hours.low < today.low ? lasting.hours.low : lasting.hours.low - today.low + then.low;
  // Fuel nobody knows of may be more today than what is filled up to: the ends close in on the likely hours.
  const high = lasting.hours.high - today.high + then.high;
  const hours = figure({
    ...then,
    value,
    low: Math.min(low, value),
    high: Math.max(high, value),
    as: () => onTop(lasting.hours!, today, then),
    endAs: (end) => {
      const [before, fuelToday, filledUp] = [lasting.hours!, today, then].map((one) =>
        atEnd(one, end),
      ) as [Figure, Figure, Figure];
      return end === 'low' && before.value < fuelToday.value
        ? addFigures([before], { unit: 'h' })
        : onTop(before, fuelToday, filledUp);
    },
  });
  const stored = lastsHours(home, hours, { code: 'cans-filled', gallons });
  return { gallons, route: { ...route, fuel: filled, lasting: stored } };
}

/** What filling adds to the hours there are; where the fuel alone ends them, the hours of the fuel. */
function onTop(hours: Figure, today: Figure, then: Figure): Figure {
  if (hours.value === today.value) return then;
  const gained = worked({ by: 'difference', of: [then, today] }, { unit: 'h', is: 'hours-gained' });
  return addFigures([hours, gained], { unit: 'h' });
}

function withFuel(home: Home, fuel: FuelUse, gallons: number): FuelUse {
  const atHand = figure({
    value: gallons,
    unit: 'gal',
    is: 'fuel-filled',
    source: formula('fuel-for-goal'),
    as: () => cansSteps(home, fuel),
  });
  return { ...fuel, atHand };
}
