import { hdkrTilted, type TiltedHour } from '../sun/tilted-surface';
import { DAYS_PER_YEAR } from '../weather/calendar';
import type { YearSpan } from '../weather/hourly-temperature';
import type { Weather } from '../weather/weather-years';
import type { PlaneYear } from './plane-year';

/**
 * Hourly sun on a plane, Wh/m2, 8,760 values a year in the order of the weather's days; night is 0.
 *
 * The day's clearness gives its total and diffuse sun (Erbs, Klein & Duffie 1982, fitted to the place), the hour its share
 * of each (Collares-Pereira & Rabl 1979); what total is left above diffuse is beam, never below
 * zero. The sky is that of Reindl, Beckman & Duffie 1990 (HDKR). `albedo` is 0 to 1.
 */
export function planeSunWh(
  weather: Weather,
  plane: PlaneYear,
  { albedo, ...span }: YearSpan & { albedo: number },
): Float32Array {
  const { firstYear = 0, years = weather.years - firstYear } = span;
  const days = years * DAYS_PER_YEAR;
  const into = span.into ?? new Float32Array(days * 24);
  const hour: TiltedHour = {
    beam: 0,
    diffuse: 0,
    extraterrestrial: 0,
    beamRatio: 0,
    tiltDeg: plane.tiltDeg,
    albedo,
  };
  for (let day = 0; day < days; day++) {
    into.fill(0, day * 24, day * 24 + 24);
    const drawn = firstYear * DAYS_PER_YEAR + day;
    const sun = {
      clearness: weather.clearness[drawn]!,
      diffuseShare: weather.diffuseShare[drawn]!,
    };
    fillDay(into, day * 24, sun, plane, hour);
  }
  return into;
}

function fillDay(
  into: Float32Array,
  at: number,
  { clearness, diffuseShare }: { clearness: number; diffuseShare: number },
  plane: PlaneYear,
  hour: TiltedHour,
): void {
  const day = (at / 24) % DAYS_PER_YEAR;
  const { sky } = plane;
  const totalWh = clearness * sky.extraterrestrialKwh[day]! * 1000;
  const diffuseWh = totalWh * diffuseShare;
  for (let h = plane.firstHour[day]!; h < plane.endHour[day]!; h++) {
    const i = day * 24 + h;
    const level = totalWh * plane.totalShare[i]!;
    hour.diffuse = Math.min(level, diffuseWh * plane.diffuseShare[i]!);
    hour.beam = level - hour.diffuse;
    hour.extraterrestrial = plane.extraterrestrialWh[i]!;
    hour.beamRatio = plane.beamRatio[i]!;
    into[at + h] = hdkrTilted(hour).total;
  }
}
