import { recordLowC } from '../../physics/weather/record-low';
import { allStations } from '../../tables/place/climate';
import type { Place } from '../../tables/place/place';
import type { Site } from '../home';

/** A careful figure for the record low of a place, C: the lowest of its own climate and of the stations that speak for it. */
export function placeRecordLowC(place: Place): number {
  const ids = new Set(place.stations.map((one) => one.id));
  const stations = allStations().filter((one) => ids.has(one.id));
  return Math.min(...[place, ...stations].map((one) => recordLowC(one.climate)));
}

/** People remember the cold days, not the coldest night: so much lower is held, K, as for the stations. Our judgement. */
const REMEMBERED_K = 5;

/** The lowest this home must be ready for, C: by its stations, or, where no ZIP code was told, by what people remember. */
export function siteRecordLowC({ place, lowestToldF }: Site): number {
  if (lowestToldF === undefined) return placeRecordLowC(place);
  return (lowestToldF - 32) / 1.8 - REMEMBERED_K;
}
