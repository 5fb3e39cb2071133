import { describe, expect, it } from 'vitest';
import { netEnergy } from '../../src/outage/net-energy';

const limits = {
  chargeKw: 3,
  dischargeKw: 4,
  chargeEfficiency: 0.9,
  dischargeEfficiency: 0.8,
  idleKw: 0.1,
};

describe('what an hour does to the store', () => {
  it('stores surplus up to the charge limit and takes deficits up to the discharge limit', () => {
    const got = netEnergy({
      loadKw: Float64Array.of(0.9, 0.9, 0.7, 5.9),
      supplyKw: Float64Array.of(2, 6, 0, 0),
      limits,
    });
    expect(got.netKwh[0]).toBeCloseTo(0.9 * (2 - 0.9) - 0.1, 12);
    expect(got.netKwh[1]).toBeCloseTo(0.9 * 3 - 0.1, 12); // 5.1 kW of surplus, 3 taken
    expect(got.netKwh[2]).toBeCloseTo(-0.7 / 0.8 - 0.1, 12);
    expect(got.netKwh[3]).toBeCloseTo(-4 / 0.8 - 0.1, 12); // 5.9 kW wanted, 4 given
    expect([...got.overloadKwh].map((kwh) => Number(kwh.toFixed(9)))).toEqual([0, 0, 0, 1.9]);
  });

  it('takes no charge in an hour that forbids it, and still gives', () => {
    const hours = { loadKw: Float64Array.of(0, 1), supplyKw: Float64Array.of(2, 0), limits };
    const got = netEnergy({ ...hours, mayCharge: Uint8Array.of(0, 0) });
    expect(got.netKwh[0]).toBe(0);
    expect(got.netKwh[1]).toBeLessThan(0);
  });

  it('lets sun carry the inverter’s own draw while the cells are too cold to charge', () => {
    const hours = {
      loadKw: Float64Array.of(1, 1, 1),
      supplyKw: Float64Array.of(1, 1.05, 3),
      limits,
    };
    const got = netEnergy({ ...hours, mayCharge: Uint8Array.of(0, 0, 0) });
    expect(got.netKwh[0]).toBeCloseTo(-0.1, 12);
    expect(got.netKwh[1]).toBeCloseTo(0.9 * 0.05 - 0.1, 12); // a little sun beside the load takes its part of the draw
    expect(got.netKwh[2]).toBe(0);
  });

  it('reuses the arrays it is given', () => {
    const hours = { loadKw: Float64Array.of(1), supplyKw: Float64Array.of(0), limits };
    const out = netEnergy(hours);
    expect(netEnergy({ ...hours, loadKw: Float64Array.of(2) }, out)).toBe(out);
    expect(out.netKwh[0]).toBeCloseTo(-2 / 0.8 - 0.1, 12);
  });

  it('refuses arrays of different lengths and limits below zero', () => {
    const hours = { loadKw: Float64Array.of(1), supplyKw: Float64Array.of(0, 0), limits };
    expect(() => netEnergy(hours)).toThrow(/load has 1 h and supply 2 h/);
    const bad = { ...limits, chargeKw: -1 };
    expect(() => netEnergy({ ...hours, supplyKw: Float64Array.of(0), limits: bad })).toThrow(
      /chargeKw must be at least 0 kW: -1 kW/,
    );
  });
});
