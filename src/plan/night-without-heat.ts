import type { Home } from '../home/home';
import type { Route } from '../routes/route';
import { comfortLost } from './ladder/comfort-lost';
import { AWAKE_WORDS } from './one-room-words';

/**
 * The heat that is carried stands still while everybody sleeps, in a sentence; null where another source heats at
 * night, where nothing heats at all, and where no cold harms.
 */
export function nightWithoutHeat(home: Home, { carries }: Pick<Route, 'carries'>): string | null {
  const byNight = home.loads.filter((load) => !load.awakeOnly).map((load) => load.id);
  const allDay = comfortLost(home, { carries });
  const night = comfortLost(home, { carries: carries.filter((id) => byNight.includes(id)) });
  if (allDay.heat.length > 0 || night.heat.length === 0) return null;
  return `Expect no heat at night: ${AWAKE_WORDS}. Sleep together in that room, warmly covered, hang a thermometer in it, and leave before it stays below 60 °F.`;
}
