import {
  type ClockPlace,
  type Plane,
  type PlaneYear,
  planeYear,
} from '../../physics/panel/plane-year';
import type { SkyYear } from '../../physics/weather/sky-year';

/** Roofs kept before all are forgotten: those of a few answers, 140 kB each. */
const MOST_ROOFS = 8;

const years = new Map<string, PlaneYear>();

/**
 * The sun's course over one roof, worked out once: it rests on place and roof alone, and a plan draws its weather anew
 * for what is tried beside it. Not to be written to.
 */
export function roofYear(sky: SkyYear, plane: Plane, clock: ClockPlace): PlaneYear {
  const key = [sky.latDeg, plane.tiltDeg, plane.facingDeg, clock.lonDeg, clock.utcOffsetH].join(
    ' ',
  );
  const known = years.get(key);
  if (known !== undefined) return known;
  const made = planeYear(sky, plane, clock);
  if (years.size >= MOST_ROOFS) years.clear();
  years.set(key, made);
  return made;
}
