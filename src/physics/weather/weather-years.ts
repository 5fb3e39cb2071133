import { demandRange } from '../demand-range';
import { dailyDiffuseShare, withOdds } from '../sun/diffuse-share';
import { DAYS_PER_YEAR, MONTH_DAYS, MONTH_OF_DAY, MONTH_START } from './calendar';
import { type DaysOfSun, diffuseOdds } from './diffuse-odds';
import { endlessLag1 } from './lag1';
import { CLEAREST, type MonthClearness, monthClearness } from './month-clearness';
import { monthMean } from './month-curve';
import type { MonthlyClimate, Persistence } from './monthly-climate';
import { seededRandom } from './seeded-random';
import { type SkyYear, skyYear } from './sky-year';
import { temperatureCourse } from './temperature-course';

/** Synthetic days in a row, 365 a year, first January first. */
export interface Weather {
  years: number;
  seed: number;
  sky: SkyYear;
  /** Share of the sun outside the air that reaches the level, by day. */
  clearness: Float32Array;
  /** Share of the day's sun on the level that comes from the whole sky and not the disc. */
  diffuseShare: Float32Array;
  meanC: Float32Array;
  rangeK: Float32Array;
  /** Months, 0 to 11, whose scatter of clearness is wider than the named law, by the ratio. */
  widerThanLaw: { month: number; ratio: number }[];
}

export interface WeatherWish {
  climate: MonthlyClimate;
  persistence: Persistence;
  latDeg: number;
  /** 1 to 1000. */
  years: number;
  seed: number;
}

/** Clear days have wide ranges of temperature: K of range, as a share of the mean, per spread of clearness. */
const RANGE_PER_CLEARNESS = 0.15;
const NARROWEST_RANGE_SHARE = 0.2;

/** What the bent law leaves of the day-to-day correlation of the normal series behind it, in the mean over months. */
const LAW_DAMPS = 0.95;

/**
 * Years of daily clearness and temperature that keep a place's published statistics: monthly means
 * (exact over all years, by one factor or shift a calendar month), the month's split into beam and diffuse sun, the
 * scatter of days, how days hang together, and how clearness goes with temperature. The same seed gives the same years.
 *
 *     x_t = f x_(t-1) + sqrt(1 - f^2) e_t,   K_t = F^-1(Phi(x_t))
 *
 * Sources: Graham, Hollands & Unny 1988, Solar Energy 40(2), 83-92 (clearness); Richardson 1981,
 * Water Resour. Res. 17, 182-190 (temperature tied to radiation). Memory: 16 bytes a day.
 */
export function weatherYears(wish: WeatherWish): Weather {
  demandRange(wish.years, { name: 'years', unit: 'years', min: 1, max: 1000 });
  const sky = skyYear(wish.latDeg);
  const months = clearnessMonths(wish.climate, sky);
  const days = wish.years * DAYS_PER_YEAR;
  const weather: Weather = {
    years: wish.years,
    seed: wish.seed,
    sky,
    clearness: new Float32Array(days),
    diffuseShare: new Float32Array(days),
    meanC: new Float32Array(days),
    rangeK: new Float32Array(days),
    widerThanLaw: months.flatMap(({ stretch }, month) =>
      stretch > 1 ? [{ month, ratio: stretch }] : [],
    ),
  };
  drawDays(weather, months, wish);
  keepMeans(weather, wish.climate);
  splitSun(weather, wish.climate);
  return weather;
}

function clearnessMonths(climate: MonthlyClimate, sky: SkyYear): MonthClearness[] {
  return climate.ghiKwhPerM2Day.map((ghi, m) => {
    const outside = monthMean(sky.extraterrestrialKwh, m);
    return monthClearness(outside > 0.01 ? ghi / outside : 0, climate.clearnessSpread[m]!);
  });
}

