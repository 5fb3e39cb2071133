import type { Load, Season } from '../../home/home';

/** What a pack's own inverter draws by being on, W. Common practice, 8 to 25 W. */
export const PACK_IDLE_WATTS = 15;

/**
 * Share of the day in which a pack that feeds these loads is switched on, 0 to 1: every hour in which anything but a
 * charger is used, and for chargers only as long as they charge, since what they fill goes on with the pack off.
 */
export function packOnShare(loads: readonly Load[], season: Season): number {
  let hours = 0;
  for (let hour = 0; hour < 24; hour++) {
    const on = loads.reduce((sum, load) => sum + onInHour(load, season, hour), 0);
    hours += Math.min(1, on);
  }
  return hours / 24;
}

/** Mean idle draw of a pack that is switched off between uses, W. */
export function packIdleWatts(loads: readonly Load[], season: Season): number {
  return PACK_IDLE_WATTS * packOnShare(loads, season);
}

function onInHour(load: Load, season: Season, hour: number): number {
  const watts = load.kwhPerDay[season].value * load.shape[hour]! * 1000;
  if (watts === 0) return 0;
  return load.ownBattery === true ? watts / load.runningWatts.value : 1;
}
