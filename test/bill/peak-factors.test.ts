import { describe, expect, test } from 'vitest';
import { peakFactors } from '../../src/bill/tariff/peak-factors';
import type { DemandCharge, Tariff } from '../../src/bill/tariff/tariff';
import { windowExtraKw } from '../../src/physics/window-peak';

const charge = (windowMinutes: 15 | 30 | 60, rolling?: boolean): DemandCharge => ({
  name: 'peak',
  windowMinutes,
  ...(rolling && { rolling }),
  prices: [{ from: '01-01', to: '12-31', perKw: 10 }],
});
const tariff = (...demand: DemandCharge[]): Tariff => ({
  name: 'demand',
  fixed: {},
  seasons: [],
  demand,
  export: { rule: 'none' },
});

describe('the peak of a short window over its hour', () => {
  // A 4.5 kW water heater that runs 20 minutes of an hour (1.5 kWh): a quarter of an hour inside the run is at 4.5 kW.
  test('one run fills a window that begins at any minute, and three quarters of one of the clock', () => {
    const heater = { kwh: 1.5, runningKw: 4.5, windowMinutes: 15 };
    expect(windowExtraKw({ ...heater, rolling: true })).toBeCloseTo(3, 9);
    expect(windowExtraKw(heater)).toBeCloseTo(2.25, 9);
    // A load that runs the whole hour lifts nothing, and none lifts above its running power.
    expect(windowExtraKw({ ...heater, kwh: 4.5, rolling: true })).toBe(0);
    expect(windowExtraKw({ ...heater, kwh: 0.5, rolling: true })).toBeCloseTo(1.5, 9);
  });

  test('three quarters is the mean of the larger part of a run cut at random (mean by sum)', () => {
    const parts = Array.from({ length: 1000 }, (_, i) => (i + 0.5) / 1000);
    const mean = parts.reduce((sum, u) => sum + Math.max(u, 1 - u), 0) / parts.length;
    expect(mean).toBeCloseTo(0.75, 6);
  });

  const loads = [{ kwh: 1.5, runningKw: 4.5 }];
  const of = { hourKw: 5, meteredKw: null, loads };

  test('goes by the load that lifts it most; an hour of the clock needs nothing', () => {
    expect(peakFactors(tariff(charge(15), charge(15, true), charge(60)), of)).toEqual([
      (5 + 2.25) / 5,
      8 / 5,
      1,
    ]);
  });

  test('cannot be told for an hour that begins at any minute, nor without loads', () => {
    expect(peakFactors(tariff(charge(60, true)), of)).toEqual([null]);
    expect(peakFactors(tariff(charge(15)), { ...of, loads: [] })).toEqual([null]);
  });

  test('the highest use read off the meter goes before any estimate', () => {
    expect(peakFactors(tariff(charge(15), charge(60)), { ...of, meteredKw: 7.5 })).toEqual([
      1.5, 1.5,
    ]);
  });
});
