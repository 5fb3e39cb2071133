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

/**
 * Hour by hour to its end. A day on which the store was never full takes what every later one takes: as many of them as
 * surely pass are passed over at once, and the last ones walked again.
 */
function hoursFrom(start: number, net: Float64Array, usableKwh: number): number | null {
  let store = usableKwh;
  for (let hours = 0; hours < HOURS_PER_YEAR; ) {
    const morning = store;
    let lowest = 0;
    let wasFull = false;
    for (let h = 0; h < 24 && hours < HOURS_PER_YEAR; h++, hours++) {
      const change = net[(start + h) % 24]!;
      const after = store + change;
      if (after < 0) return hours + store / -change;
      wasFull ||= after > usableKwh;
      store = Math.min(after, usableKwh);
      lowest = Math.min(lowest, store - morning);
    }
    // The same day again can only repeat; slower decline ends after a year.
    if (store >= morning) return null;
    if (wasFull) continue;
    const days = Math.floor((store + lowest) / (morning - store)) - 1;
    const passed = Math.min(days, Math.floor((HOURS_PER_YEAR - hours) / 24));
    if (passed <= 0) continue;
    store -= passed * (morning - store);
    hours += 24 * passed;
  }
  return null;
}
