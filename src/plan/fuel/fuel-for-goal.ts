import type { Home } from '../../home/home';
import { atEnd } from '../../quantity/at-end';
import { type Figure, figure } from '../../quantity/figure';
import { addFigures, HOURS_IN_DAY, worked } from '../../quantity/figure-arithmetic';
import type { StepName } from '../../quantity/step-name';
import { gasolineLimitGal } from '../../routes/fuel/gasoline-limit';
import { PROPANE_USABLE } from '../../routes/generator-size';
import type { FuelUse } from '../../routes/route';
import { practice } from '../../tables/practice-figures';

/** Fuel the goal takes by the likely and by the careful count, gal; all that burns from the same tank is in it. */
export interface FuelForGoal {
  readonly likely: number;
  readonly careful: number;
  /** More gasoline than may usually be kept at a home. */
  readonly overLimit: boolean;
  /** What a tank of propane must hold when an outage begins, by the careful count, gal; null for fuel in cans. */
  readonly keepInTank: number | null;
  /** The same on the gauge of common tanks that may hold it. */
  readonly gauge: readonly { readonly tankGal: number; readonly percent: number }[];
}

/** Common tanks of a house by what they would hold of water, gal. */
const TANKS_GAL = [120, 250, 500, 1000];
const FILLED_PERCENT = practice('propane-fill-percent');

/** By the careful count, with the steps it is worked out in. */
export function carefulGallons(home: Home, { perDay, besidePerDay }: FuelUse): Figure {
  const own = carefulDay(perDay, 'careful-day');
  const house = besidePerDay === undefined ? [] : [carefulDay(besidePerDay, 'house-careful-day')];
  return gallons(home, [own, ...house]);
}

function carefulDay(perDay: Figure, is: StepName): Figure {
  const source = { kind: 'formula' } as const;
  const as = () => atEnd(perDay, 'high');
  return figure({ value: perDay.high, unit: perDay.unit, is, source, as });
}

/** Gallons burned in as many hours as the goal, rounded up. */
function gallons({ goalHours }: Home, aDay: readonly Figure[]): Figure {
  const { unit } = aDay[0]!;
  const all = aDay.length === 1 ? aDay[0]! : addFigures(aDay, { unit, is: 'all-from-tank' });
  const exact = worked(
    { by: 'ratio', of: [goalHours, all], under: [HOURS_IN_DAY] },
    { unit: 'gal', is: 'gallons-in-goal' },
  );
  return worked({ by: 'rounded-up', of: [exact], to: 1 }, { unit: 'gal' });
}

/** Null where the fuel is piped in. */
export function fuelForGoal(home: Home, fuel: FuelUse): FuelForGoal | null {
  if (fuel.atHand === null) return null;
  const { perDay, besidePerDay } = fuel;
  const likely = gallons(home, [perDay, ...(besidePerDay ? [besidePerDay] : [])]).value;
  const careful = carefulGallons(home, fuel).value;
  const inTank = fuel.fuel === 'propane' && home.facts.is('gas-supply', 'propane-tank');
  const overLimit = fuel.fuel === 'gasoline' && careful > gasolineLimitGal(home);
  if (!inTank) return { likely, careful, overLimit, keepInTank: null, gauge: [] };
  const keepInTank = Math.ceil(careful / PROPANE_USABLE.low);
  const gauge = TANKS_GAL.map((tankGal) => ({
    tankGal,
    percent: Math.ceil((100 * keepInTank) / tankGal),
  })).filter(({ percent }) => percent <= FILLED_PERCENT);
  return { likely, careful, overLimit, keepInTank, gauge };
}
