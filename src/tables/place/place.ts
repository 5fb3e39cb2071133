import { LastUsed } from '../../quantity/last-used';
import { atHeight } from './at-height';
import type { Climate } from './climate';
import {
  blendClimate,
  FAR_HEIGHT_M,
  FAR_KM,
  type NearStation,
  nearStations,
} from './near-stations';
import { sayStation } from './say-station';
import { type PlaceBasis, type Where, whereZip } from './where-zip';

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
  /** How the place was found. */
  basis: PlaceBasis;
  stations: PlaceStation[];
  /** What makes the figures doubtful; empty when nothing does. */
  warnings: PlaceWarning[];
  climate: Climate;
}

/** A station that speaks for a home, how far and how much higher (+) or lower it stands, and its share. */
export interface PlaceStation {
  id: string;
  name: string;
  state: string;
  /** Town and state by which people know it. */
  near: string;
  elevationM: number;
  distanceKm: number;
  /** null: the height of the home is not known. */
  heightDifferenceM: number | null;
  share: number;
}

/** What makes the figures of a place doubtful, of the station that fits best. */
export type PlaceWarning =
  | { code: 'far'; distanceKm: number }
  | { code: 'other-height'; differenceM: number }
  /** The stations differ by so much in height, and that of the home is not known. */
  | { code: 'heights-differ'; spreadM: number };

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
 * The last ones are kept, and given again as they are.
 */
export function placeOf(whereabouts: Whereabouts): Place {
  const { zip, state, elevationM } = whereabouts;
  const name = [zip, state, elevationM].join('|');
  const known = kept.get(name);
  if (known !== undefined) return known;
  const place = lookUp(whereabouts);
  kept.set(name, place);
  return place;
}

const kept = new LastUsed<Place>(16);

function lookUp({ zip, state, elevationM }: Whereabouts): Place {
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
    stations: near.map(({ station, ...rest }) => ({
      id: station.id,
      name: station.name,
      state: station.state,
      near: sayStation(station),
      elevationM: station.elevationM,
      ...rest,
    })),
    warnings: warningsFor(near),
    climate: told ? atHeight(blend, elevationM - stationHeight) : blend,
  };
}

function warningsFor(near: readonly NearStation[]): PlaceWarning[] {
  const { distanceKm, heightDifferenceM } = near[0]!;
  const warnings: PlaceWarning[] = [];
  if (distanceKm > FAR_KM) warnings.push({ code: 'far', distanceKm });
  if (heightDifferenceM !== null && Math.abs(heightDifferenceM) > FAR_HEIGHT_M)
    warnings.push({ code: 'other-height', differenceM: heightDifferenceM });
  const spreadM = heightSpread(near);
  if (heightDifferenceM === null && spreadM > FAR_HEIGHT_M)
    warnings.push({ code: 'heights-differ', spreadM });
  return warnings;
}

function heightSpread(near: readonly NearStation[]): number {
  const heights = near.map((one) => one.station.elevationM);
  return Math.max(...heights) - Math.min(...heights);
}
