import { describe, expect, it } from 'vitest';
import { vehicleStoreKwh } from '../../src/physics/vehicle-store';

describe('what a vehicle may give the house', () => {
  it('is its charge less the miles it must still drive', () => {
    const parts = { packKwh: 75, chargeShare: 0.8, reserveMiles: 60, kwhPerMile: 0.3 };
    expect(vehicleStoreKwh(parts)).toBeCloseTo(75 * 0.8 - 60 * 0.3, 12);
  });

  it('is nothing when the reserve is more than the charge', () => {
    const parts = { packKwh: 20, chargeShare: 0.2, reserveMiles: 60, kwhPerMile: 0.3 };
    expect(vehicleStoreKwh(parts)).toBe(0);
    expect(() => vehicleStoreKwh({ ...parts, chargeShare: 1.5 })).toThrow(/1.5/);
  });
});
