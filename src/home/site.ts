import { reference } from '../quantity/cite';
import { type Figure, figure } from '../quantity/figure';
import { type Place, placeOf } from '../tables/place/place';
import type { Facts } from './facts';
import type { Site } from './home';

const FT_PER_M = 1 / 0.3048;

/** Where the home stands, from its ZIP; a ZIP that is not known falls back step by step and says so. */
export function siteOf(facts: Facts): Site {
  const zip = facts.value('home-zip');
  const told = facts.told('home-elevation') ? facts.number('home-elevation') : null;
  const place = placeOf({
    zip: typeof zip === 'string' ? zip : '',
    elevationM: told === null ? undefined : told / FT_PER_M,
  });
  const lowestToldF = toldF(facts, 'place-lowest');
  return {
    zip: typeof zip === 'string' ? zip : null,
    place,
    state: place.state,
    elevationFt: told === null ? heightOfStations(place) : toldHeight(told),
    coldF: lowestToldF ?? fahrenheit(place.climate.heat99C),
    ...(lowestToldF !== null && { lowestToldF }),
    hotF: toldF(facts, 'place-highest') ?? fahrenheit(place.climate.cool1C),
  };
}

/** Asked only where no ZIP code was told: what people remember goes before the middle of the country. */
function toldF(facts: Facts, id: 'place-lowest' | 'place-highest'): number | null {
  return facts.told(id) ? facts.number(id) : null;
}

function toldHeight(feet: number): Figure {
  const source = { kind: 'told', is: 'told' } as const;
  return figure({ value: feet, unit: 'ft', name: 'elevation', source });
}

function heightOfStations(place: Place): Figure {
  const heights = place.stations.map(({ elevationM }) => elevationM);
  const spread = (Math.max(...heights) - Math.min(...heights)) * FT_PER_M;
  const feet = place.elevationM * FT_PER_M;
  return figure({
    value: feet,
    low: feet - spread,
    high: feet + spread,
    unit: 'ft',
    name: 'elevation',
    source: {
      kind: 'table',
      is: 'height-of-stations',
      cite: reference('TMY3, NREL/TP-581-43156'),
    },
  });
}

function fahrenheit(celsius: number): number {
  return celsius * 1.8 + 32;
}
