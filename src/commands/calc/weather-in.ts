import { type Weather, weatherYears } from '../../physics/weather/weather-years';
import { climateStations } from '../../tables/place/climate';
import type { Place } from '../../tables/place/place';
import { persistenceFigures } from '../../tables/place/weather-persistence';
import { citedTables } from './cited-table';
import type { Values } from './values';

/** Weather years of a place, as many and from the seed that the inputs say. */
export function weatherIn(place: Place, values: Values): Weather {
  return weatherYears({
    climate: place.climate,
    persistence: persistenceFigures(place.climate),
    latDeg: place.latDeg,
    years: values.number('years'),
    seed: values.number('seed'),
  });
}

/** Where weather years come from. */
export const weatherSource = `${citedTables(climateStations)}; days after Graham, Hollands & Unny 1988 and Richardson 1981`;
