import { type FuelForGoal, fuelForGoal } from '../../plan/fuel-for-goal';
import type { Plan } from '../../plan/plan';
import { formatQuantity } from '../../quantity/format-quantity';
import { gasolineLimitGal } from '../../routes/gasoline-limit';
import type { Words } from '../../words/words';

/** The fuel the goal takes by both counts, and where to keep the gauge of a tank; empty where no fuel is kept. */
export function sayFuelForGoal({ home, advice: { route } }: Plan, words: Words): string[] {
  const need = route.fuel === null ? null : fuelForGoal(home, route.fuel);
  if (need === null) return [];
  const goal = formatQuantity(home.goalHours.value, 'h');
  const takes = `For ${goal} it takes about ${gal(need.likely)} of ${route.fuel!.fuel}, by the careful count ${gal(need.careful)}.`;
  if (need.keepInTank === null) return [takes];
  return [
    `${takes} A part of every tank is not counted, so keep at least ${gal(need.keepInTank)} in it: ${onGauge(need, words)}.`,
  ];
}

/** The same in one line for the first page: what must be there when an outage begins. Empty where no fuel is kept. */
export function sayFuelToKeep({ home, advice: { route } }: Plan, words: Words): string[] {
  const need = route.fuel === null ? null : fuelForGoal(home, route.fuel);
  if (need === null) return [];
  const head = `Fuel for ${formatQuantity(home.goalHours.value, 'h')}, careful count`;
  if (need.keepInTank !== null)
    return [`${head}: keep at least ${gal(need.keepInTank)} in the tank; ${onGauge(need, words)}.`];
  const tooMuch = route.fuel!.fuel === 'gasoline' && need.careful > gasolineLimitGal(home);
  const more = tooMuch ? ', over the usual limit' : '';
  return [`${head}: ${gal(need.careful)} of ${route.fuel!.fuel}${more}.`];
}

function onGauge({ gauge }: FuelForGoal, words: Words): string {
  const shown = gauge.map(({ tankGal, percent }) => `${percent} % on a tank of ${gal(tankGal)}`);
  return shown.length > 0
    ? `keep the gauge above ${words.listOf(shown)}`
    : 'that is more than one tank of a house holds';
}

const gal = (gallons: number) => formatQuantity(gallons, 'gal');
