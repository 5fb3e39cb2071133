import { practice } from '../../tables/practice-figures';
import type { Load, Season } from '../home';

/** What a pack's own inverter draws by being on, W. */
export const PACK_IDLE_WATTS = practice('pack-idle');

/** What a pack draws for its 12-volt outlet alone, its inverter off, W. Our judgement, 2 to 5 W. */
export const PACK_DC_IDLE_WATTS = 3;

/** Shares of the day in which a pack's inverter is on, and in which only its 12-volt outlet is, 0 to 1. */
export interface PackOn {
  readonly inverter: number;
  readonly onlyDc: number;
}

/**
 * A pack is switched on in every hour in which anything but a charger is used, and for chargers only as long as they
 * charge, since what they fill goes on with the pack off. What has a 12-volt cord needs no inverter.
 */
export function packOnShare(loads: readonly Load[], season: Season): PackOn {
  let inverter = 0;
  let any = 0;
  for (let hour = 0; hour < 24; hour++) {
    let [ac, all] = [0, 0];
    for (const load of loads) {
      const on = onInHour(load, season, hour);
      all += on;
      if (load.dcFed !== true) ac += on;
    }
    inverter += Math.min(1, ac);
    any += Math.min(1, all);
  }
  return { inverter: inverter / 24, onlyDc: (any - inverter) / 24 };
}

/** Mean idle draw of a pack that is switched off between uses, W. */
export function packIdleWatts(loads: readonly Load[], season: Season): number {
  const { inverter, onlyDc } = packOnShare(loads, season);
  return PACK_IDLE_WATTS * inverter + PACK_DC_IDLE_WATTS * onlyDc;
}

function onInHour(load: Load, season: Season, hour: number): number {
  const watts = load.kwhPerDay[season].value * load.shape[hour]! * 1000;
  if (watts === 0) return 0;
  return load.ownBattery === true ? watts / load.runningWatts.value : 1;
}
