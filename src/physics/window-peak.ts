/** Of a run as long as the window, laid at random, the best window of the clock holds three quarters: mean of max(u, 1 - u). */
const CLOCK_SHARE = 0.75;

/**
 * How far one load lifts the mean power of a short window over that of the hour it runs in, kW, when its energy of the
 * hour is drawn in one run:
 *
 *   extra = s (min(W, E / w) - E),  s = 1 for a window that begins at any minute, 0.75 for one of the clock
 *
 * @param kwh E, energy of the load in the hour, kWh, 0 or more
 * @param runningKw W, what it draws while it runs, kW, E or more
 * @param windowMinutes w, length of the window, 15 to 60
 */
export function windowExtraKw(given: {
  kwh: number;
  runningKw: number;
  windowMinutes: number;
  rolling?: boolean;
}): number {
  const { kwh, runningKw, windowMinutes, rolling = false } = given;
  if (!(windowMinutes > 0 && windowMinutes <= 60)) {
    throw new RangeError(`a window of ${windowMinutes} minutes`);
  }
  const inWindow = Math.min(runningKw, (60 * kwh) / windowMinutes);
  return Math.max(0, inWindow - kwh) * (rolling ? 1 : CLOCK_SHARE);
}
