import { figure } from '../quantity/figure';
import { placeOf } from '../tables/place';
import type { Facts } from './facts';
import type { Site } from './home';

const FT_PER_M = 1 / 0.3048;

/** Where the home stands, from its ZIP; a ZIP that is not known falls back step by step and says so. */
export function siteOf(facts: Facts): Site {
  const zip = facts.value('home-zip');
  const place = placeOf({ zip: typeof zip === 'string' ? zip : '' });
  const heights = place.stations.map((s) => s.heightDifferenceM ?? 0);
  const elevationFt = Math.max(0, place.elevationM * FT_PER_M);
  const spread = (Math.max(...heights) - Math.min(...heights)) * FT_PER_M;
  return {
    zip: typeof zip === 'string' ? zip : null,
    place,
    state: place.state,
    elevationFt: figure({
      value: elevationFt,
      low: Math.max(0, elevationFt - spread),
      high: elevationFt + spread,
      unit: 'ft',
      name: 'height above the sea',
      source: {
        kind: 'table',
        label: 'height of the weather stations nearby',
        cite: 'TMY3, NREL/TP-581-43156',
      },
    }),
    coldF: fahrenheit(place.climate.heat99C),
    hotF: fahrenheit(place.climate.cool1C),
  };
}

function fahrenheit(celsius: number): number {
  return celsius * 1.8 + 32;
}
