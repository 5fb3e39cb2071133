import type { Home, Load } from '../../home/home';
import { oneRoomHome } from '../../home/measures/one-room-home';
import { cools, warms } from '../../home/measures/warm-and-cool';
import type { SyntheticYears } from '../../home/weather/synthetic-years';
import { mustLoads, mustMissed } from '../../routes/must-carried';
import { lineOf } from '../list/line';
import type { SizeKind } from '../list/source';
import type { Weighed } from '../list/unbeaten';
import { bestPayable, countedIn, fewOf } from './best-payable';
import type { WaysOn } from './ways-on';

/**
 * One warm or cool room in place of the whole home: the best within the money that carries the room's heater or unit. Null where the
 * household counts one room already, where nothing carries that either, and where the whole home's is carried and one room would not
 * reach the goal.
 */
export function oneRoom(
  home: Home,
  drawn: SyntheticYears,
  chosen: Weighed | null,
  sizeKind: SizeKind,
): WaysOn['oneRoom'] {
  const missed = chosen === null ? mustLoads(home) : mustMissed(chosen.living.home, chosen.counted);
  const room = oneRoomHome(home);
  if (room === null) return null;
  const best = bestPayable(room.home, fewOf(home, drawn), sizeKind);
  if (best === null || !room.units.every(({ id }) => best.counted.carries.includes(id)))
    return null;
  const line = lineOf(countedIn(room.home, drawn, best), true);
  const carriedWhole = !missed.some((load: Load) => warms(load) || cools(load));
  if (carriedWhole && !line.reaches) return null;
  return {
    line,
    units: room.units.map(({ id }) => id),
    unitsUsd: room.usd,
    heats: room.units.some(warms),
    cools: room.units.some((unit) => !warms(unit) && cools(unit)),
  };
}
