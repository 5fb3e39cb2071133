import { COOL_OUTDOORS_F } from '../home/heat/warm-otherwise';
import type { Home } from '../home/home';
import type { LoadId } from '../home/loads/load-id';
import { siteRecordLowC } from '../home/weather/record-low';
import { hoursOf } from '../home/weather/weather-load';
import type { Route } from '../routes/route';

export interface TooCold {
  readonly pump: LoadId;
  /** Outdoors, °F; colder than that it cannot keep the house. */
  readonly belowF: number;
}

/** Below which cold the heat pump that is carried cannot keep the house; null where it never gets so cold. */
export function tooColdForPump(home: Home, { carries }: Pick<Route, 'carries'>): TooCold | null {
  if (!home.goalSeasons.includes('winter') || home.site.coldF >= COOL_OUTDOORS_F) return null;
  const pump = home.loads.find(
    (load) =>
      load.heatsBy === 'pump' &&
      load.rank !== 'wait' &&
      load.kwhPerDay.winter.value > 0 &&
      carries.includes(load.id),
  );
  if (pump === undefined) return null;
  const { climate } = home.site.place;
  const belowF = toF(hoursOf(pump, climate).keepsUpToC);
  if (belowF <= toF(siteRecordLowC(home.site))) return null;
  return { pump: pump.id, belowF };
}

const toF = (c: number) => 1.8 * c + 32;
