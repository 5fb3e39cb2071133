import { MONTH_DAYS, MONTH_OF_DAY } from '../../physics/weather/calendar';
import { coolingDegrees, heatingDegrees } from '../../physics/weather/degree-days';
import { DAILY_RANGE_FRACTION } from '../../physics/weather/hourly-temperature';
import { temperatureCourse } from '../../physics/weather/temperature-course';
import type { Climate } from '../../tables/place/climate';
import { BALANCE_C } from '../heat/heat-need';

/** Five points of Gauss and Hermite for a normal law, in standard deviations. Abramowitz & Stegun 1964, Table 25.10. */
const POINTS = [
  [-2.856970013872806, 0.011257411327720682],
  [-1.355626179974266, 0.22207592200561266],
  [0, 0.5333333333333333],
  [1.355626179974266, 0.22207592200561266],
  [2.856970013872806, 0.011257411327720682],
] as const;

/** Variance of the hours of a day about its mean, in daily ranges squared. */
const HOURS_VARIANCE = (() => {
  const mean = DAILY_RANGE_FRACTION.reduce<number>((sum, share) => sum + share, 0) / 24;
  return DAILY_RANGE_FRACTION.reduce<number>((sum, share) => sum + (share - mean) ** 2, 0) / 24;
})();

/** Mean temperature of each of 365 days, and how far its mean and its hours stray from it over the years, C and K. */
interface UsualHours {
  readonly meanC: Float64Array;
  readonly dayStrayK: Float64Array;
  readonly strayK: Float64Array;
}

const made = new WeakMap<Climate, UsualHours>();

function usualHours(climate: Climate): UsualHours {
  const kept = made.get(climate);
  if (kept !== undefined) return kept;
  const { usualC, strayK } = temperatureCourse(climate, climate.temperatureLag1);
  const hours = {
    meanC: usualC,
    dayStrayK: strayK,
    strayK: strayK.map((stray, day) =>
      Math.sqrt(stray ** 2 + HOURS_VARIANCE * climate.rangeK[MONTH_OF_DAY[day]!]! ** 2),
    ),
  };
  made.set(climate, hours);
  return hours;
}

/**
 * Mean of a function of the hour's temperature over each month of a usual year, January first: the same course,
 * spread and daily range as the drawn years have, hours taken as normal about the day's usual mean.
 */
export function monthMeans(climate: Climate, of: (airC: number) => number): number[] {
  const { meanC, strayK } = usualHours(climate);
  const sums = new Array<number>(12).fill(0);
  for (let day = 0; day < meanC.length; day++) {
    for (const [z, weight] of POINTS) {
      sums[MONTH_OF_DAY[day]!]! += weight * of(meanC[day]! + z * strayK[day]!);
    }
  }
  return sums.map((sum, month) => sum / MONTH_DAYS[month]!);
}

/** Heating and cooling degrees of a usual day of each month, base 65 F, January first, K. */
export function monthDegrees(climate: Climate): { heatingK: number[]; coolingK: number[] } {
  const { meanC, dayStrayK } = usualHours(climate);
  const heatingK = new Array<number>(12).fill(0);
  const coolingK = new Array<number>(12).fill(0);
  for (let day = 0; day < meanC.length; day++) {
    const month = MONTH_OF_DAY[day]!;
    const usual = { meanC: meanC[day]!, strayK: dayStrayK[day]! };
    heatingK[month]! += heatingDegrees(usual, BALANCE_C) / MONTH_DAYS[month]!;
    coolingK[month]! += coolingDegrees(usual, BALANCE_C) / MONTH_DAYS[month]!;
  }
  return { heatingK, coolingK };
}
