/**
 * Direct-current power of a panel, in the unit of `ratedWatts`, before any loss; never below zero.
 *
 *     Pdc = P0 (G/1000) [1 + gamma (Tc - 25)]
 *
 * `powerPerKelvin` is about -0.0035 for silicon. Source: Dobos 2014, NREL/TP-6A20-62641, section 8.
 */
export function panelWatts(given: {
  ratedWatts: number;
  wattsPerM2: number;
  cellC: number;
  powerPerKelvin: number;
}): number {
  const warm = 1 + given.powerPerKelvin * (given.cellC - 25);
  return Math.max(0, given.ratedWatts * (given.wattsPerM2 / 1000) * warm);
}
