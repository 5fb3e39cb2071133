import { formatQuantity } from '../../quantity/format-quantity';
import { fuelForGoal } from '../fuel-for-goal';
import { listOf } from '../list-of';
import type { Plan } from '../plan';

/** The fuel the goal takes by both counts, and where to keep the gauge of a tank; empty where no fuel is kept. */
export function sayFuelForGoal({ home, advice: { route } }: Plan): string[] {
  const need = route.fuel === null ? null : fuelForGoal(home, route.fuel);
  if (need === null) return [];
  const gal = (gallons: number) => formatQuantity(gallons, 'gal');
  const goal = formatQuantity(home.goalHours.value, 'h');
  const takes = `For ${goal} it takes about ${gal(need.likely)} of ${route.fuel!.fuel}, by the careful count ${gal(need.careful)}.`;
  if (need.keepInTank === null) return [takes];
  const shown = need.gauge.map(
    ({ tankGal, percent }) => `${percent} % on a tank of ${gal(tankGal)}`,
  );
  const on =
    shown.length > 0
      ? `keep the gauge above ${listOf(shown)}`
      : 'that is more than one tank of a house holds';
  return [
    `${takes} A part of every tank is not counted, so keep at least ${gal(need.keepInTank)} in it: ${on}.`,
  ];
}
