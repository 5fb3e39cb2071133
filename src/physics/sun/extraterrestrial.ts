import { RAD_PER_DEG } from '../angle';
import { sunsetHourAngleDeg } from './sunset-hour-angle';

/** Solar constant, W/m2: the value used by Duffie & Beckman, 4th ed., section 1.2. */
export const SOLAR_CONSTANT_W_PER_M2 = 1367;

export interface SkyDay {
  latDeg: number;
  declinationDeg: number;
  /** (mean distance / distance)^2 of the sun, about 0.967 to 1.034. */
  distanceFactor: number;
}

/**
 * Sun on a level surface outside the air over one day, kWh/m2. Zero in polar night.
 *
 *     H0 = (24/pi) Gsc E0 (cos p cos d sin ws + ws sin p sin d)
 *
 * Source: Duffie & Beckman, 4th ed., eq. 1.10.3.
 */
export function dailyExtraterrestrial(day: SkyDay): number {
  const { latDeg, declinationDeg, distanceFactor } = day;
  const ws = sunsetHourAngleDeg(latDeg, declinationDeg);
  return hourlyExtraterrestrial({
    latDeg,
    declinationDeg,
    distanceFactor,
    fromDeg: -ws,
    toDeg: ws,
  });
}

/**
 * The same between two hour angles of one day, kWh/m2. Night inside the span counts as nothing.
 *
 *     I0 = (12/pi) Gsc E0 [cos p cos d (sin w2 - sin w1) + (w2 - w1) sin p sin d]
 *
 * Source: Duffie & Beckman, 4th ed., eq. 1.10.4.
 */
export function hourlyExtraterrestrial(span: SkyDay & { fromDeg: number; toDeg: number }): number {
  const ws = sunsetHourAngleDeg(span.latDeg, span.declinationDeg);
  const w1 = Math.max(span.fromDeg, -ws) * RAD_PER_DEG;
  const w2 = Math.min(span.toDeg, ws) * RAD_PER_DEG;
  if (w2 <= w1) return 0;
  const p = span.latDeg * RAD_PER_DEG;
  const d = span.declinationDeg * RAD_PER_DEG;
  const beam =
    Math.cos(p) * Math.cos(d) * (Math.sin(w2) - Math.sin(w1)) +
    (w2 - w1) * Math.sin(p) * Math.sin(d);
  return ((12 / Math.PI) * SOLAR_CONSTANT_W_PER_M2 * span.distanceFactor * beam) / 1000;
}
