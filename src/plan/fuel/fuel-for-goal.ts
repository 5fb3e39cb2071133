import type { Home } from '../../home/home';
import { PROPANE_USABLE } from '../../routes/generator-size';
import type { FuelUse } from '../../routes/route';
import { practice } from '../../tables/practice-figures';

/** Fuel the goal takes by the likely and by the careful count, gal; all that burns from the same tank is in it. */
export interface FuelForGoal {
  readonly likely: number;
  readonly careful: number;
  /** What a tank of propane must hold when an outage begins, by the careful count, gal; null for fuel in cans. */
  readonly keepInTank: number | null;
  /** The same on the gauge of common tanks that may hold it. */
  readonly gauge: readonly { readonly tankGal: number; readonly percent: number }[];
}

/** Common tanks of a house by what they would hold of water, gal. */
const TANKS_GAL = [120, 250, 500, 1000];
const FILLED_PERCENT = practice('propane-fill-percent');

/** Null where the fuel is piped in. */
export function fuelForGoal(home: Home, fuel: FuelUse): FuelForGoal | null {
  if (fuel.atHand === null) return null;
  const days = home.goalHours.value / 24;
  const { perDay, besidePerDay } = fuel;
  const likely = Math.ceil(days * (perDay.value + (besidePerDay?.value ?? 0)));
  const careful = Math.ceil(days * (perDay.high + (besidePerDay?.high ?? 0)));
  const inTank = fuel.fuel === 'propane' && home.facts.is('gas-supply', 'propane-tank');
  if (!inTank) return { likely, careful, keepInTank: null, gauge: [] };
  const keepInTank = Math.ceil(careful / PROPANE_USABLE.low);
  const gauge = TANKS_GAL.map((tankGal) => ({
    tankGal,
    percent: Math.ceil((100 * keepInTank) / tankGal),
  })).filter(({ percent }) => percent <= FILLED_PERCENT);
  return { likely, careful, keepInTank, gauge };
}
