import { RAD_PER_DEG } from '../angle';

/**
 * Hour angle at sunset, degrees: 0 in polar night, 180 in polar day, never NaN.
 *
 *     cos ws = -tan p tan d
 *
 * Geometric: no refraction, sun as a point. Source: Duffie & Beckman, 4th ed., eq. 1.6.10.
 */
export function sunsetHourAngleDeg(latDeg: number, declinationDeg: number): number {
  const p = latDeg * RAD_PER_DEG;
  const d = declinationDeg * RAD_PER_DEG;
  // Multiplied through by cos p cos d, so the poles need no case of their own.
  const still = Math.sin(p) * Math.sin(d);
  const swing = Math.cos(p) * Math.cos(d);
  if (still >= swing) return 180;
  if (still <= -swing) return 0;
  return Math.acos(-still / swing) / RAD_PER_DEG;
}
