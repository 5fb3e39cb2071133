import { MONTH_OF_DAY } from '../../physics/weather/calendar';
import { timesFigure } from '../../quantity/figure-arithmetic';
import type { Climate } from '../../tables/place/climate';
import { warmRoom } from '../heat/warm-room';
import { type Load, seasons } from '../home';
import { AWAKE_HOURS, isAwake } from '../loads/awake';
import { seasonOf } from '../season-of';
import { weatherLoadKw } from './weather-load';

/** What hourly loads are worked out from, where it was worked out before; each holds at least the days of `airC`. */
export interface KnownHours {
  /** What heating and cooling among these loads draw, kW; null where none of them follows the weather. */
  readonly followedKw: Float32Array | null;
  /** Factor of cold food by day, as `warmRoom` gives it. */
  readonly roomByDay: Float64Array;
}

/**
 * What loads draw in each hour of a run of years, kW, likely values; loads that are off in an outage left out.
 *
 *   kW = steady(month, hour) + cold food(hour) x warm room(day) + what follows the hour's temperature (weather-load)
 *
 * `airC` holds 8,760 values a year. Heating and cooling come to the load's own kWh on a hard day, so that hours told
 * and bills hold here too.
 */
export function hourlyLoadKw(
  loads: readonly Load[],
  airC: Float32Array,
  climate: Climate,
  known: KnownHours = {
    followedKw: followedHoursKw(loads, airC, climate),
    roomByDay: roomByDay(airC),
  },
): Float32Array {
  const on = loads.filter((load) => !load.offInOutage);
  const steady = steadyByMonth(on.filter((load) => load.follows === 'neither'));
  const coldFoodKw = shapedKw(on.filter((load) => load.follows === 'room'));
  const hasColdFood = coldFoodKw.some((kw) => kw > 0);
  const out = new Float32Array(airC.length);
  for (let day = 0; 24 * day < out.length; day++) {
    const room = hasColdFood ? known.roomByDay[day]! : 1;
    fillDay(out, 24 * day, steady, 24 * MONTH_OF_DAY[day % 365]!, coldFoodKw, room);
  }
  if (known.followedKw !== null) add(out, known.followedKw);
  return out;
}

function fillDay(
  out: Float32Array,
  first: number,
  steady: Float64Array,
  month: number,
  coldFoodKw: Float64Array,
  room: number,
): void {
  for (let hour = 0; hour < 24; hour++) {
    out[first + hour] = steady[month + hour]! + coldFoodKw[hour]! * room;
  }
}

function add(out: Float32Array, more: Float32Array): void {
  for (let i = 0; i < out.length; i++) out[i]! += more[i]!;
}

/** By what factor a refrigerator or freezer uses more on each day than on a cool one, at least 1. */
export function roomByDay(airC: Float32Array): Float64Array {
  return Float64Array.from(
    { length: airC.length / 24 },
    (_, day) => warmRoom(meanOfDay(airC, 24 * day)).likely,
  );
}

/** What heating and cooling among these loads draw in each hour, kW; null where none of them follows the weather. */
export function followedHoursKw(
  loads: readonly Load[],
  airC: Float32Array,
  climate: Climate,
): Float32Array | null {
  const on = followers(loads);
  if (on.length === 0) return null;
  const always = weatherLoadKw(
    on.filter((load) => !load.awakeOnly),
    climate,
  );
  const awake = on.filter((load) => load.awakeOnly).map(asIfAllDay);
  const out = new Float32Array(airC.length);
  for (let i = 0; i < out.length; i++) out[i] = always(airC[i]!);
  if (awake.length === 0) return out;
  const byDay = weatherLoadKw(awake, climate);
  for (let i = 0; i < out.length; i++) if (isAwake(i % 24)) out[i]! += byDay(airC[i]!);
  return out;
}

/** Its energy of a day is that of the waking hours: spread over all 24 it draws in those what it should. */
function asIfAllDay(load: Load): Load {
  const times = 24 / AWAKE_HOURS;
  const kwhPerDay = Object.fromEntries(
    seasons.map((season) => [season, timesFigure(load.kwhPerDay[season], times)]),
  ) as Load['kwhPerDay'];
  return { ...load, kwhPerDay };
}

/** The loads that go by the temperature outdoors, and are on in an outage. */
export function followers(loads: readonly Load[]): Load[] {
  return loads.filter((load) => !load.offInOutage && !['neither', 'room'].includes(load.follows));
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
