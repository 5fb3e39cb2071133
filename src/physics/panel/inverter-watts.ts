/** Efficiency at full load of the inverter whose measured curve the formula follows. */
const REFERENCE_EFFICIENCY = 0.9637;

/**
 * Alternating-current power of an inverter, W: its efficiency falls at light load and its output
 * stops at its rating (clipping). Zero below about 0.6 % of its rating, where it would only consume.
 *
 *     z = Pdc / (Pac0 / eta)     eta(z) = (eta/0.9637)(-0.0162 z - 0.0059/z + 0.9858)
 *
 * `ratedWatts` is the AC rating; a rating of zero gives zero. Source: Dobos 2014,
 * NREL/TP-6A20-62641, eq. 11 and 12.
 */
export function inverterWatts(given: {
  dcWatts: number;
  ratedWatts: number;
  ratedEfficiency: number;
}): number {
  const { dcWatts, ratedWatts, ratedEfficiency } = given;
  if (dcWatts <= 0 || ratedWatts <= 0) return 0;
  const z = (dcWatts * ratedEfficiency) / ratedWatts;
  const efficiency = (ratedEfficiency / REFERENCE_EFFICIENCY) * (-0.0162 * z - 0.0059 / z + 0.9858);
  return Math.min(Math.max(0, efficiency * dcWatts), ratedWatts);
}
