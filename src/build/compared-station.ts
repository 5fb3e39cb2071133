import { monthlyDiffuseShare } from '../physics/sun/diffuse-share';
import { monthMean } from '../physics/weather/month-curve';
import { skyYear } from '../physics/weather/sky-year';
import { type Climate, type ClimateRow, climateOfRow, MONTHS } from '../tables/place/climate-row';
import { earthDistanceKm } from '../tables/place/earth-distance';
import { clamp } from './robust';

/** Stations asked, the one itself among them, and how far off. */
const ASKED = 9;
const FARTHEST_KM = 300;
/** Height counts as distance, as in `tables/place/near-stations.ts`. */
const KM_PER_M = 80 / 300;

/** A station with what can be compared between places: clearness and the odds of the diffuse share. */
export interface Station {
  id: string;
  latDeg: number;
  lonDeg: number;
  elevationM: number;
  climate: Climate;
  /** By month: share of the sun outside the air, null about polar night; that sun, kWh/m2; diffuse odds over the law's. */
  clearness: (number | null)[];
  outsideKwh: number[];
  sunsetDeg: number[];
  odds: (number | null)[];
}

export function toStation(row: ClimateRow): Station {
  const climate = climateOfRow(row);
  const latDeg = row.lat as number;
  const sky = skyYear(latDeg);
  const outsideKwh = MONTHS.map((_, m) => monthMean(sky.extraterrestrialKwh, m));
  const sunsetDeg = MONTHS.map((_, m) => monthMean(sky.sunsetHourAngleDeg, m));
  const clearness = climate.ghiKwhPerM2Day.map((ghi, m) =>
    outsideKwh[m]! > 0.3 && ghi > 0.05 ? ghi / outsideKwh[m]! : null,
  );
  const odds = clearness.map((k, m) => {
    const share = climate.diffuseKwhPerM2Day[m]! / climate.ghiKwhPerM2Day[m]!;
    return k === null || !(share < 1) ? null : oddsOf(share) / oddsOf(lawShare(k, sunsetDeg[m]!));
  });
  const [lonDeg, elevationM] = [row.lon as number, row.elevation_m as number];
  const place = { id: String(row.id), latDeg, lonDeg, elevationM };
  return { ...place, climate, clearness, outsideKwh, sunsetDeg, odds };
}

/** The nine nearest and likest in height, the station itself first. */
export function stationsAround(station: Station, all: readonly Station[]): Station[] {
  return all
    .filter((other) => Math.abs(other.latDeg - station.latDeg) < 3)
    .map((other) => {
      const km = earthDistanceKm(station, other);
      const apart = Math.hypot(km, (other.elevationM - station.elevationM) * KM_PER_M);
      return { other, km, apart };
    })
    .filter(({ km }) => km <= FARTHEST_KM)
    .sort((a, b) => a.apart - b.apart)
    .slice(0, ASKED)
    .map(({ other }) => other);
}

/** Diffuse share of a month by the general law, its clearness held to the range it was published for. */
export function lawShare(clearness: number, sunsetDeg: number): number {
  return monthlyDiffuseShare(clamp(clearness, 0.3, 0.8), sunsetDeg)!;
}

/** Odds of a share below 1. */
export const oddsOf = (share: number) => share / (1 - share);
