import { mustBeShare } from '../quantity/must-be';

/**
 * Efficiency in and out of a store from its round trip, split evenly: each is the square root, so that
 * in x out = round trip. 0.85, the value Cole & Frazier 2020 give and the NREL Annual Technology
 * Baseline 2020 takes over (alternating current to alternating current), gives 0.922 each way.
 */
export function splitRoundTrip(roundTrip: number): {
  chargeEfficiency: number;
  dischargeEfficiency: number;
} {
  mustBeShare('roundTrip', roundTrip);
  const each = Math.sqrt(roundTrip);
  return { chargeEfficiency: each, dischargeEfficiency: each };
}
