import { mustBePositive, mustBeShare } from '../quantity/must-be';

/** One mechanical horsepower in watts (550 ft-lbf/s). */
export const WATTS_PER_HP = 745.7;

/** What a motor draws while it runs. */
export interface MotorRunning {
  readonly watts: number;
  readonly va: number;
  readonly amps: number;
}

/**
 * Running draw from shaft power: W = 745.7 hp / efficiency, VA = W / power factor, A = VA / V, single phase.
 * hp and volts above 0; efficiency and power factor above 0 to 1.
 */
export function motorRunning(given: {
  shaftHp: number;
  efficiency: number;
  powerFactor: number;
  volts: number;
}): MotorRunning {
  mustBePositive('shaftHp', given.shaftHp, 'hp');
  mustBePositive('volts', given.volts, 'V');
  mustBeShare('efficiency', given.efficiency);
  mustBeShare('powerFactor', given.powerFactor);
  const watts = (WATTS_PER_HP * given.shaftHp) / given.efficiency;
  const va = watts / given.powerFactor;
  return { watts, va, amps: va / given.volts };
}

/** Running draw from the amps on a nameplate: VA = V A, W = VA x power factor, single phase. */
export function motorRunningFromAmps(given: {
  amps: number;
  volts: number;
  powerFactor: number;
}): MotorRunning {
  mustBePositive('amps', given.amps, 'A');
  mustBePositive('volts', given.volts, 'V');
  mustBeShare('powerFactor', given.powerFactor);
  const va = given.amps * given.volts;
  return { watts: va * given.powerFactor, va, amps: given.amps };
}
