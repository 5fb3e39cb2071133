import steps from '#compiled/tables/generic-steps.js';
import type { Table } from './table';

export type PowerStep = {
  readonly watts: number;
  readonly startVa: number;
  /** 240: a set with two halves, each with half its power; 120: one half alone. Left out where halves are not checked. */
  readonly volts?: 120 | 240;
  /** Starts are held to each half too: for a set that is there. A size to buy leaves that to the quote. */
  readonly startsByHalf?: true;
};
export type PackStep = PowerStep & { readonly kwh: number };

interface StepRow {
  kind: 'pack' | 'engine' | 'standby' | 'inverter' | 'battery' | 'solar';
  watts?: number;
  startVa?: number;
  volts?: 120 | 240;
  kwh?: number;
  kw?: number;
}

/** Generic sizes, smallest first within each kind. */
export const genericSteps: Table<StepRow> = steps;

/** Sizes of sources by power: generators, standby generators, inverters. W and VA. */
export function powerSteps(kind: 'engine' | 'standby' | 'inverter'): PowerStep[] {
  return rowsOf(kind).map(({ watts, startVa, volts }) => ({
    watts: watts!,
    startVa: startVa!,
    ...(volts && { volts }),
  }));
}

/** Sizes of plug-in packs: kWh, W, VA. */
export function packSteps(): PackStep[] {
  return rowsOf('pack').map(({ kwh, watts, startVa }) => ({
    kwh: kwh!,
    watts: watts!,
    startVa: startVa!,
  }));
}

/** Sizes of home batteries, kWh of nameplate. */
export function batteryStepsKwh(): number[] {
  return rowsOf('battery').map((row) => row.kwh!);
}

/** Sizes of roof solar, kW of panels. */
export function solarStepsKw(): number[] {
  return rowsOf('solar').map((row) => row.kw!);
}

function rowsOf(kind: StepRow['kind']): readonly StepRow[] {
  return genericSteps.rows.filter((row) => row.kind === kind);
}
