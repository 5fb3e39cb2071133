import { RAD_PER_DEG } from '../angle';

export interface PlaneAndSun {
  latDeg: number;
  declinationDeg: number;
  /** Solar hour angle, negative in the morning. */
  hourAngleDeg: number;
  /** 0 flat, 90 upright. */
  tiltDeg: number;
  /** Compass bearing the plane faces, clockwise from north: 180 is south. */
  facingDeg: number;
}

/**
 * Cosine of the angle between the sun and a plane's normal; negative when the sun is behind the
 * plane, null when the sun is below the horizon.
 *
 *     cos i = sin d sin p cos b - sin d cos p sin b cos g + cos d cos p cos b cos w
 *           + cos d sin p sin b cos g cos w + cos d sin b sin g sin w
 *
 * with g counted from south, west positive (`facingDeg` - 180). Source: Duffie & Beckman, Solar
 * Engineering of Thermal Processes, 4th ed., eq. 1.6.2.
 */
export function cosIncidence(it: PlaneAndSun): number | null {
  if (cosZenith(it) <= 0) return null;
  return planeCosines(it)(it.hourAngleDeg * RAD_PER_DEG);
}

/** Cosine of the sun's zenith angle; zero or less at night. Duffie & Beckman, eq. 1.6.5. */
export function cosZenith(it: Omit<PlaneAndSun, 'tiltDeg' | 'facingDeg'>): number {
  return planeCosines({ ...it, tiltDeg: 0, facingDeg: 180 })(it.hourAngleDeg * RAD_PER_DEG);
}

/** The same cosine as a function of the hour angle in radians, for loops over one day. */
export function planeCosines(
  it: Omit<PlaneAndSun, 'hourAngleDeg'>,
): (hourAngleRad: number) => number {
  const { fixed, cosPart, sinPart } = planeCourse(it);
  return (w) => fixed + cosPart * Math.cos(w) + sinPart * Math.sin(w);
}

/** The cosine of incidence over one day as fixed + cosPart cos w + sinPart sin w. */
export interface PlaneCourse {
  fixed: number;
  cosPart: number;
  sinPart: number;
}

/** The three parts of a plane's cosine at one latitude and declination (Duffie & Beckman, eq. 1.6.2). */
export function planeCourse(it: Omit<PlaneAndSun, 'hourAngleDeg'>): PlaneCourse {
  const d = it.declinationDeg * RAD_PER_DEG;
  const p = it.latDeg * RAD_PER_DEG;
  const b = it.tiltDeg * RAD_PER_DEG;
  const g = (it.facingDeg - 180) * RAD_PER_DEG;
  const fixed = Math.sin(d) * (Math.sin(p) * Math.cos(b) - Math.cos(p) * Math.sin(b) * Math.cos(g));
  const cosPart =
    Math.cos(d) * (Math.cos(p) * Math.cos(b) + Math.sin(p) * Math.sin(b) * Math.cos(g));
  const sinPart = Math.cos(d) * Math.sin(b) * Math.sin(g);
  return { fixed, cosPart, sinPart };
}
