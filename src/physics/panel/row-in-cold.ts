import { mustBePositive, mustNotBeNegative } from '../../quantity/must-be';
import { requireWithin } from '../../quantity/require-within';

/** Temperature at which panels are labeled, C (standard test conditions, IEC 61215). */
const LABEL_C = 25;

/**
 * How much the open-circuit voltage of a panel grows from its label to a temperature: 1 + b (T - 25), b the coefficient on its
 * data sheet, negative, as a percentage per kelvin. NEC 690.7(A)(1). T from -70 to 60 C.
 */
export function coldFactor(given: { lowestC: number; percentPerK: number }): number {
  requireWithin('lowestC', given.lowestC, { atLeast: -70, atMost: 60, unit: 'C' });
  requireWithin('percentPerK', given.percentPerK, { atLeast: -1, atMost: 0, unit: '%/K' });
  return 1 + (given.percentPerK / 100) * (given.lowestC - LABEL_C);
}

/** Highest voltage of panels in a row, V: their number x the volts on the label x how much the cold adds. NEC 690.7(A). */
export function rowVolts(given: {
  inRow: number;
  openCircuitVolts: number;
  factor: number;
}): number {
  mustBePositive('inRow', given.inRow, '');
  mustBePositive('openCircuitVolts', given.openCircuitVolts, 'V');
  mustBePositive('factor', given.factor, '');
  return given.inRow * given.openCircuitVolts * given.factor;
}

/** Most volts that the label of each panel in a row may show, V, for an input that takes `limitVolts`. */
export function mostLabelVolts(given: {
  inRow: number;
  limitVolts: number;
  factor: number;
}): number {
  return (
    given.limitVolts / rowVolts({ inRow: given.inRow, openCircuitVolts: 1, factor: given.factor })
  );
}

/** Bright sky and reflections: what a panel may give over its label, NEC 690.8(A)(1). */
const OVER_LABEL = 1.25;

/**
 * Currents of rows side by side, A: what the input must take, 1.25 x the short-circuit amps of all (690.8(A)(1)), and what
 * wires and fuses must carry, 1.25 x that again, for it lasts for hours (690.8(B)).
 */
export function rowAmps(given: { rows: number; shortCircuitAmps: number }): {
  inputAmps: number;
  wireAmps: number;
} {
  mustBePositive('rows', given.rows, '');
  mustNotBeNegative('shortCircuitAmps', given.shortCircuitAmps, 'A');
  const inputAmps = OVER_LABEL * given.rows * given.shortCircuitAmps;
  return { inputAmps, wireAmps: 1.25 * inputAmps };
}
