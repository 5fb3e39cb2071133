import { windowExtraKw } from '../../physics/window-peak';
import type { DemandCharge, Tariff } from './tariff';

/** For each demand charge, what its highest hour is multiplied by; null where nobody knows. */
export type PeakFactors = readonly (number | null)[];

/** Hourly figures do not show the peak of a shorter window, nor that of one that begins at any minute. */
export function hidesPeak({ windowMinutes, rolling }: DemandCharge): boolean {
  return windowMinutes < 60 || rolling === true;
}

/** One load in the highest hour of the year. */
export interface HourLoad {
  readonly kwh: number;
  readonly runningKw: number;
}

/**
 * What the peak of each charge is over its highest hour: the peak read off the meter over the highest hour we count;
 * else, for windows an hour hides, one load of that hour laid into the window: (hour + extra) / hour. A window of a
 * whole hour that begins at any minute cannot be told from hours.
 */
export function peakFactors(
  { demand = [] }: Tariff,
  given: { hourKw: number; meteredKw: number | null; loads: readonly HourLoad[] },
): PeakFactors {
  const { hourKw, meteredKw, loads } = given;
  if (!(hourKw > 0)) return demand.map(() => null);
  return demand.map((charge) => {
    if (meteredKw !== null) return meteredKw / hourKw;
    if (!hidesPeak(charge)) return 1;
    if (charge.windowMinutes === 60 || loads.length === 0) return null;
    const extra = Math.max(...loads.map((load) => windowExtraKw({ ...load, ...charge })));
    return (hourKw + extra) / hourKw;
  });
}
