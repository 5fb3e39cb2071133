import type { Home } from '../../home/home';
import {
  hasBattery,
  hasFixedGenerator,
  hasGenerator,
  hasPortableGenerator,
  isSource,
  isWired,
} from '../../kinds/ask-traits';
import { traitsOf } from '../../kinds/route-traits';
import type { Route } from '../../routes/route';

/** What keeps a backup working, done by the calendar; the words stand in `words/`. */
export type YearTaskId =
  | 'test-alarms'
  | 'run-generator'
  | 'look-at-standby'
  | 'standby-service'
  | 'use-up-fuel'
  | 'charge-battery'
  | 'test-transfer'
  | 'device-battery'
  | 'sump-test'
  | 'water-food'
  | 'rehearse'
  | 'look-again';

export interface YearTask {
  readonly id: YearTaskId;
  /** Months in which it falls, January is 1. */
  readonly months: readonly number[];
}

const EVERY_MONTH = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12];
/** Before the summer storms and before the winter ones. */
const TWICE = [4, 10];
/** When clocks change, which many take as the day for alarms. */
const CLOCKS = [3, 11];

/**
 * The year of a home with this route. How often is common practice, no source: alarms twice a year, a generator run
 * under load every month, gasoline used up within half a year, a battery at rest charged every three months.
 */
export function yearTasks(home: Home, route: Route): YearTask[] {
  const of = traitsOf[route.kind];
  const tasks: (YearTask | false)[] = [
    { id: 'test-alarms', months: CLOCKS },
    hasPortableGenerator(of) && { id: 'run-generator', months: EVERY_MONTH },
    hasFixedGenerator(of) && { id: 'look-at-standby', months: EVERY_MONTH },
    hasFixedGenerator(of) && { id: 'standby-service', months: [9] },
    hasGenerator(of) && storesFuel(route) && { id: 'use-up-fuel', months: TWICE },
    hasBattery(of) &&
      !of.vehicle &&
      of.battery === 'plug-in' && { id: 'charge-battery', months: [1, 4, 7, 10] },
    isWired(of) && { id: 'test-transfer', months: TWICE },
    home.lifeSupport !== 'no' && { id: 'device-battery', months: TWICE },
    home.loads.some((load) => load.id === 'sump') && { id: 'sump-test', months: [3, 9] },
    { id: 'water-food', months: TWICE },
    isSource(of) && { id: 'rehearse', months: [home.goalSeasons.includes('winter') ? 10 : 5] },
    { id: 'look-again', months: [Number(home.asOf.slice(5, 7))] },
  ];
  return tasks.filter((task) => task !== false);
}

/** Fuel that stands in cans or cylinders and grows old; piped gas and the house tank do not. */
const storesFuel = ({ fuel }: Route) =>
  fuel !== null && fuel.atHand !== null && fuel.fuel !== 'propane';
