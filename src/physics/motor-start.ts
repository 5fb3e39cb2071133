import { mustBePositive } from '../quantity/must-be';
import { type Spread, scaleSpread } from '../quantity/spread';

export type StartBasis =
  | 'nameplate'
  | 'code-letter'
  | 'horsepower-table'
  | 'label-band'
  | 'multiple';

/** What a motor draws in the moment it starts, across the line. */
export interface MotorStart {
  readonly basis: StartBasis;
  readonly amps: Spread;
  /** Apparent power, VA = V A; the real power of a start is lower. */
  readonly va: Spread;
}

/**
 * Start from the locked-rotor amps (LRA) on the nameplate: the best there is, so no range.
 * VA = V x LRA. Amps and volts above 0.
 */
export function startFromNameplate(given: { lockedRotorAmps: number; volts: number }): MotorStart {
  mustBePositive('lockedRotorAmps', given.lockedRotorAmps, 'A');
  const { lockedRotorAmps: a, volts } = given;
  return startOf('nameplate', { low: a, likely: a, high: a }, volts);
}

/**
 * Start from the code letter: A = 1000 x kVA/hp x hp / V, single phase. Both ends of the letter, the middle as likely.
 * Source: NEC Table 430.7(B). null for letter V, which has no upper end: ask for the locked-rotor amps.
 */
export function startFromCodeLetter(given: {
  hp: number;
  kvaPerHpLow: number;
  kvaPerHpHigh: number | null;
  volts: number;
}): MotorStart | null {
  mustBePositive('hp', given.hp, 'hp');
  mustBePositive('volts', given.volts, 'V');
  if (given.kvaPerHpHigh === null) return null;
  const amps = (kvaPerHp: number) => (1000 * kvaPerHp * given.hp) / given.volts;
  const likely = amps((given.kvaPerHpLow + given.kvaPerHpHigh) / 2);
  const ends = { low: amps(given.kvaPerHpLow), likely, high: amps(given.kvaPerHpHigh) };
  return startOf('code-letter', ends, given.volts);
}

/** Locked-rotor current as a multiple of full-load current: 4 easy, 6 as NEC Table 430.251(A), 8 hard to start. */
export const START_MULTIPLES: Spread = { low: 4, likely: 6, high: 8 };

/**
 * Start from horsepower alone: the locked-rotor amps of NEC Table 430.251(A) are likely; the ends are 4/6 and 8/6 of it,
 * for ordinary induction motors draw 4 to 8 times their full-load current (common practice, no source).
 */
export function startFromHorsepower(given: { tableAmps: number; volts: number }): MotorStart {
  mustBePositive('tableAmps', given.tableAmps, 'A');
  const perFullLoad = given.tableAmps / START_MULTIPLES.likely;
  return startOf('horsepower-table', scaleSpread(START_MULTIPLES, perFullLoad), given.volts);
}

/** Start from a band of locked-rotor amps seen on labels of such machines; likely is the middle. */
export function startFromLabelBand(given: {
  lowAmps: number;
  highAmps: number;
  volts: number;
}): MotorStart {
  mustBePositive('lowAmps', given.lowAmps, 'A');
  if (!(given.highAmps >= given.lowAmps)) {
    throw new RangeError(
      `highAmps must be at least lowAmps, got ${given.lowAmps} and ${given.highAmps}`,
    );
  }
  const likely = (given.lowAmps + given.highAmps) / 2;
  return startOf('label-band', { low: given.lowAmps, likely, high: given.highAmps }, given.volts);
}

/**
 * Start as a stated multiple of the running amps, for example 1.5 to 2.5 behind a soft starter,
 * about 1 for an inverter-driven compressor. Multiples are 1 or more.
 */
export function startFromMultiple(given: {
  runningAmps: number;
  multiple: Spread;
  volts: number;
}): MotorStart {
  mustBePositive('runningAmps', given.runningAmps, 'A');
  if (!(given.multiple.low >= 1)) {
    throw new RangeError(`a start is at least the running current, got x ${given.multiple.low}`);
  }
  return startOf('multiple', scaleSpread(given.multiple, given.runningAmps), given.volts);
}

function startOf(basis: StartBasis, amps: Spread, volts: number): MotorStart {
  mustBePositive('volts', volts, 'V');
  return { basis, amps, va: scaleSpread(amps, volts) };
}
