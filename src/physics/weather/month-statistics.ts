import { DAYS_PER_YEAR, MONTH_DAYS, MONTH_START } from './calendar';
import type { Weather } from './weather-years';

/** What the synthetic days of one calendar month add up to, pooled over all years. */
export interface MonthStatistics {
  /** 0 to 11. */
  month: number;
  ghiKwhPerM2Day: number;
  /** Mean and standard deviation of daily clearness over all days. */
  clearness: number;
  clearnessSpread: number;
  /** Standard deviation of the month's mean sun between years, over its mean; null with one year. */
  betweenYears: number | null;
  /** Sun of the darkest 3, and 7, days in a row over the month's own mean: mean over years. */
  darkest3Days: number | null;
  darkest7Days: number | null;
  meanC: number;
  rangeK: number;
}

/** Statistics of each calendar month. A month without sun has null ratios, never NaN. */
export function monthStatistics(weather: Weather): MonthStatistics[] {
  return MONTH_DAYS.map((_, month) => oneMonth(weather, month));
}

function oneMonth(weather: Weather, month: number): MonthStatistics {
  const { years, clearness, meanC, rangeK, sky } = weather;
  const start = MONTH_START[month]!;
  const days = MONTH_DAYS[month]!;
  const yearly: number[] = [];
  const runs3: number[] = [];
  const runs7: number[] = [];
  let squares = 0;
  let [k, c, r] = [0, 0, 0];
  for (let y = 0; y < years; y++) {
    const sun = new Float64Array(days);
    for (let d = 0; d < days; d++) {
      const i = y * DAYS_PER_YEAR + start + d;
      sun[d] = clearness[i]! * sky.extraterrestrialKwh[start + d]!;
      k += clearness[i]!;
      squares += clearness[i]! ** 2;
      c += meanC[i]!;
      r += rangeK[i]!;
    }
    const mean = meanOf(sun);
    yearly.push(mean);
    if (mean > 0) {
      runs3.push(darkestRun(sun, 3) / mean);
      runs7.push(darkestRun(sun, 7) / mean);
    }
  }
  const count = years * days;
  const ghi = meanOf(yearly);
  return {
    month,
    ghiKwhPerM2Day: ghi,
    clearness: k / count,
    clearnessSpread: Math.sqrt(Math.max(0, squares / count - (k / count) ** 2)),
    betweenYears: years > 1 && ghi > 0 ? spreadOf(yearly) / ghi : null,
    darkest3Days: runs3.length > 0 ? meanOf(runs3) : null,
    darkest7Days: runs7.length > 0 ? meanOf(runs7) : null,
    meanC: c / count,
    rangeK: r / count,
  };
}

/** The smallest mean of `length` values in a row. */
export function darkestRun(values: ArrayLike<number>, length: number): number {
  let sum = 0;
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < values.length; i++) {
    sum += values[i]! - (i >= length ? values[i - length]! : 0);
    if (i >= length - 1) least = Math.min(least, sum);
  }
  return Math.max(0, least) / length;
}

function meanOf(values: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 0; i < values.length; i++) sum += values[i]!;
  return sum / values.length;
}

function spreadOf(values: readonly number[]): number {
  const mean = meanOf(values);
  return Math.sqrt(values.reduce((sum, v) => sum + (v - mean) ** 2, 0) / (values.length - 1));
}
