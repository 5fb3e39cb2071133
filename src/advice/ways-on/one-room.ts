import type { Home, Load } from '../../home/home';
import { oneRoomHome } from '../../home/measures/one-room-home';
import { cools, warms } from '../../home/measures/warm-and-cool';
import type { SyntheticYears } from '../../home/weather/synthetic-years';
import { withinBudgetUsd } from '../../routes/budget';
import { mustLoads, mustMissed } from '../../routes/must-carried';
import type { Candidate } from '../list/candidate';
import { type Line, lineOf } from '../list/line';
import { type Ranked, rank } from '../list/list-of';
import type { SizeKind } from '../list/source';
import type { Weighed } from '../list/unbeaten';
import { compareValues } from '../list/value';
import { countedIn, fewOf } from './best-payable';
import type { WaysOn } from './ways-on';

/** Of what carries the room's units within the money the one that would be advised, or else the one worth most, the cheapest of equals. */
function bestCarrying(ranked: Ranked, units: readonly Load[]): Weighed | null {
  const carries = ({ counted }: Candidate) => units.every(({ id }) => counted.carries.includes(id));
  const { chosen, weighed, scale } = ranked;
  if (chosen !== null && carries(chosen)) return chosen;
  return (
    weighed
      .filter(carries)
      .map((one) => scale.weigh(one))
      .sort((a, b) => compareValues(b.value, a.value) || a.usd - b.usd)
      .at(0) ?? null
  );
}

/**
 * One warm or cool room in place of the whole home: the best within the money that carries the room's heater or unit. Null where the
 * household counts one room already, where nothing carries that either, and where the whole home's is carried and one room would neither
 * reach the goal nor last much longer.
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
  const best = bestCarrying(rank(room.home, fewOf(home, drawn), null, sizeKind, true), room.units);
  if (best === null) return null;
  const line = lineOf(countedIn(room.home, drawn, best), true);
  const carriedWhole = !missed.some((load: Load) => warms(load) || cools(load));
  if (carriedWhole && !line.reaches && !lastsMuchLonger(line, chosen)) return null;
  const withinMoney = withinBudgetUsd(home, line.usd + room.usd);
  return {
    line,
    units: room.units.map(({ id }) => id),
    unitsUsd: room.usd,
    doesItWithin: line.reaches && withinMoney,
    keepsRoom: withinMoney && !carriedWhole && line.value.long,
    heats: room.units.some(warms),
    cools: room.units.some((unit) => !warms(unit) && cools(unit)),
  };
}

/** So many times as long as the whole home is a way on, though it does not reach the goal. Our judgement. */
const MUCH_LONGER = 2;

function lastsMuchLonger({ hours }: Line, chosen: Weighed | null): boolean {
  const whole = chosen?.counted.lasting.hours ?? null;
  return hours !== null && whole !== null && hours.likely >= MUCH_LONGER * whole.value;
}
