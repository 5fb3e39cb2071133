import { atHeight } from './at-height';
import { blendClimate } from './blend-climate';
import type { Climate } from './climate';
import { FAR_HEIGHT_M, FAR_KM, type NearStation, nearStations } from './near-stations';
import { sayStation } from './say-station';
import { type Where, whereZip } from './where-zip';

/** Where the home is, which stations speak for it, and its climate. */
export interface Place {
  latDeg: number;
  lonDeg: number;
  /** Height of the home as told, else of the stations; m. */
  elevationM: number;
  elevationTold: boolean;
  /** Hours of local standard time ahead of UTC, of the nearest station. */
  utcOffsetH: number;
  /** Two letters; null when nothing tells. */
  state: string | null;
  foundBy: Where['foundBy'];
  /** One sentence: how the place was found. */
  basis: string;
  /** One sentence: which stations, how far, how high. */
  stationsUsed: string;
  stations: {
    id: string;
    name: string;
    state: string;
    distanceKm: number;
    heightDifferenceM: number | null;
    share: number;
  }[];
  /** Sentences on what makes the figures doubtful; empty when nothing does. */
  warnings: string[];
  climate: Climate;
}

/** What is known of the home's whereabouts. */
export interface Whereabouts {
  zip: string;
  /** Two letters, used when the ZIP code does not tell. */
  state?: string;
  /** Height above the sea, m, when the household knows it. */
  elevationM?: number;
}

/**
 * The place and climate of a home. Never fails: a ZIP code that is unknown, of a territory or
 * nonsense falls back step by step and `basis` says so; far or much higher stations raise a warning.
 */
export function placeOf({ zip, state, elevationM }: Whereabouts): Place {
  const where = whereZip(zip, state);
  const told = elevationM !== undefined && Number.isFinite(elevationM);
  const near = nearStations({ ...where, elevationM: told ? elevationM : null });
  const stationHeight = near.reduce((sum, one) => sum + one.share * one.station.elevationM, 0);
  const blend = blendClimate(near.map((one) => ({ climate: one.station.held, share: one.share })));
  return {
    latDeg: where.latDeg,
    lonDeg: where.lonDeg,
    elevationM: told ? elevationM : stationHeight,
    elevationTold: told,
    utcOffsetH: near[0]!.station.utcOffsetH,
    state: where.state,
    foundBy: where.foundBy,
    basis: where.basis,
    stationsUsed: stationsSentence(near),
    stations: near.map(({ station: { id, name, state: at }, ...rest }) => ({
      id,
      name,
      state: at,
      ...rest,
    })),
    warnings: warningsFor(near),
    climate: told ? atHeight(blend, elevationM - stationHeight) : blend,
  };
}

function stationsSentence(near: readonly NearStation[]): string {
  const each = near.map(({ station, distanceKm, heightDifferenceM, share }) => {
    const height =
      heightDifferenceM === null
        ? `at ${feet(station.elevationM)}`
        : `${feet(Math.abs(heightDifferenceM))} ${heightDifferenceM < 0 ? 'lower' : 'higher'}`;
    return `${sayStation(station)} (${miles(distanceKm)} away, ${height}, counted ${Math.round(share * 100)} %)`;
  });
  if (each.length === 1) return `Weather from a station near ${each[0]}.`;
  return `Weather from a mix of stations near ${each.join('; ')}, the nearest and likest counted most.`;
}

function warningsFor(near: readonly NearStation[]): string[] {
  const { distanceKm, heightDifferenceM } = near[0]!;
  const warnings: string[] = [];
  if (distanceKm > FAR_KM) {
    warnings.push(
      `The weather station that fits best is ${miles(distanceKm)} away; sun and temperature at your home may differ.`,
    );
  }
  if (heightDifferenceM !== null && Math.abs(heightDifferenceM) > FAR_HEIGHT_M) {
    warnings.push(
      `The weather station that fits best is ${feet(Math.abs(heightDifferenceM))} ${heightDifferenceM < 0 ? 'lower' : 'higher'} than your home; temperatures are moved by 3.6 °F for each 1,000 ft (6.5 °C a kilometer).`,
    );
  }
  if (heightDifferenceM === null && heightSpread(near) > FAR_HEIGHT_M) {
    warnings.push(
      `The stations near you differ by ${feet(heightSpread(near))} in height; tell us how high your home is and the weather will fit better.`,
    );
  }
  return warnings;
}

function heightSpread(near: readonly NearStation[]): number {
  const heights = near.map((one) => one.station.elevationM);
  return Math.max(...heights) - Math.min(...heights);
}

const M_PER_FT = 0.3048;
const KM_PER_MILE = 1.609344;

const feet = (m: number) => `${Math.round(m / M_PER_FT).toLocaleString('en-US')} ft`;

function miles(km: number): string {
  const whole = Math.round(km / KM_PER_MILE);
  return `${whole} ${whole === 1 ? 'mile' : 'miles'}`;
}
