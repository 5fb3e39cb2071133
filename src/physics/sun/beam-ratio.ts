import type { PlaneCourse } from './incidence';

const TURN = 2 * Math.PI;

/** Under this much sun on the level, as cosine times radians of hour angle, an hour has no beam to speak of. */
const LEAST_LEVEL = 1e-9;

/**
 * Beam on a plane over beam on the level between two hour angles, radians, `to` at most a turn after `from`: both cosines
 * integrated in closed form over the part of the span with the sun up, the plane's over the part in which it faces the sun.
 *
 *     Rb = int max(0, A + B cos w + C sin w) dw / int (D + E cos w) dw,   |w| <= ws
 *
 * 0 at night. However little of the span the sun is up, what reaches the plane is no more than the sun outside the air.
 * Source: Duffie & Beckman, 4th ed., section 2.14 (hourly integrals); the cut where the sun is behind the plane is ours.
 */
export function beamRatio(
  { plane, level }: { plane: PlaneCourse; level: PlaneCourse },
  { fromRad, toRad, sunsetRad }: { fromRad: number; toRad: number; sunsetRad: number },
): number {
  let onPlane = 0;
  let onLevel = 0;
  // A clock hour may straddle solar midnight, so its copies a turn either way count too.
  for (const turn of [-TURN, 0, TURN]) {
    const from = Math.max(fromRad + turn, -sunsetRad);
    const to = Math.min(toRad + turn, sunsetRad);
    if (to <= from) continue;
    onPlane += facingPart(plane, from, to);
    onLevel += integral(level, to) - integral(level, from);
  }
  return onLevel > LEAST_LEVEL ? onPlane / onLevel : 0;
}

/** Integral of the positive part of a course over [from, to], which is at most a turn wide. */
function facingPart(course: PlaneCourse, from: number, to: number): number {
  const size = Math.hypot(course.cosPart, course.sinPart);
  if (course.fixed >= size) return integral(course, to) - integral(course, from);
  if (course.fixed <= -size) return 0;
  // The course is fixed + size cos(w - top): positive within `half` of its top.
  const top = Math.atan2(course.sinPart, course.cosPart);
  const half = Math.acos(-course.fixed / size);
  let sum = 0;
  for (const turn of [-TURN, 0, TURN]) {
    const start = Math.max(from, top + turn - half);
    const end = Math.min(to, top + turn + half);
    if (end > start) sum += integral(course, end) - integral(course, start);
  }
  return sum;
}

function integral({ fixed, cosPart, sinPart }: PlaneCourse, w: number): number {
  return fixed * w + cosPart * Math.sin(w) - sinPart * Math.cos(w);
}
