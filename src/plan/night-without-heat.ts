import type { Home } from '../home/home';
import { AWAKE, type AwakeHours } from '../home/loads/awake';
import type { Route } from '../routes/route';
import { comfortLost } from './ladder/comfort-lost';

/**
 * The hours of the day to which the heat that is carried keeps, for it stands still while everybody sleeps; null where
 * another source heats at night, where nothing heats at all, and where no cold harms.
 */
export function nightWithoutHeat(
  home: Home,
  { carries }: Pick<Route, 'carries'>,
): AwakeHours | null {
  const byNight = home.loads.filter((load) => !load.awakeOnly).map((load) => load.id);
  const allDay = comfortLost(home, { carries });
  const night = comfortLost(home, { carries: carries.filter((id) => byNight.includes(id)) });
  return allDay.heat.length > 0 || night.heat.length === 0 ? null : AWAKE;
}
