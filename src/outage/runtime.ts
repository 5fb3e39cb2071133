import { HOURS_PER_YEAR } from '../physics/weather/calendar';
import { mustBeShare, mustNotBeNegative } from '../quantity/must-be';
import { requireDayProfile } from './day-profile';

export interface RuntimeInput {
  /** Energy the full battery can give up, counted inside the battery. */
  readonly usableKwh: number;
  /** What the household draws in each hour of the day, W. */
  readonly loadWattsByHour: ArrayLike<number>;
  /** What the sun gives at the inverter's output in each hour, W. Without it: no sun. */
  readonly solarWattsByHour?: ArrayLike<number>;
  /** What the inverter draws from the cells just by being on, W. */
  readonly inverterIdleWatts: number;
  /** From stored to delivered, 0..1. */
  readonly dischargeEfficiency: number;
  /** From surplus sun to stored, 0..1; the discharge efficiency when not given. */
  readonly chargeEfficiency?: number;
}

/** Hours until the first one not fully served. `null`: it does not end within a year. */
export interface Runtime {
  /** Hours it lasts when the outage starts at hour 0..23 with a full battery. */
  readonly hoursByStart: readonly (number | null)[];
  readonly shortestHours: number | null;
  /** One start hour in ten is harder. */
  readonly hardHours: number | null;
  /** Middle of the 24 starts (the lower of the two middle ones). */
  readonly typicalHours: number | null;
  readonly longestHours: number | null;
}

/**
 * How long a full battery lasts against the same day repeated, for an outage that starts at each hour.
 *
 *   net_h = eta_c (sun - load) - idle       when the sun covers the load
 *         = -(load - sun) / eta_d - idle    otherwise
 *   x <- min(x + net_h, usable);  the last, partly served hour counts for x / |net_h| of itself
 *
 * Neither charging nor discharging power is limited here. Without sun and with a flat load P it is
 * usable / (P / eta_d + idle).
 */
export function batteryRuntime(input: RuntimeInput): Runtime {
  return runtimeOn(netKwhByHour(input), input.usableKwh);
}

/** The same of a day whose net energy is known, for many sizes of one battery. */
export function runtimeOn(net: Float64Array, usableKwh: number): Runtime {
  mustNotBeNegative('usableKwh', usableKwh, 'kWh');
  const hoursByStart: (number | null)[] = [];
  for (let start = 0; start < 24; start++) hoursByStart.push(hoursFrom(start, net, usableKwh));
  const sorted = [...hoursByStart].sort((a, b) => (a ?? Infinity) - (b ?? Infinity));
  return {
    hoursByStart,
    shortestHours: sorted[0]!,
    // Of 24, the third: no more than a tenth lie below it.
    hardHours: sorted[2]!,
    typicalHours: sorted[11]!,
    longestHours: sorted[23]!,
  };
}

/** What each hour of the day adds to the store, or takes from it, kWh inside the battery. */
export function netKwhByHour(input: Omit<RuntimeInput, 'usableKwh'>): Float64Array {
  const { loadWattsByHour, solarWattsByHour, inverterIdleWatts, dischargeEfficiency } = input;
  const chargeEfficiency = input.chargeEfficiency ?? dischargeEfficiency;
  requireDayProfile('loadWattsByHour', loadWattsByHour);
  if (solarWattsByHour) requireDayProfile('solarWattsByHour', solarWattsByHour);
  mustNotBeNegative('inverterIdleWatts', inverterIdleWatts, 'W');
  mustBeShare('dischargeEfficiency', dischargeEfficiency);
  mustBeShare('chargeEfficiency', chargeEfficiency);
  const net = new Float64Array(24);
  for (let hour = 0; hour < 24; hour++) {
    const surplus = (solarWattsByHour?.[hour] ?? 0) - loadWattsByHour[hour]!;
    const stored = surplus >= 0 ? surplus * chargeEfficiency : surplus / dischargeEfficiency;
    net[hour] = (stored - inverterIdleWatts) / 1000;
  }
  return net;
}

function hoursFrom(start: number, net: Float64Array, usableKwh: number): number | null {
  let store = usableKwh;
  let dayBefore = usableKwh;
  let hourOfDay = start;
  // A day's sums that no longer change the store for the worse go on for ever; slower decline ends after a year.
  for (let hours = 0; hours < HOURS_PER_YEAR; hours++) {
    if (hours > 0 && hours % 24 === 0) {
      if (store >= dayBefore) return null; // the same day again can only repeat
      dayBefore = store;
    }
    const change = net[hourOfDay]!;
    hourOfDay = hourOfDay === 23 ? 0 : hourOfDay + 1;
    if (store + change < 0) return hours + store / -change;
    store = Math.min(store + change, usableKwh);
  }
  return null;
}
