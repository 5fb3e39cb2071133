import { type BillDay, yearDays } from '../../bill/tariff/bill-days';
import { usualDays } from '../../bill/tariff/usual-day';
import type { Home } from '../../home/home';
import { seasonOf } from '../../home/season-of';
import { hourlyLoadKw } from '../../home/weather/hourly-load';
import type { SyntheticYears } from '../../home/weather/synthetic-years';
import {
  HOURS_PER_YEAR,
  MONTH_DAYS,
  MONTH_OF_DAY,
  MONTH_START,
} from '../../physics/weather/calendar';
import type { HourSeries } from '../../quantity/hour-series';

/** One year of hours of this home on ordinary days: what it uses, and what one kW of its panels gives. */
export interface HouseYear {
  readonly days: readonly BillDay[];
  readonly loadKwh: Float64Array;
  /** Null where no roof is known. */
  readonly sunKwhPerKw: HourSeries | null;
  readonly use: HouseUse;
}

/** What the use over the year is taken from; `words` says it. */
export type HouseUse =
  /** The loads named alone, for no bill could be held against them; or with what the bill shows beyond them. */
  | { readonly code: 'loads-alone' | 'loads-and-rest' }
  /** The loads brought down to this share, so that they meet the bill. */
  | { readonly code: 'brought-down'; readonly share: number }
  /** Each month as on its own bill, and the months in which the loads were brought down to it, January 0. */
  | { readonly code: 'by-months'; readonly lowered: readonly number[] };

/**
 * The loads named over the middle one of the drawn weather years by mean temperature, and what the bill shows
 * beyond them in the shape of an ordinary day. Where the loads come to more than the bill, they are brought down to
 * it: money follows the meter. `withSun` false leaves the sun out, which takes longest.
 */
export function houseYear(home: Home, drawn: SyntheticYears, withSun: boolean): HouseYear {
  const from = middleYear(drawn) * HOURS_PER_YEAR;
  const airC = drawn.airC().subarray(from, from + HOURS_PER_YEAR);
  // Nothing is switched off on an ordinary day.
  const loads = home.usualLoads.map((load) => ({ ...load, offInOutage: false }));
  const named = Float64Array.from(hourlyLoadKw(loads, airC, home.site.place.climate));
  const sun = withSun ? drawn.sunKwhPerKw() : null;
  return {
    days: yearDays(Number(home.asOf.slice(0, 4))),
    ...toBill(home, named),
    sunKwhPerKw: sun && Float64Array.from(sun.subarray(from, from + HOURS_PER_YEAR)),
  };
}

function toBill(home: Home, named: Float64Array): Pick<HouseYear, 'loadKwh' | 'use'> {
  const { billCheck, billYear } = home;
  if (billYear !== null) return toMonths(billYear.kwhPerDay, named);
  if (billCheck.verdict === 'not-possible') {
    return { loadKwh: named, use: { code: 'loads-alone' } };
  }
  let kwh = 0;
  let days = 0;
  for (let day = 0; day < 365; day++) {
    if (seasonOf(MONTH_OF_DAY[day]!) !== billCheck.season) continue;
    days++;
    for (let h = 0; h < 24; h++) kwh += named[day * 24 + h]!;
  }
  const rest = billCheck.billKwhPerDay.value - kwh / days;
  if (rest < 0) {
    const share = billCheck.billKwhPerDay.value / (kwh / days);
    return { loadKwh: named.map((kw) => kw * share), use: { code: 'brought-down', share } };
  }
  const more = usualDays({ kwhPerDay: rest, days: 365 });
  return { loadKwh: named.map((kw, h) => kw + more[h]!), use: { code: 'loads-and-rest' } };
}

/** Each month brought to its own bill: what the bill shows beyond the loads named added, or the loads brought down. */
function toMonths(
  billed: readonly number[],
  named: Float64Array,
): Pick<HouseYear, 'loadKwh' | 'use'> {
  const loadKwh = Float64Array.from(named);
  const lowered: number[] = [];
  for (const [month, days] of MONTH_DAYS.entries()) {
    const from = MONTH_START[month]! * 24;
    const hours = loadKwh.subarray(from, from + days * 24);
    const perDay = hours.reduce((sum, kw) => sum + kw, 0) / days;
    const rest = billed[month]! - perDay;
    if (rest < 0) {
      lowered.push(month);
      for (let h = 0; h < hours.length; h++) hours[h]! *= billed[month]! / perDay;
    } else {
      const more = usualDays({ kwhPerDay: rest, days });
      for (let h = 0; h < hours.length; h++) hours[h]! += more[h]!;
    }
  }
  return { loadKwh, use: { code: 'by-months', lowered } };
}

/** The drawn year whose mean temperature is the middle one. */
function middleYear(drawn: SyntheticYears): number {
  const airC = drawn.airC();
  const means = Array.from({ length: Math.floor(airC.length / HOURS_PER_YEAR) }, (_, year) => {
    let sum = 0;
    // Every fifth hour goes through all hours of the day and is enough to put the years in order.
    for (let h = year * HOURS_PER_YEAR; h < (year + 1) * HOURS_PER_YEAR; h += 5) sum += airC[h]!;
    return { year, sum };
  });
  means.sort((a, b) => a.sum - b.sum);
  return means[Math.floor(means.length / 2)]!.year;
}
