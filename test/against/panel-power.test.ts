import { describe, expect, test } from 'vitest';
import { cellTemperatureC } from '../../src/physics/panel/cell-temperature';
import { combinedLoss } from '../../src/physics/panel/combined-loss';
import { inverterWatts } from '../../src/physics/panel/inverter-watts';
import { panelWatts } from '../../src/physics/panel/panel-watts';
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

describe('Dobos 2014, NREL/TP-6A20-62641', () => {
  test('its list of losses multiplies to 14.0757 %, though it sums to 15 %', () => {
    const shares = panelLosses.rows.map((row) => row.share);
    expect(combinedLoss(shares) * 100).toBeCloseTo(14.0757, 4);
    expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(0.15, 10);
  });

  test('without availability 11.418 % is left', () => {
    const shares = panelLosses.rows.filter((row) => row.cause !== 'availability');
    expect(combinedLoss(shares.map((row) => row.share)) * 100).toBeCloseTo(11.418, 3);
  });
});
