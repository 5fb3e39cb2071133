import type { FuelForGoal } from '../../../plan/fuel/fuel-for-goal';
import type { Figure } from '../../../quantity/figure';
import { formatQuantity } from '../../../quantity/format-quantity';
import { listOf } from '../list-of';

interface Of {
  readonly goalHours: number;
  readonly fuel: string;
  /** What it burns in a day, where what is stored does not last to the goal; else null. */
  readonly fetchedPerDay: Figure | null;
  readonly need: FuelForGoal;
}

/** The fuel that the goal takes. */
export const fuelForGoal = {
  /** By both counts, and where to keep the gauge of a tank. */
  takes({ goalHours, fuel, need }: Of): string {
    const takes = `For ${formatQuantity(goalHours, 'h')} it takes about ${gal(need.likely)} of ${fuel}, by the careful count ${gal(need.careful)}.`;
    if (need.keepInTank === null) return takes;
    return `${takes} A part of every tank is not counted, so keep at least ${gal(need.keepInTank)} in it: ${onGauge(need)}.`;
  },
  /** In one line for the first page: what must be there when an outage begins. */
  keep({ goalHours, fuel, fetchedPerDay, need }: Of): string {
    const head = `Fuel for ${formatQuantity(goalHours, 'h')}, careful count`;
    if (need.keepInTank !== null)
      return `${head}: keep at least ${gal(need.keepInTank)} in the tank; ${onGauge(need)}.`;
    const kept = `${head}: ${gal(need.careful)} of ${fuel}`;
    if (!need.overLimit) return `${kept}.`;
    const over = `${kept}, over the usual limit.`;
    if (fetchedPerDay === null) return over;
    return `${over} What may not be kept has to be fetched, about ${formatQuantity(fetchedPerDay.value, fetchedPerDay.unit)}; nothing here counts on that.`;
  },
};

function onGauge({ gauge }: FuelForGoal): string {
  const shown = gauge.map(({ tankGal, percent }) => `${percent} % on a tank of ${gal(tankGal)}`);
  return shown.length > 0
    ? `keep the gauge above ${listOf(shown)}`
    : 'that is more than one tank of a house holds';
}

const gal = (gallons: number) => formatQuantity(gallons, 'gal');
