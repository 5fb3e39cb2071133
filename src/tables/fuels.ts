import heat from '#compiled/tables/fuel-heat.js';
import types from '#compiled/tables/generator-types.js';
import { practice } from './practice-figures';
import type { Table } from './table';

export type GeneratorFuel = 'gasoline' | 'diesel' | 'propane' | 'natural-gas';

export interface FuelHeatRow {
  fuel: GeneratorFuel;
  unit: 'gal' | 'ft3';
  lowerBtu: number;
  higherBtu: number;
}

/** Heat in a unit of fuel. Lower values: Alternative Fuels Data Center; higher values: EIA. */
export const fuelHeat: Table<FuelHeatRow> = heat;

export type GeneratorType = 'portable' | 'portable-inverter' | 'standby' | 'diesel';

export interface GeneratorTypeRow {
  generator: GeneratorType;
  /** At full load, on the lower heating value. */
  efficiency: number;
  efficiencyLow: number;
  efficiencyHigh: number;
  noLoadRatio: number;
  noLoadRatioLow: number;
  noLoadRatioHigh: number;
}

/** Efficiency and no-load burn of small generator generators. Common practice. */
export const generatorTypes: Table<GeneratorTypeRow> = types;

/**
 * What a portable gasoline set still gives on another fuel, share of the watts on its gasoline label: propane about a tenth
 * less, piped gas about a fifth.; the label for that fuel goes first.
 */
const FUEL_SHARE: Readonly<Record<GeneratorFuel, number>> = {
  gasoline: 1,
  diesel: 1,
  propane: practice('propane-fuel-share'),
  'natural-gas': practice('natural-gas-fuel-share'),
};

export const fuelShare = (fuel: GeneratorFuel): number => FUEL_SHARE[fuel];

/** International Table Btu in a kilowatt-hour. */
const BTU_PER_KWH = 3412.142;

/** Heat in a unit of fuel, kWh, on both heating values. Throws RangeError for a fuel not in the table. */
export function fuelHeatKwh(fuel: GeneratorFuel): {
  unit: string;
  lowerKwh: number;
  higherKwh: number;
} {
  const row = fuelHeat.rows.find((r) => r.fuel === fuel);
  if (!row) throw new RangeError(`no heat content for fuel "${fuel}"`);
  return {
    unit: row.unit,
    lowerKwh: row.lowerBtu / BTU_PER_KWH,
    higherKwh: row.higherBtu / BTU_PER_KWH,
  };
}

/** The row of one type of engine. Throws RangeError for a type not in the table. */
export function generatorType(generator: GeneratorType): GeneratorTypeRow {
  const row = generatorTypes.rows.find((r) => r.generator === generator);
  if (!row) throw new RangeError(`no generator type "${generator}"`);
  return row;
}
