import { mustBePositive, mustBeShare, mustNotBeNegative } from '../quantity/must-be';

/**
 * Hours a battery carries a steady load: h = 1000 kWh / (W / efficiency + idle W).
 * `usableKwh` is what may be taken out of the cells; `dischargeEfficiency` (above 0 to 1) is cells to outlet;
 * `idleWatts` is what the inverter draws from the cells with nothing plugged in.
 * null when nothing at all is drawn: it has no end to give.
 */
export function batteryRuntimeHours(of: {
  usableKwh: number;
  loadWatts: number;
  idleWatts: number;
  dischargeEfficiency: number;
}): number | null {
  mustNotBeNegative('usableKwh', of.usableKwh, 'kWh');
  mustNotBeNegative('loadWatts', of.loadWatts, 'W');
  mustNotBeNegative('idleWatts', of.idleWatts, 'W');
  mustBeShare('dischargeEfficiency', of.dischargeEfficiency);
  const drawnWatts = of.loadWatts / of.dischargeEfficiency + of.idleWatts;
  return drawnWatts === 0 ? null : (1000 * of.usableKwh) / drawnWatts;
}

/** Usable kWh a steady load needs for so many hours: the same equation the other way round. */
export function batteryKwhForHours(of: {
  hours: number;
  loadWatts: number;
  idleWatts: number;
  dischargeEfficiency: number;
}): number {
  mustNotBeNegative('hours', of.hours, 'h');
  mustNotBeNegative('loadWatts', of.loadWatts, 'W');
  mustNotBeNegative('idleWatts', of.idleWatts, 'W');
  mustBeShare('dischargeEfficiency', of.dischargeEfficiency);
  mustBePositive('drawn watts', of.loadWatts + of.idleWatts, 'W');
  return (of.hours * (of.loadWatts / of.dischargeEfficiency + of.idleWatts)) / 1000;
}
