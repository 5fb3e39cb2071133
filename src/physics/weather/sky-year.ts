import { onceMade } from '../../quantity/once-made';
import { almanac } from '../sun/almanac';
import { dailyExtraterrestrial } from '../sun/extraterrestrial';
import { sunsetHourAngleDeg } from '../sun/sunset-hour-angle';
import { DAYS_PER_YEAR } from './calendar';

/** The sun's course over a plain year at one latitude, a value for each of 365 days. */
export interface SkyYear {
  latDeg: number;
  declinationDeg: Float64Array;
  equationOfTimeMin: Float64Array;
  /** Sun outside the air on the level, kWh/m2 a day; 0 in polar night. */
  extraterrestrialKwh: Float64Array;
  sunsetHourAngleDeg: Float64Array;
}

/** 2023-01-01 18:00 UTC, noon in the middle of the country, in a year midway between leap days. */
const FIRST_NOON = Date.UTC(2023, 0, 1, 18) / 1000;

/** The sun of each day, the same at every latitude. */
const days = onceMade(() =>
  Array.from({ length: DAYS_PER_YEAR }, (_, day) => almanac(FIRST_NOON + day * 86_400)),
);

/** Declination, equation of time and extraterrestrial sun for every day of a year at `latDeg`. */
export function skyYear(latDeg: number): SkyYear {
  const year: SkyYear = {
    latDeg,
    declinationDeg: new Float64Array(DAYS_PER_YEAR),
    equationOfTimeMin: new Float64Array(DAYS_PER_YEAR),
    extraterrestrialKwh: new Float64Array(DAYS_PER_YEAR),
    sunsetHourAngleDeg: new Float64Array(DAYS_PER_YEAR),
  };
  for (const [day, { declinationDeg, equationOfTimeMin, distanceAu }] of days().entries()) {
    const distanceFactor = 1 / distanceAu ** 2;
    year.declinationDeg[day] = declinationDeg;
    year.equationOfTimeMin[day] = equationOfTimeMin;
    year.sunsetHourAngleDeg[day] = sunsetHourAngleDeg(latDeg, declinationDeg);
    year.extraterrestrialKwh[day] = dailyExtraterrestrial({
      latDeg,
      declinationDeg,
      distanceFactor,
    });
  }
  return year;
}
