import { RAD_PER_DEG } from '../angle';
import { almanac } from './almanac';
import { sunPosition } from './sun-position';

/** Elevation of the sun's center when its upper rim touches the horizon: 34' of air, 16' of disc. */
const RISE_ELEVATION_DEG = -0.8333;

export interface SunTimes {
  /** Unix seconds; null when the sun does not rise or set that day (polar day or night). */
  sunrise: number | null;
  transit: number;
  sunset: number | null;
  /** True when the sun stays up the whole day, false when it stays down, null on an ordinary day. */
  upAllDay: boolean | null;
}

export interface LocalDay {
  year: number;
  /** 1 to 12. */
  month: number;
  day: number;
  latDeg: number;
  lonDeg: number;
  /** Hours of the local clock ahead of UTC; decides which day is meant. */
  utcOffsetH: number;
}

/**
 * Sunrise, noon passage and sunset of one local calendar day, by the hour angle at which the
 * upper rim meets the horizon, repeated until the instant stands still:
 *
 *     cos w = (sin h - sin p sin d) / (cos p cos d),   h = -0.8333 degree
 *
 * Never NaN: in polar day or night `sunrise` and `sunset` are null. Good to a minute below the
 * polar circles. Rim and refraction as in the Astronomical Almanac.
 */
export function sunTimes(on: LocalDay): SunTimes {
  const midnight = Date.UTC(on.year, on.month - 1, on.day) / 1000 - on.utcOffsetH * 3600;
  const transit = transitNear(midnight + 43_200, on.lonDeg);
  const morning = crossing(transit, on, -1);
  const evening = crossing(transit, on, 1);
  if (morning !== null && evening !== null) {
    return { sunrise: morning, transit, sunset: evening, upAllDay: null };
  }
  const noon = sunPosition({ unixSeconds: transit, latDeg: on.latDeg, lonDeg: on.lonDeg });
  const upAllDay = noon.elevationDeg > RISE_ELEVATION_DEG;
  return { sunrise: null, transit, sunset: null, upAllDay };
}

/** The passage over the meridian nearest to a guess. */
function transitNear(guess: number, lonDeg: number): number {
  let at = guess;
  for (let i = 0; i < 3; i++) {
    at -= sunPosition({ unixSeconds: at, latDeg: 0, lonDeg }).hourAngleDeg * 240;
  }
  return at;
}

/** `side` -1 for the morning, 1 for the evening; null when the sun does not cross the horizon. */
function crossing(transit: number, { latDeg }: { latDeg: number }, side: 1 | -1): number | null {
  const p = latDeg * RAD_PER_DEG;
  let at = transit;
  for (let i = 0; i < 5; i++) {
    const d = almanac(at).declinationDeg * RAD_PER_DEG;
    const cos =
      (Math.sin(RISE_ELEVATION_DEG * RAD_PER_DEG) - Math.sin(p) * Math.sin(d)) /
      (Math.cos(p) * Math.cos(d));
    if (!(Math.abs(cos) <= 1)) return null;
    at = transit + ((side * Math.acos(cos)) / RAD_PER_DEG) * 240;
  }
  return at;
}
