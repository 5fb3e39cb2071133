import { allStations, type Climate, type Station } from './climate';
import { earthDistanceKm, type Point } from './earth-distance';

/** A weather station used for a place and how much it counts. */
export interface NearStation {
  station: Station;
  distanceKm: number;
  /** Station above (+) or below (-) the place, m; null when the place's height is not known. */
  heightDifferenceM: number | null;
  /** Its share in the blend; the shares of a place add up to 1. */
  share: number;
}

/** Where the nearest station stops standing for the place. */
export const FAR_KM = 80;
export const FAR_HEIGHT_M = 300;

const MOST_STATIONS = 4;
/** Keeps a station at the door from dividing by nothing. */
const NEAREST_KM = 5;

/**
 * Up to four stations whose weather together stands for a place. Height counts as distance, 300 m
 * like 80 km; the weight is one over the square of that distance, and stations beyond one and a half
 * times the nearest (and beyond 80 km) are left out. Inverse-distance weights are common practice; the
 * exchange of height for distance is our judgement.
 */
export function nearStations(
  place: Point & { elevationM: number | null },
  stations: readonly Station[] = allStations(),
): NearStation[] {
  const ranked = stations
    .map((station) => {
      const distanceKm = earthDistanceKm(place, station);
      const heightDifferenceM =
        place.elevationM === null ? null : station.elevationM - place.elevationM;
      const height = ((heightDifferenceM ?? 0) * FAR_KM) / FAR_HEIGHT_M;
      return { station, distanceKm, heightDifferenceM, apart: Math.hypot(distanceKm, height) };
    })
    .sort((a, b) => a.apart - b.apart)
    .slice(0, MOST_STATIONS);
  const reach = Math.max(FAR_KM, 1.5 * ranked[0]!.apart);
  const used = ranked.filter(({ apart }) => apart <= reach);
  const weight = ({ apart }: { apart: number }) => 1 / (apart + NEAREST_KM) ** 2;
  const whole = used.reduce((sum, one) => sum + weight(one), 0);
  return used.map((one) => ({
    station: one.station,
    distanceKm: one.distanceKm,
    heightDifferenceM: one.heightDifferenceM,
    share: weight(one) / whole,
  }));
}

/** A climate and its share in a blend; shares add up to 1. */
export interface StationShare {
  climate: Climate;
  share: number;
}

/**
 * The weighted mean of several climates, series by series. A month without a spread (polar night)
 * takes the mean of the stations that have one, or stays null.
 */
export function blendClimate(parts: readonly StationShare[]): Climate {
  const mean = (value: (climate: Climate) => number) =>
    parts.reduce((sum, { climate, share }) => sum + share * value(climate), 0);
  const months = (series: (climate: Climate) => number[]) =>
    Array.from({ length: 12 }, (_, m) => mean((climate) => series(climate)[m]!));
  return {
    ghiKwhPerM2Day: months((c) => c.ghiKwhPerM2Day),
    diffuseKwhPerM2Day: months((c) => c.diffuseKwhPerM2Day),
    clearnessSpread: Array.from({ length: 12 }, (_, m) => blendSpread(parts, m)),
    meanC: months((c) => c.meanC),
    rangeK: months((c) => c.rangeK),
    daySpreadK: months((c) => c.daySpreadK),
    winterSpreadK: mean((c) => c.winterSpreadK),
    summerSpreadK: mean((c) => c.summerSpreadK),
    clearnessLag1: mean((c) => c.clearnessLag1),
    temperatureLag1: mean((c) => c.temperatureLag1),
    heat99C: mean((c) => c.heat99C),
    cool1C: mean((c) => c.cool1C),
    heatingDegreeDays65F: mean((c) => c.heatingDegreeDays65F),
    coolingDegreeDays65F: mean((c) => c.coolingDegreeDays65F),
  };
}

function blendSpread(parts: readonly StationShare[], month: number): number | null {
  let sum = 0;
  let shares = 0;
  for (const { climate, share } of parts) {
    const spread = climate.clearnessSpread[month];
    if (spread === null || spread === undefined) continue;
    sum += share * spread;
    shares += share;
  }
  return shares > 0 ? sum / shares : null;
}
