import { COOL_OUTDOORS_F } from '../home/heat/warm-otherwise';
import type { Home } from '../home/home';
import { siteRecordLowC } from '../home/weather/record-low';
import { hoursOf } from '../home/weather/weather-load';
import type { Route } from '../routes/route';
import { inSentence } from '../words/en/list-of';

/** Below which cold the heat pump that is carried cannot keep the house, in a sentence; null where it never gets so cold. */
export function tooColdForPump(home: Home, { carries }: Pick<Route, 'carries'>): string | null {
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
  const limitF = toF(hoursOf(pump, climate).keepsUpToC);
  if (limitF <= toF(siteRecordLowC(home.site))) return null;
  return `Below about ${Math.round(limitF)} °F outdoors the ${inSentence(pump.name)} runs without a break and still lacks heat, for its strips stay off: the rooms get colder. Close off all but one room, and leave before it stays below 60 °F.`;
}

const toF = (c: number) => 1.8 * c + 32;
