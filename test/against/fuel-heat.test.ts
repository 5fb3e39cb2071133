import { describe, expect, it } from 'vitest';
import { fuelLine, fuelPerHour, generatorEfficiency } from '../../src/physics/generator-fuel';
import { fuelHeatKwh, type GeneratorFuel, generatorType } from '../../src/tables/fuels';

/**
 * Heat in fuels: US DOE Alternative Fuels Data Center, Fuel Properties (lower heating values from the
 * GREET model) and its gallon-equivalent table; US EIA, Energy Explained, energy conversion factors.
 */
describe('heat in a unit of fuel, against the Alternative Fuels Data Center and EIA', () => {
  it('keeps the printed gallon equivalents of conventional gasoline, 116,090 Btu', () => {
    const perGallon = (fuel: GeneratorFuel) => fuelHeatKwh(fuel).lowerKwh * 3412.142;
    // printed: 1 gallon of gasoline is 1.38 of propane and 0.90 of low-sulfur diesel
    expect(116_090 / perGallon('propane')).toBeCloseTo(1.38, 2);
    expect(116_090 / perGallon('diesel')).toBeCloseTo(0.9, 2);
    // printed: 123.57 standard cubic feet a gallon of E10, 20,160 Btu/lb at 0.0458 lb/ft3
    expect(perGallon('natural-gas')).toBeCloseTo(20_160 * 0.0458, -1);
    expect(perGallon('gasoline')).toBeGreaterThanOrEqual(112_114);
    expect(perGallon('gasoline')).toBeLessThanOrEqual(116_090);
  });

  it('has a higher value above the lower by the share of water in the exhaust', () => {
    // hydrogen-rich fuels more: 7 % gasoline, 7-8 % diesel, 8.5 % propane, 11-13 % natural gas
    const gap = (fuel: GeneratorFuel) =>
      fuelHeatKwh(fuel).higherKwh / fuelHeatKwh(fuel).lowerKwh - 1;
    expect(gap('gasoline')).toBeCloseTo(0.0725, 3);
    expect(gap('diesel')).toBeGreaterThan(0.06);
    expect(gap('propane')).toBeGreaterThan(gap('diesel'));
    expect(gap('natural-gas')).toBeGreaterThan(gap('propane'));
    expect(gap('natural-gas')).toBeLessThan(0.13);
  });

  it('turns EIA heat contents into kilowatt-hours with 3,412 Btu', () => {
    expect(fuelHeatKwh('gasoline').higherKwh).toBeCloseTo(120_238 / 3412, 1);
    expect(fuelHeatKwh('natural-gas').higherKwh).toBeCloseTo(1039 / 3412, 3);
  });
});

describe('the fuel line of an engine', () => {
  it('gives the fuel that efficiency and heat content ask for at full load', () => {
    const full = (of: {
      ratedKw: number;
      fullLoadEfficiency: number;
      kwhPerUnit: number;
      noLoadRatio: number;
    }) => fuelPerHour(fuelLine(of), of.ratedKw);
    // arithmetic: kW / efficiency / kWh a unit
    const propane = { ratedKw: 5, fullLoadEfficiency: 0.22, kwhPerUnit: 84_250 / 3412.142 };
    expect(full({ ...propane, noLoadRatio: 0.4 })).toBeCloseTo(0.9205, 4);
    const gas = { ratedKw: 5, fullLoadEfficiency: 0.25, kwhPerUnit: 1036 / 3412.142 };
    expect(full({ ...gas, noLoadRatio: 0 })).toBeCloseTo(65.87, 2);
    const gasoline = { ratedKw: 2, fullLoadEfficiency: 0.15, kwhPerUnit: 116_090 / 3412.142 };
    expect(full({ ...gasoline, noLoadRatio: 0.5 })).toBeCloseTo(0.3919, 4);
  });

  it('follows a diesel fuel chart at quarter loads: 20 kW, gal/h (a chart reprinted alike in many places)', () => {
    const chart: [number, number][] = [
      [5, 0.6],
      [10, 0.9],
      [15, 1.3],
      [20, 1.6],
    ];
    // the best straight line through the chart is 0.25 + 0.068 P
    const line = { noLoadPerHour: 0.25, perKwh: 0.068 };
    for (const [kw, galPerHour] of chart) {
      expect(Math.abs(fuelPerHour(line, kw) - galPerHour)).toBeLessThan(0.05);
    }
    const heat = 128_488 / 3412.142;
    const type = generatorType('diesel');
    expect(generatorEfficiency(line, 20, heat)).toBeGreaterThanOrEqual(type.efficiencyLow);
    expect(generatorEfficiency(line, 20, heat)).toBeLessThanOrEqual(type.efficiencyHigh);
    expect(0.25 / (0.068 * 20)).toBeGreaterThanOrEqual(type.noLoadRatioLow);
    expect(0.25 / (0.068 * 20)).toBeLessThanOrEqual(type.noLoadRatioHigh);
  });

  it('is the published linear law for a diesel set: 0.246 P + 0.08145 rated L/h (Skarstein & Uhlen 1989)', () => {
    const kwhPerLitre = (128_488 / 3412.142) * (1 / 3.785412);
    const rated = 50;
    const full = 0.246 + 0.08145;
    const line = fuelLine({
      ratedKw: rated,
      fullLoadEfficiency: 1 / (full * kwhPerLitre),
      noLoadRatio: 0.08145 / 0.246,
      kwhPerUnit: kwhPerLitre,
    });
    expect(fuelPerHour(line, 0)).toBeCloseTo(0.08145 * rated, 9);
    expect(fuelPerHour(line, 25)).toBeCloseTo(0.246 * 25 + 0.08145 * rated, 9);
  });

  it('burns at idle what owners and installers report (common practice, no source)', () => {
    const idle = (generator: 'portable' | 'standby', fuel: GeneratorFuel, ratedKw: number) => {
      const { efficiency, noLoadRatio } = generatorType(generator);
      const kwhPerUnit = fuelHeatKwh(fuel).lowerKwh;
      const of = { ratedKw, fullLoadEfficiency: efficiency, noLoadRatio, kwhPerUnit };
      return fuelPerHour(fuelLine(of), 0);
    };
    expect(idle('portable', 'gasoline', 5)).toBeGreaterThan(0.25);
    expect(idle('portable', 'gasoline', 5)).toBeLessThan(0.4);
    expect(idle('standby', 'propane', 17)).toBeGreaterThan(0.6);
    expect(idle('standby', 'propane', 17)).toBeLessThan(1.2);
  });
});
