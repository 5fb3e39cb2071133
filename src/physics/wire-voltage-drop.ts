import { mustBePositive, mustNotBeNegative } from '../quantity/must-be';

export interface VoltageDrop {
  readonly volts: number;
  /** Share of the supply voltage, percent. */
  readonly percent: number;
}

/**
 * Single-phase drop: V = 2 x ft / 1000 x Z x A, ft one way. Z = root(R^2 + X^2) ohm per 1000 ft is the most that
 * R cos(a) + X sin(a) comes to, whatever the power factor of the load. Resistance by NEC Chapter 9 Table 8 (75 C),
 * reactance by Table 9; without one it is left out, which is good to about 4 AWG.
 */
export function voltageDropByResistance(of: {
  amps: number;
  oneWayFt: number;
  ohmPer1000Ft: number;
  reactancePer1000Ft?: number;
  supplyVolts: number;
}): VoltageDrop {
  mustNotBeNegative('amps', of.amps, 'A');
  mustNotBeNegative('oneWayFt', of.oneWayFt, 'ft');
  mustBePositive('ohmPer1000Ft', of.ohmPer1000Ft, 'ohm');
  const z = Math.hypot(of.ohmPer1000Ft, of.reactancePer1000Ft ?? 0);
  return dropOf((2 * of.oneWayFt * z * of.amps) / 1000, of.supplyVolts);
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
