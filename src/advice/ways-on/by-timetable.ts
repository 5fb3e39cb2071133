import type { Facts } from '../../home/facts';
import type { Home, Load } from '../../home/home';
import { neverLessened } from '../../home/loads/never-lessened';
import { harms } from '../../home/measures/harms';
import { holdsMedicine } from '../../home/measures/holds-medicine';
import { cools, warms } from '../../home/measures/warm-and-cool';
import { lifeSupport } from '../../home/people/life-support';
import { hasPortableGenerator } from '../../kinds/ask-traits';
import { traitsOf } from '../../kinds/route-traits';
import { fuelHours } from '../../routes/generator-size';
import { betweenBlocks, blockFuel } from '../../routes/kinds/generator-blocks';
import { runHours } from '../../tables/run-hours';
import { hardestSeason } from '../hardest-season';
import { lineOf } from '../list/line';
import type { Weighed } from '../list/unbeaten';
import type { Timetable } from './ways-on';

/**
 * The generator within the money that carries all, run in the morning and the evening only, so that its fuel lasts
 * longer. Null where it lasts no longer then, and where something it carries must not stop: a device for health, a refrigerator with
 * medicine in it, a pump that keeps the house dry or takes its waste, heat or cooling where a room without it harms somebody here.
 */
export function byTimetable(home: Home, chosen: Weighed | null): Timetable | null {
  if (chosen === null || !chosen.value.long) return null;
  const { counted: route, living } = chosen;
  const { fuel, generator } = route;
  const traits = traitsOf[route.kind];
  if (!hasPortableGenerator(traits) || traits.battery !== 'none') return null;
  if (fuel === null || fuel.atHand === null || generator === null) return null;
  const carried = living.home.loads.filter(({ id }) => route.carries.includes(id));
  if (carried.some((load) => mustNotStop(home, load))) return null;
  const season = hardestSeason(living.home);
  const hours = fuelHours(blockFuel(carried, { generator, fuel, season }))?.value ?? 0;
  if (hours <= (route.lasting.hours?.value ?? Infinity)) return null;
  return {
    line: lineOf(chosen, true),
    runHours,
    gallons: fuel.atHand.value,
    hours,
    ...betweenBlocks(home, carried),
  };
}

function mustNotStop(home: Home, load: Load): boolean {
  const { facts, goalSeasons } = home;
  if (neverLessened(load) || holdsMedicine(home, load)) return true;
  return (
    (warms(load) && goalSeasons.includes('winter') && harmsSomebody(facts, 'cold')) ||
    (cools(load) && goalSeasons.includes('summer') && harmsSomebody(facts, 'heat'))
  );
}

/**
 * Somebody here is known to be at risk, or nobody told who lives here. Where only the closer question was never put, the words say for
 * whom it is not.
 */
function harmsSomebody(facts: Facts, by: 'cold' | 'heat'): boolean {
  if (facts.told('heat-cold') || !facts.told('people-risk')) return harms(facts, by);
  return !facts.has('people-risk', 'none') || lifeSupport(facts) !== 'no';
}
