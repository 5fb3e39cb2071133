import { RAD_PER_DEG } from '../angle';
import { sunsetHourAngleDeg } from './sunset-hour-angle';

export interface SunDay {
  latDeg: number;
  declinationDeg: number;
}

/** Two functions of an hour-angle span in radians: its share of the day's total and diffuse sun. */
export interface HourShare {
  total(fromRad: number, toRad: number): number;
  diffuse(fromRad: number, toRad: number): number;
}

const TURN = 2 * Math.PI;

/**
 * How a day's sun falls over its hours, as shares that sum to one. The total follows
 * (a + b cos w)(cos w - cos ws), the diffuse part (cos w - cos ws), both integrated over the span and
 * divided by their own integral over the day, so nothing is lost and no table of corrections is
 * needed. Night is masked by the hour angle: outside +-ws the product can turn positive again.
 * Null in polar night. Polar day is covered: the horizon is never reached and the span is the turn.
 *
 *     a = 0.409 + 0.5016 sin(ws - 60)     b = 0.6609 - 0.4767 sin(ws - 60)
 *
 * Source: Collares-Pereira & Rabl 1979, Solar Energy 22, 155-164; Liu & Jordan 1960 for the
 * diffuse part (Duffie & Beckman, 4th ed., 2.13.1-2.13.4).
 */
export function hourShare({ latDeg, declinationDeg }: SunDay): HourShare | null {
  const wsDeg = sunsetHourAngleDeg(latDeg, declinationDeg);
  if (wsDeg === 0) return null;
  const ws = wsDeg * RAD_PER_DEG;
  const { a, b } = profileConstants(wsDeg);
  const p = latDeg * RAD_PER_DEG;
  const d = declinationDeg * RAD_PER_DEG;
  const still = Math.sin(p) * Math.sin(d);
  const swing = Math.cos(p) * Math.cos(d);
  // Integrals of (still + swing cos w), and of that times (a + b cos w).
  const sky = (w: number) => still * w + swing * Math.sin(w);
  const sun = (w: number) =>
    a * sky(w) + b * (still * Math.sin(w) + swing * (w / 2 + Math.sin(2 * w) / 4));
  return { total: share(sun, ws), diffuse: share(sky, ws) };
}

/** The two constants of the total profile; the minus before 0.4767 is right, some texts misprint it. */
export function profileConstants(wsDeg: number): { a: number; b: number } {
  const s = Math.sin((wsDeg - 60) * RAD_PER_DEG);
  return { a: 0.409 + 0.5016 * s, b: 0.6609 - 0.4767 * s };
}

function share(integral: (w: number) => number, ws: number) {
  const whole = integral(ws) - integral(-ws);
  return (fromRad: number, toRad: number): number => {
    let sum = 0;
    // A clock hour may straddle solar midnight, so its copies a turn either way count too.
    for (const turn of [-TURN, 0, TURN]) {
      const w1 = Math.max(fromRad + turn, -ws);
      const w2 = Math.min(toRad + turn, ws);
      if (w2 > w1) sum += integral(w2) - integral(w1);
    }
    return sum / whole;
  };
}
