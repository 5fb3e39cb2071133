import type { LineIs } from './line-is';

/** One line of a load calculation, as on an inspector's form. */
export interface LoadLine {
  readonly is: LineIs;
  readonly va: number;
  /** Where the code has it. */
  readonly section: string;
  /** A line that is shown but not added: a subtotal, or a load left out as the smaller of two. */
  readonly counted: boolean;
}

/** What to know of a sum. */
export type LoadNote =
  | 'existing-climate-whole' // inspectors differ on existing heating and cooling
  | 'service-100-or-more'; // only for a service or feeder of 100 A or more

export interface ServiceLoad {
  readonly lines: readonly LoadLine[];
  readonly totalVa: number;
  readonly amps: number;
  readonly notes: readonly LoadNote[];
}

export function countedLine(is: LineIs, va: number, section: string): LoadLine {
  return { is, va, section, counted: true };
}

export function shownLine(is: LineIs, va: number, section: string): LoadLine {
  return { is, va, section, counted: false };
}

/** Add the counted lines and turn the sum into amps: A = VA / V, single phase. */
export function serviceLoad(
  lines: readonly LoadLine[],
  volts: number,
  notes: readonly LoadNote[] = [],
): ServiceLoad {
  const totalVa = lines.reduce((sum, line) => sum + (line.counted ? line.va : 0), 0);
  return { lines, totalVa, amps: totalVa / volts, notes };
}
