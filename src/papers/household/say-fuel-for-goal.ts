import { fuelForGoal } from '../../plan/fuel/fuel-for-goal';
import type { Plan } from '../../plan/plan';
import type { Words } from '../../words/words';

/** The fuel the goal takes by both counts, and where to keep the gauge of a tank; empty where no fuel is kept. */
export function sayFuelForGoal(plan: Plan, words: Words): string[] {
  const of = fuelOf(plan);
  return of === null ? [] : [words.household.fuelForGoal.takes(of)];
}

/** The same in one line for the first page: what must be there when an outage begins. Empty where no fuel is kept. */
export function sayFuelToKeep(plan: Plan, words: Words): string[] {
  const of = fuelOf(plan);
  if (of === null || isStored(plan, of.need.careful)) return [];
  return [words.household.fuelForGoal.keep(of)];
}

/** The first page names these gallons already, as those that are there once the cans are filled. */
function isStored({ fuelToStore, advice }: Plan, gallons: number): boolean {
  const today = advice.route.fuel?.atHand?.value ?? 0;
  return fuelToStore?.reachesGoal === true && today + fuelToStore.moreGallons === gallons;
}

function fuelOf({ home, fuelToStore, advice: { route } }: Plan) {
  const need = route.fuel === null ? null : fuelForGoal(home, route.fuel);
  if (need === null) return null;
  const { fuel, perDay } = route.fuel!;
  const fetchedPerDay = fuelToStore?.reachesGoal === false ? perDay : null;
  return { need, fuel, fetchedPerDay, goalHours: home.goalHours.value };
}
