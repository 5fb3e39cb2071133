import type { Battery } from './battery';

/** What a battery may do over some hours, and what each hour's energy is worth. All arrays have one entry an hour. */
export interface DispatchProblem {
  readonly battery: Battery;
  readonly loadKwh: ArrayLike<number>;
  readonly solarKwh: ArrayLike<number>;
  /** $/kWh; may be negative. */
  readonly importPrice: ArrayLike<number>;
  /** $/kWh; a negative credit is refused by holding solar back. */
  readonly exportPrice: ArrayLike<number>;
  /** Solar beyond the house's use may go to the grid; else it is lost. */
  readonly exportAllowed: boolean;
  /** The battery too may send to the grid. */
  readonly batteryMayExport: boolean;
  /** The battery may charge from the grid, not from solar alone. */
  readonly gridMayCharge: boolean;
  /** Least charge at the start of each hour and after the last (hours + 1), kWh: kept for outages. */
  readonly floorKwh: ArrayLike<number>;
  /** Import above `kw` costs `perKwh` more; Infinity forbids it. Hours with `kw` Infinity are free. */
  readonly peak?: { readonly kw: ArrayLike<number>; readonly perKwh: number };
}

/** What the battery did, and the energy that then went through the meter, kWh an hour. */
export interface Dispatch {
  readonly importKwh: Float64Array;
  readonly exportKwh: Float64Array;
  /** Solar held back. */
  readonly curtailedKwh: Float64Array;
  readonly chargeKwh: Float64Array;
  readonly dischargeKwh: Float64Array;
  /** Charge at the start of each hour and after the last, kWh. */
  readonly storedKwh: Float64Array;
  /** $ for import less export credit plus wear, at the prices of the problem. */
  readonly cost: number;
}

/** Number of hours of a problem. Throws RangeError when the arrays do not agree. */
export function problemHours(problem: DispatchProblem): number {
  const hours = problem.loadKwh.length;
  const { solarKwh, importPrice, exportPrice, floorKwh } = problem;
  for (const [name, list] of Object.entries({ solarKwh, importPrice, exportPrice })) {
    if (list.length !== hours) throw new RangeError(`${name} has ${list.length} of ${hours} hours`);
  }
  if (floorKwh.length !== hours + 1) throw new RangeError(`floorKwh needs ${hours + 1} entries`);
  return hours;
}

/** The most the battery may charge in an hour, kWh on the house side: its power, or the surplus solar alone. */
export function mostCharge(problem: DispatchProblem, h: number): number {
  const power = problem.battery.chargeKw;
  if (problem.gridMayCharge) return power;
  return Math.min(power, Math.max(0, problem.solarKwh[h]! - problem.loadKwh[h]!));
}

/** The most the battery may discharge in an hour, kWh on the house side: its power, or what the house still needs. */
export function mostDischarge(problem: DispatchProblem, h: number): number {
  const power = problem.battery.dischargeKw;
  if (problem.exportAllowed && problem.batteryMayExport) return power;
  return Math.min(power, Math.max(0, problem.loadKwh[h]! - problem.solarKwh[h]!));
}
