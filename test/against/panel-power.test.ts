import { describe, expect, test } from 'vitest';
import { combinedLoss } from '../../src/physics/panel/combined-loss';
import { cellTemperatureC, inverterWatts, panelWatts } from '../../src/physics/panel/panel-hours';
import { panelLosses } from '../../src/tables/panel-figures';

describe('test values of the open reference library pvlib', () => {
  test('Ross: 1000 W/m2, 30 C air and NOCT 50 make a cell of 67.5 C', () => {
    expect(cellTemperatureC({ airC: 30, wattsPerM2: 1000, noctC: 50 })).toBeCloseTo(67.5, 10);
  });

  test('100 W of panels at 900 W/m2 and 30 C with -0.3 %/K give 88.65 W', () => {
    const at = { ratedWatts: 100, wattsPerM2: 900, cellC: 30, powerPerKelvin: -0.003 };
    expect(panelWatts(at)).toBeCloseTo(88.65, 10);
  });

  test.each([
    [90, 85.58557],
    [50, 47.60844],
    [100, 95],
  ])('an inverter for 100 W DC at 95 %% makes of %f W the published AC', (dcWatts, ac) => {
    const inverter = { ratedWatts: 95, ratedEfficiency: 0.95 };
    expect(inverterWatts({ dcWatts, ...inverter })).toBeCloseTo(ac, 4);
  });
});

// Its published list, by cause: soiling, shading, mismatch, wiring, connections, light-induced, label, days out of order.
describe('Dobos 2014, NREL/TP-6A20-62641', () => {
  const published = [0.02, 0.03, 0.02, 0.02, 0.005, 0.015, 0.01, 0.03];

  test('its list of losses multiplies to 14.0757 %, though it sums to 15 %, and to 11.418 % without broken days', () => {
    expect(combinedLoss(published) * 100).toBeCloseTo(14.0757, 4);
    expect(combinedLoss(published.slice(0, -1)) * 100).toBeCloseTo(11.418, 3);
  });

  test('our four plain causes together lie between the two, and their ends on either side', () => {
    const ours = (of: 'share' | 'low' | 'high') =>
      combinedLoss(panelLosses.rows.map((row) => row[of]));
    expect(panelLosses.rows).toHaveLength(4);
    expect(ours('share')).toBeGreaterThan(combinedLoss(published.slice(0, -1)));
    expect(ours('share')).toBeLessThan(combinedLoss(published));
    expect(ours('low')).toBeLessThan(combinedLoss(published.slice(0, -1)));
    expect(ours('high')).toBeGreaterThan(combinedLoss(published));
  });

  test('each is a whole percent within its own range', () => {
    for (const { share, low, high, cause } of panelLosses.rows) {
      expect(low, cause).toBeLessThan(share);
      expect(share, cause).toBeLessThan(high);
      expect(100 * share, cause).toBeCloseTo(Math.round(100 * share), 9);
    }
  });
});
