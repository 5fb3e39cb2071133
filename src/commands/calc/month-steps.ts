import type { Step } from './calculation';

const NAMES =
  'January February March April May June July August September October November December'.split(
    ' ',
  );

/** Twelve values, January first, one step a month; months without a value are left out. */
export function monthSteps(
  values: readonly (number | null)[],
  given: { formula: string; unit: string },
): Step[] {
  return values.flatMap((value, m) =>
    value === null ? [] : [{ label: NAMES[m]!, value, ...given }],
  );
}