function drawDays(weather: Weather, months: MonthClearness[], wish: WeatherWish): void {
  const { climate, persistence } = wish;
  const course = temperatureCourse(climate, persistence.temperatureLag1);
  const random = seededRandom(wish.seed);
  const f = endlessLag1(persistence.clearnessLag1) / LAW_DAMPS;
  const g = endlessLag1(persistence.temperatureLag1);
  const fresh = Math.sqrt(1 - f * f);
  const freshT = Math.sqrt(1 - g * g);
  let x = random.normal();
  let t = random.normal();
  for (let i = 0; i < weather.clearness.length; i++) {
    const day = i % DAYS_PER_YEAR;
    const m = MONTH_OF_DAY[day]!;
    // Correlation of the daily shocks that leaves the wished correlation between the two series.
    const tie = Math.max(
      -1,
      Math.min(1, (persistence.clearnessTemperature[m]! * (1 - f * g)) / (fresh * freshT)),
    );
    const e = random.normal();
    x = f * x + fresh * e;
    t = g * t + freshT * (tie * e + Math.sqrt(1 - tie * tie) * random.normal());
    const month = months[m]!;
    const k = month.at(x);
    weather.clearness[i] = k;
    weather.meanC[i] = course.usualC[day]! + course.strayK[day]! * t;
    const z = month.spread > 0 ? (k - month.mean) / month.spread : 0;
    weather.rangeK[i] =
      climate.rangeK[m]! * Math.max(NARROWEST_RANGE_SHARE, 1 + RANGE_PER_CLEARNESS * z);
  }
}

/** One factor (or shift) a calendar month over all years together, so that a bad year stays bad. */
function keepMeans(weather: Weather, climate: MonthlyClimate): void {
  const { years, meanC, rangeK } = weather;
  for (let m = 0; m < 12; m++) {
    keepSun(weather, m, climate.ghiKwhPerM2Day[m]! * years * MONTH_DAYS[m]!);
    let warmth = 0;
    let range = 0;
    eachDay(m, years, (i) => {
      warmth += meanC[i]!;
      range += rangeK[i]!;
    });
    const count = years * MONTH_DAYS[m]!;
    const shift = climate.meanC[m]! - warmth / count;
    const rangeFactor = range > 0 ? (climate.rangeK[m]! * count) / range : 0;
    eachDay(m, years, (i) => {
      meanC[i] = meanC[i]! + shift;
      rangeK[i] = rangeK[i]! * rangeFactor;
    });
  }
}

/** Rounds in which a month's sun is scaled: where few years were drawn, a day at the ceiling leaves the rest to the others. */
const SUN_ROUNDS = 6;

/** One factor on every day of month `m` so that its sun comes to `wishedKwh` in all, no day clearer than a sky can be. */
function keepSun({ sky, years, clearness }: Weather, m: number, wishedKwh: number): void {
  for (let round = 0; round < SUN_ROUNDS; round++) {
    let sun = 0;
    let outside = 0;
    eachDay(m, years, (i, day) => {
      sun += clearness[i]! * sky.extraterrestrialKwh[day]!;
      outside += sky.extraterrestrialKwh[day]!;
    });
    const factor = sun > 0 ? wishedKwh / sun : 0;
    // Beside polar night the rounded mean may be more than the sky gives; it is kept all the same.
    const ceiling = Math.max(CLEAREST, outside > 0 ? (1.1 * wishedKwh) / outside : 0);
    let clipped = false;
    eachDay(m, years, (i) => {
      const k = clearness[i]! * factor;
      clipped ||= k > ceiling;
      clearness[i] = Math.min(k, ceiling);
    });
    if (!clipped) return;
  }
}

/**
 * The diffuse share of each day by the general law, its odds moved by one factor a calendar month so that the month's
 * diffuse sun is the place's: a dark sky over snow or a lake throws far more of it back and forth than the law says.
 */
function splitSun(weather: Weather, climate: MonthlyClimate): void {
  const { sky, years, clearness, diffuseShare } = weather;
  for (let m = 0; m < 12; m++) {
    const days: DaysOfSun = {
      sun: new Float64Array(years * MONTH_DAYS[m]!),
      share: new Float64Array(years * MONTH_DAYS[m]!),
    };
    let n = 0;
    eachDay(m, years, (i, day) => {
      const k = clearness[i]!;
      days.sun[n] = k * sky.extraterrestrialKwh[day]!;
      days.share[n++] = dailyDiffuseShare(k, sky.sunsetHourAngleDeg[day]!);
    });
    const level = climate.ghiKwhPerM2Day[m]!;
    const wished = level > 0 ? Math.min(climate.diffuseKwhPerM2Day[m]! / level, 1) : 1;
    const odds = diffuseOdds(days, wished);
    n = 0;
    eachDay(m, years, (i) => {
      diffuseShare[i] = withOdds(days.share[n++]!, odds);
    });
  }
}

function eachDay(m: number, years: number, visit: (i: number, day: number) => void): void {
  const start = MONTH_START[m]!;
  for (let y = 0; y < years; y++) {
    for (let d = 0; d < MONTH_DAYS[m]!; d++) {
      visit(y * DAYS_PER_YEAR + start + d, start + d);
    }
  }
}
