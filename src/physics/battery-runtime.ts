import { mustBePositive, mustBeShare, mustNotBeNegative } from '../quantity/must-be';

/**
 * Hours a battery carries a steady load: h = 1000 kWh / (W / efficiency + idle W).
 * `usableKwh` is what may be taken out of the cells; `dischargeEfficiency` (above 0 to 1) is cells to outlet;
 * `idleWatts` is what the inverter draws from the cells with nothing plugged in.
 * null when nothing at all is drawn: it has no end to give.
 */
export function batteryRuntimeHours(given: {
  usableKwh: number;
  loadWatts: number;
  idleWatts: number;
  dischargeEfficiency: number;
}): number | null {
  mustNotBeNegative('usableKwh', given.usableKwh, 'kWh');
  mustNotBeNegative('loadWatts', given.loadWatts, 'W');
  mustNotBeNegative('idleWatts', given.idleWatts, 'W');
  mustBeShare('dischargeEfficiency', given.dischargeEfficiency);
  const drawnWatts = given.loadWatts / given.dischargeEfficiency + given.idleWatts;
  return drawnWatts === 0 ? null : (1000 * given.usableKwh) / drawnWatts;
}

/** Usable kWh a steady load needs for so many hours: the same equation the other way round. */
export function batteryKwhForHours(given: {
  hours: number;
  loadWatts: number;
  idleWatts: number;
  dischargeEfficiency: number;
}): number {
  mustNotBeNegative('hours', given.hours, 'h');
  mustNotBeNegative('loadWatts', given.loadWatts, 'W');
  mustNotBeNegative('idleWatts', given.idleWatts, 'W');
  mustBeShare('dischargeEfficiency', given.dischargeEfficiency);
  mustBePositive('drawn watts', given.loadWatts + given.idleWatts, 'W');
  return (given.hours * (given.loadWatts / given.dischargeEfficiency + given.idleWatts)) / 1000;
}
