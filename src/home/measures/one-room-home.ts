import { type MeasureId, measureRow } from '../../tables/measures';
import type { Home, Load } from '../home';
import { withLoads } from '../loads/with-loads';
import { withMeasure } from './thrifty-loads';

const measures: readonly MeasureId[] = ['one-room', 'room-unit'];

/** A home that keeps one room warm or cool in place of all of it. */
export interface OneRoomHome {
  readonly home: Home;
  /** What stands in the room in place of the whole home's heat or cooling. */
  readonly units: readonly Load[];
  /** What that takes to buy, likely $. */
  readonly usd: number;
}

/** The home as if one room were enough, where the household told that it needs the whole; null where that changes nothing. */
export function oneRoomHome(home: Home): OneRoomHome | null {
  const rows = measures.map(measureRow);
  let loads: readonly Load[] = home.loads;
  let usd = 0;
  for (const row of rows) {
    const then = withMeasure(home, loads, row);
    if (then !== loads) usd += row.likely;
    loads = then;
  }
  if (loads === home.loads) return null;
  const units = loads.filter((load) => load.onlyInOutage && load.rank === 'must');
  return units.length === 0 ? null : { home: withLoads(home, loads), units, usd };
}
