import type { Season } from '../home/home';
import type { SyntheticYears } from '../home/weather/synthetic-years';
import { monthOfHour } from '../outage/month-of-hour';
import { quantileInPlace } from '../outage/quantile';
import { monthsOf } from './battery-hours';

/** Panels of so many kW on the middle day of a season, kWh at the house; 0 without panels or roof. */
export function sunOfMiddleDayKwh(drawn: SyntheticYears, season: Season, panelsKw: number): number {
  if (panelsKw <= 0) return 0;
  const kw = drawn.sunKw(panelsKw);
  const { firstMonth, months } = monthsOf[season];
  const inSeason = (hour: number) => (monthOfHour(hour) - firstMonth + 12) % 12 < months;
  const days: number[] = [];
  for (let hour = 0; hour < kw.length; hour += 24) {
    if (!inSeason(hour)) continue;
    let sum = 0;
    for (let h = 0; h < 24; h++) sum += kw[hour + h]!;
    days.push(sum);
  }
  return quantileInPlace(Float64Array.from(days), 0.5) ?? 0;
}
