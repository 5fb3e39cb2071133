import { MONTH_OF_DAY } from '../physics/weather/calendar';
import type { Climate } from '../tables/climate';
import { coldShare, DESIGN_HOURS, heatShare } from './climate-hours';
import type { Load, Season } from './home';

/**
 * What loads draw in each hour of a run of years, kW, likely values; loads that are off in an outage left out.
 *
 *   kW = steady(month, hour) + W_cold x 17/24 x cold share(T) + W_hot x 20/24 x heat share(T)
 *
 * `airC` holds 8,760 values a year. Heating and cooling follow the hour's temperature (see climate-hours).
 */
export function hourlyLoadKw(
  loads: readonly Load[],
  airC: Float32Array,
  climate: Climate,
): Float64Array {
  const on = loads.filter((load) => !load.offInOutage);
  const steady = steadyByMonth(on.filter((load) => load.follows === 'neither'));
  const coldKw = fullKw(on, ['cold', 'both']) * (DESIGN_HOURS.heating[1] / 24);
  const hotKw = fullKw(on, ['heat', 'both']) * (DESIGN_HOURS.cooling[1] / 24);
  const { heat99C, cool1C } = climate;
  const out = new Float64Array(airC.length);
  for (let i = 0; i < out.length; i++) {
    const day = Math.floor(i / 24);
    const t = airC[i]!;
    out[i] =
      steady[MONTH_OF_DAY[day % 365]! * 24 + (i % 24)]! +
      (coldKw > 0 ? coldKw * coldShare(t, heat99C) : 0) +
      (hotKw > 0 ? hotKw * heatShare(t, cool1C) : 0);
  }
  return out;
}

function fullKw(loads: readonly Load[], follows: readonly Load['follows'][]): number {
  const these = loads.filter((load) => follows.includes(load.follows));
  return these.reduce((sum, load) => sum + load.runningWatts.value * load.weatherFactor, 0) / 1000;
}

/** kW by month x 24 + hour of loads that do not follow the weather. */
function steadyByMonth(loads: readonly Load[]): Float64Array {
  const kw = new Float64Array(12 * 24);
  for (let month = 0; month < 12; month++) {
    const season = seasonOf(month);
    for (const load of loads) {
      for (let hour = 0; hour < 24; hour++) {
        kw[month * 24 + hour]! += load.kwhPerDay[season].value * load.shape[hour]!;
      }
    }
  }
  return kw;
}

/** December to February is winter, June to August summer, the rest mild. January is 0. */
export function seasonOf(month: number): Season {
  if (month === 11 || month <= 1) return 'winter';
  return month >= 5 && month <= 7 ? 'summer' : 'mild';
}
