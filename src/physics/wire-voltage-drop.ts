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
export function voltageDropByResistance(given: {
  amps: number;
  oneWayFt: number;
  ohmPer1000Ft: number;
  reactancePer1000Ft?: number;
  supplyVolts: number;
}): VoltageDrop {
  mustNotBeNegative('amps', given.amps, 'A');
  mustNotBeNegative('oneWayFt', given.oneWayFt, 'ft');
  mustBePositive('ohmPer1000Ft', given.ohmPer1000Ft, 'ohm');
  const z = Math.hypot(given.ohmPer1000Ft, given.reactancePer1000Ft ?? 0);
  return dropOf((2 * given.oneWayFt * z * given.amps) / 1000, given.supplyVolts);
}

/**
 * Single-phase drop by the K factor: V = 2 x K x A x ft / cmil, ft one way.
 * K in ohm-cmil/ft is 12.9 for copper and 21.2 for aluminum.
 */
export function voltageDropByK(given: {
  k: number;
  amps: number;
  oneWayFt: number;
  circularMils: number;
  supplyVolts: number;
}): VoltageDrop {
  mustBePositive('k', given.k, 'ohm cmil/ft');
  mustNotBeNegative('amps', given.amps, 'A');
  mustNotBeNegative('oneWayFt', given.oneWayFt, 'ft');
  mustBePositive('circularMils', given.circularMils, 'cmil');
  return dropOf(
    (2 * given.k * given.amps * given.oneWayFt) / given.circularMils,
    given.supplyVolts,
  );
}

function dropOf(volts: number, supplyVolts: number): VoltageDrop {
  mustBePositive('supplyVolts', supplyVolts, 'V');
  return { volts, percent: (100 * volts) / supplyVolts };
}
