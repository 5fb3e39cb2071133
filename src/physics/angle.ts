/** Radians in one degree. */
export const RAD_PER_DEG = Math.PI / 180;

/** Wrap an angle to the half-open interval [-180, 180) degrees. */
export function wrapDeg(deg: number): number {
  return deg - 360 * Math.floor((deg + 180) / 360);
}

/** Wrap an angle to [0, 360) degrees, as a compass bearing. */
export function bearingDeg(deg: number): number {
  return deg - 360 * Math.floor(deg / 360);
}
