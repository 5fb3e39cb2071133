import { mustNotBeNegative } from '../quantity/must-be';
import { requireWithin } from '../quantity/require-within';

export interface VehicleStoreParts {
  readonly packKwh: number;
  /** How full the pack is when the outage begins, 0..1. */
  readonly chargeShare: number;
  /** What must stay in it to drive, miles. */
  readonly reserveMiles: number;
  readonly kwhPerMile: number;
}

/**
 * Energy a vehicle may give the house, counted inside its pack, kWh:
 *   pack x charge - reserve miles x kWh a mile, never below 0
 */
export function vehicleStoreKwh(parts: VehicleStoreParts): number {
  const { packKwh, chargeShare, reserveMiles, kwhPerMile } = parts;
  mustNotBeNegative('packKwh', packKwh, 'kWh');
  requireWithin('chargeShare', chargeShare, { atLeast: 0, atMost: 1, unit: '(share)' });
  mustNotBeNegative('reserveMiles', reserveMiles, 'miles');
  mustNotBeNegative('kwhPerMile', kwhPerMile, 'kWh a mile');
  return Math.max(0, packKwh * chargeShare - reserveMiles * kwhPerMile);
}
