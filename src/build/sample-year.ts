import { yearDays } from '../bill/bill-days';
import { load, solar } from './demo-month';
import { seeded } from './random-problem';

/**
 * An invented year of hours for a house with solar, to measure with: the demo day with seasons, weekends, cloudy
 * runs of days and hourly scatter, always the same for the same seed. Not weather of any place.
 */
export function sampleYear(seed: number) {
  const random = seeded(seed);
  const days = yearDays(2026);
  const loadKwh = new Float64Array(8760);
  const solarKwh = new Float64Array(8760);
  let clear = 0.7;
  days.forEach(({ weekday }, d) => {
    const summer = Math.cos(((d - 172) / 365) * 2 * Math.PI);
    clear = 0.5 * clear + 0.5 * Math.min(1, 1.3 * Math.sqrt(random()));
    // Cooling in the hottest weeks, lighting and heating fans in winter.
    const season = 1 + 0.35 * Math.max(0, summer) + 0.2 * Math.max(0, -summer);
    const home = (weekday === 0 || weekday === 6 ? 1.1 : 1) * (0.85 + 0.3 * random());
    for (let hour = 0; hour < 24; hour++) {
      const h = d * 24 + hour;
      loadKwh[h] = load[hour]! * season * home * (0.7 + 0.6 * random());
      solarKwh[h] = solar[hour]! * (0.65 + 0.35 * summer) * clear * (0.85 + 0.3 * random());
    }
  });
  return { days, loadKwh, solarKwh };
}
