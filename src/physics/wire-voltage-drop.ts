import { mustBePositive, mustNotBeNegative } from '../quantity/must-be';

export interface VoltageDrop {
  readonly volts: number;
  /** Share of the supply voltage, percent. */
  readonly percent: number;
}

/**
 * Single-phase drop from a resistance table: V = 2 x ft x (ohm per 1000 ft) / 1000 x A, ft one way.
 * Resistance by NEC Chapter 9 Table 8 (75 C). Reactance is left out: good to about 1/0 AWG at household currents.
 */
export function voltageDropByResistance(of: {
  amps: number;
  oneWayFt: number;
  ohmPer1000Ft: number;
  supplyVolts: number;
}): VoltageDrop {
  mustNotBeNegative('amps', of.amps, 'A');
  mustNotBeNegative('oneWayFt', of.oneWayFt, 'ft');
  mustBePositive('ohmPer1000Ft', of.ohmPer1000Ft, 'ohm');
  return dropOf((2 * of.oneWayFt * of.ohmPer1000Ft * of.amps) / 1000, of.supplyVolts);
}

/**
 * Single-phase drop by the K factor: V = 2 x K x A x ft / cmil, ft one way.
 * K in ohm-cmil/ft is 12.9 for copper and 21.2 for aluminum.
 */
export function voltageDropByK(of: {
  k: number;
  amps: number;
  oneWayFt: number;
  circularMils: number;
  supplyVolts: number;
}): VoltageDrop {
  mustBePositive('k', of.k, 'ohm cmil/ft');
  mustNotBeNegative('amps', of.amps, 'A');
  mustNotBeNegative('oneWayFt', of.oneWayFt, 'ft');
  mustBePositive('circularMils', of.circularMils, 'cmil');
  return dropOf((2 * of.k * of.amps * of.oneWayFt) / of.circularMils, of.supplyVolts);
}

function dropOf(volts: number, supplyVolts: number): VoltageDrop {
  mustBePositive('supplyVolts', supplyVolts, 'V');
  return { volts, percent: (100 * volts) / supplyVolts };
}
