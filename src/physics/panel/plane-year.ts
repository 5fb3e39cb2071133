import { RAD_PER_DEG } from '../angle';
import { beamRatio } from '../sun/beam-ratio';
import { hourShare } from '../sun/hour-share';
import { planeCourse } from '../sun/incidence';
import { DAYS_PER_YEAR } from '../weather/calendar';
import type { SkyYear } from '../weather/sky-year';

/** One face that panels lie on. */
export interface Plane {
  /** 0 flat, 90 upright. */
  tiltDeg: number;
  /** Compass bearing it faces, clockwise from north: 90 east, 180 south. */
  facingDeg: number;
}

/** Where the clock's hours fall on the sun's: without it hours count in solar time. */
export interface ClockPlace {
  lonDeg: number;
  utcOffsetH: number;
}

/** What repeats every year at one place and plane: 365 x 24 values, hour by hour. */
export interface PlaneYear {
  sky: SkyYear;
  tiltDeg: number;
  /** First and last + 1 hour with sun, by day; equal in polar night. */
  firstHour: Uint8Array;
  endHour: Uint8Array;
  /** Share of the day's total, and of its diffuse, sun. */
  totalShare: Float32Array;
  diffuseShare: Float32Array;
  /** Sun outside the air on the level, Wh/m2. */
  extraterrestrialWh: Float32Array;
  /** Beam on the plane over beam on the level. */
  beamRatio: Float32Array;
}

const HOUR_RAD = 15 * RAD_PER_DEG;

/**
 * The geometry of one plane for every hour of a plain year. The beam ratio is the integral
 * of the plane's cosine over that of the level's, from sunrise or the hour's start to sunset or the hour's end.
 */
export function planeYear(sky: SkyYear, plane: Plane, clock: ClockPlace | null): PlaneYear {
  const hours = DAYS_PER_YEAR * 24;
  const year: PlaneYear = {
    sky,
    tiltDeg: plane.tiltDeg,
    firstHour: new Uint8Array(DAYS_PER_YEAR),
    endHour: new Uint8Array(DAYS_PER_YEAR),
    totalShare: new Float32Array(hours),
    diffuseShare: new Float32Array(hours),
    extraterrestrialWh: new Float32Array(hours),
    beamRatio: new Float32Array(hours),
  };
  const shiftH = clock === null ? 0 : clock.lonDeg / 15 - clock.utcOffsetH;
  for (let day = 0; day < DAYS_PER_YEAR; day++) {
    const eot = clock === null ? 0 : sky.equationOfTimeMin[day]! / 60;
    fillDay(year, day, plane, shiftH + eot);
  }
  return year;
}

function fillDay(year: PlaneYear, day: number, plane: Plane, solarAheadH: number): void {
  const { latDeg } = year.sky;
  const declinationDeg = year.sky.declinationDeg[day]!;
  const share = hourShare({ latDeg, declinationDeg });
  if (share === null) return;
  const courses = {
    plane: planeCourse({ latDeg, declinationDeg, ...plane }),
    level: planeCourse({ latDeg, declinationDeg, tiltDeg: 0, facingDeg: 180 }),
  };
  const sunsetRad = year.sky.sunsetHourAngleDeg[day]! * RAD_PER_DEG;
  const outsideWh = year.sky.extraterrestrialKwh[day]! * 1000;
  let first = 24;
  let end = 0;
  for (let h = 0; h < 24; h++) {
    const from = (h + solarAheadH - 12) * HOUR_RAD;
    const total = share.total(from, from + HOUR_RAD);
    if (total <= 0) continue;
    first = Math.min(first, h);
    end = h + 1;
    const i = day * 24 + h;
    year.totalShare[i] = total;
    year.diffuseShare[i] = share.diffuse(from, from + HOUR_RAD);
    // Outside the air the day follows the same cosine as the diffuse part, so its share is the same.
    year.extraterrestrialWh[i] = year.diffuseShare[i]! * outsideWh;
    year.beamRatio[i] = beamRatio(courses, {
      fromRad: from,
      toRad: from + HOUR_RAD,
      sunsetRad,
    });
  }
  year.firstHour[day] = Math.min(first, end);
  year.endHour[day] = end;
}
