import { inverterWatts } from './inverter-watts';

/**
 * Hourly alternating-current energy, kWh, from direct-current energy, through an inverter of
 * `ratedKw`: part-load efficiency and clipping, hour by hour. Writes over `dcKwh` when `into` is it.
 */
export function inverterHoursKwh(
  dcKwh: Float32Array,
  inverter: { ratedKw: number; ratedEfficiency: number; into?: Float32Array },
): Float32Array {
  const into = inverter.into ?? new Float32Array(dcKwh.length);
  const { ratedKw, ratedEfficiency } = inverter;
  for (let i = 0; i < dcKwh.length; i++) {
    // kWh in one hour is mean kW; the formula only needs power and rating in one unit.
    into[i] = inverterWatts({ dcWatts: dcKwh[i]!, ratedWatts: ratedKw, ratedEfficiency });
  }
  return into;
}
