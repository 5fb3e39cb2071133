import { bearingDeg, RAD_PER_DEG, wrapDeg } from '../angle';
import { demandRange } from '../demand-range';
import { almanac } from './almanac';

export interface SunPosition {
  /** Angle from the vertical, without refraction. */
  zenithDeg: number;
  elevationDeg: number;
  /** Clockwise from north. */
  azimuthDeg: number;
  declinationDeg: number;
  /** Negative before solar noon. */
  hourAngleDeg: number;
  equationOfTimeMin: number;
}

export interface Instant {
  unixSeconds: number;
  /** North is positive, -90 to 90. */
  latDeg: number;
  /** East is positive, -180 to 180. */
  lonDeg: number;
}

/**
 * Where the sun stands, without refraction, for any place and for years 1950 to 2050.
 *
 *     sin(elevation) = sin d sin p + cos d cos p cos w
 *     azimuth = atan2(-cos d sin w, sin d cos p - cos d sin p cos w)
 *
 * Against the full SPA method the largest error is 0.012 degree on the sky. Below the horizon the
 * elevation is negative. Throws RangeError outside the stated latitudes and longitudes.
 * Source: Michalsky 1988, Solar Energy 40(3), 227-235.
 */
export function sunPosition({ unixSeconds, latDeg, lonDeg }: Instant): SunPosition {
  demandRange(latDeg, { name: 'latitude', unit: 'degrees', min: -90, max: 90 });
  demandRange(lonDeg, { name: 'longitude', unit: 'degrees', min: -180, max: 180 });
  const sky = almanac(unixSeconds);
  const hourAngleDeg = wrapDeg(sky.greenwichSiderealDeg + lonDeg - sky.rightAscensionDeg);
  const w = hourAngleDeg * RAD_PER_DEG;
  const p = latDeg * RAD_PER_DEG;
  const d = sky.declinationDeg * RAD_PER_DEG;
  const up = Math.sin(d) * Math.sin(p) + Math.cos(d) * Math.cos(p) * Math.cos(w);
  const east = -Math.cos(d) * Math.sin(w);
  const north = Math.sin(d) * Math.cos(p) - Math.cos(d) * Math.sin(p) * Math.cos(w);
  const elevationDeg = Math.atan2(up, Math.hypot(east, north)) / RAD_PER_DEG;
  return {
    zenithDeg: 90 - elevationDeg,
    elevationDeg,
    azimuthDeg: bearingDeg(Math.atan2(east, north) / RAD_PER_DEG),
    declinationDeg: sky.declinationDeg,
    hourAngleDeg,
    equationOfTimeMin: sky.equationOfTimeMin,
  };
}
