import { MONTH_OF_DAY } from '../physics/weather/calendar';
import type { Climate } from '../tables/climate';
import { coldShare, hardDaysC, heatShare } from './climate-hours';
import type { Load, Season } from './home';
import { warmRoom } from './warm-room';

/**
 * What loads draw in each hour of a run of years, kW, likely values; loads that are off in an outage left out.
 *
 *   kW = steady(month, hour) + cold food(hour) x warm room(day)
 *      + winter/24 x share(T) / share(hard winter day) + summer/24 x the same of the heat
 *
 * `airC` holds 8,760 values a year. Heating and cooling follow the hour's temperature (see climate-hours), and come to
 * the load's own kWh on a hard day, so that hours told and two bills hold here too.
 */
export function hourlyLoadKw(
  loads: readonly Load[],
  airC: Float32Array,
  climate: Climate,
): Float64Array {
  const on = loads.filter((load) => !load.offInOutage);
  const steady = steadyByMonth(on.filter((load) => load.follows === 'neither'));
  const coldFoodKw = shapedKw(on.filter((load) => load.follows === 'room'));
  const hasColdFood = coldFoodKw.some((kw) => kw > 0);
  const { heat99C, cool1C } = climate;
  const { hardCold, hardHot } = hardDaysC(climate);
  const coldKw = designKw(on, 'winter', coldShare(hardCold, heat99C));
  const hotKw = designKw(on, 'summer', heatShare(hardHot, cool1C));
  const out = new Float64Array(airC.length);
  let room = 1;
  for (let i = 0; i < out.length; i++) {
    const day = Math.floor(i / 24);
    if (hasColdFood && i % 24 === 0) room = warmRoom(meanOfDay(airC, i)).likely;
    const t = airC[i]!;
    out[i] =
      steady[MONTH_OF_DAY[day % 365]! * 24 + (i % 24)]! +
      coldFoodKw[i % 24]! * room +
      (coldKw > 0 ? coldKw * coldShare(t, heat99C) : 0) +
      (hotKw > 0 ? hotKw * heatShare(t, cool1C) : 0);
  }
  return out;
}

/** Mean kW of what follows the weather at the design temperature, from its kWh on a hard day of the season. */
function designKw(loads: readonly Load[], season: 'winter' | 'summer', hardShare: number): number {
  if (hardShare <= 0) return 0;
  const follows = season === 'winter' ? ['cold', 'both'] : ['heat', 'both'];
  const these = loads.filter((load) => follows.includes(load.follows));
  return these.reduce((sum, load) => sum + load.kwhPerDay[season].value, 0) / 24 / hardShare;
}

/** kW by hour of a cool day of loads that use more in a warm room. */
function shapedKw(loads: readonly Load[]): Float64Array {
  return Float64Array.from({ length: 24 }, (_, hour) =>
    loads.reduce((sum, load) => sum + load.kwhPerDay.winter.value * load.shape[hour]!, 0),
  );
}

function meanOfDay(airC: Float32Array, first: number): number {
  let sum = 0;
  for (let h = 0; h < 24; h++) sum += airC[first + h]!;
  return sum / 24;
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
