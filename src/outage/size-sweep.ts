import { HOURS_PER_YEAR } from '../physics/weather/calendar';
import type { HourSeries } from '../quantity/hour-series';
import { NeedTally } from './need-tally';
import { type NetEnergy, netEnergy, type StoreLimits } from './net-energy';

/** One year of a record, 8760 hours from midnight of 1 January. The arrays may be reused for the next. */
export interface SweepYear {
  readonly loadKw: HourSeries;
  /** What a kW of modules gives at the house, kW. */
  readonly solarPerKw: HourSeries;
  readonly mayCharge?: Uint8Array;
}

export interface SizeSweepInput {
  readonly years: number;
  readonly yearAt: (year: number) => SweepYear;
  /** Sizes of the array, kW of modules. */
  readonly solarSteps: readonly number[];
  readonly limits: StoreLimits;
  readonly lengths: readonly number[];
}

export interface SizeStep {
  readonly solarKw: number;
  /** Hours a year with more wanted than the inverter gives: no battery size helps there. */
  readonly overloadHoursPerYear: number;
  /** For each outage length, in the order asked: sizes by odds, and odds of any size. */
  readonly tallies: readonly NeedTally[];
}

/**
 * What battery each size of array needs: one drawdown pass for each step and length, over all years,
 * fed a year at a time so that each year's weather is made once and memory does not grow with them.
 */
export function sizeSweep(input: SizeSweepInput): SizeStep[] {
  const { years, yearAt, solarSteps, limits, lengths } = input;
  const supplyKw = new Float64Array(HOURS_PER_YEAR);
  const energy = {
    netKwh: new Float64Array(HOURS_PER_YEAR),
    overloadKwh: new Float64Array(HOURS_PER_YEAR),
  };
  const overloads = new Float64Array(solarSteps.length);
  const tallies = solarSteps.map(() =>
    lengths.map((outageHours) => new NeedTally({ outageHours })),
  );
  for (let year = 0; year < years; year++) {
    const { loadKw, solarPerKw, mayCharge } = yearAt(year);
    solarSteps.forEach((solarKw, step) => {
      for (let t = 0; t < HOURS_PER_YEAR; t++) supplyKw[t] = solarKw * solarPerKw[t]!;
      netEnergy({ loadKw, supplyKw, mayCharge, limits }, energy);
      overloads[step]! += overloadedHours(energy);
      for (const tally of tallies[step]!) tally.addYear(energy.netKwh);
    });
  }
  for (const tally of tallies.flat()) tally.finish();
  return solarSteps.map((solarKw, step) => ({
    solarKw,
    overloadHoursPerYear: years > 0 ? overloads[step]! / years : 0,
    tallies: tallies[step]!,
  }));
}

function overloadedHours({ overloadKwh }: NetEnergy): number {
  let hours = 0;
  for (let t = 0; t < overloadKwh.length; t++) if (overloadKwh[t]! > 0) hours += 1;
  return hours;
}
