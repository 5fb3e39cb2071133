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
export function motorRunning(of: {
  shaftHp: number;
  efficiency: number;
  powerFactor: number;
  volts: number;
}): MotorRunning {
  mustBePositive('shaftHp', of.shaftHp, 'hp');
  mustBePositive('volts', of.volts, 'V');
  mustBeShare('efficiency', of.efficiency);
  mustBeShare('powerFactor', of.powerFactor);
  const watts = (WATTS_PER_HP * of.shaftHp) / of.efficiency;
  const va = watts / of.powerFactor;
  return { watts, va, amps: va / of.volts };
}

/** Running draw from the amps on a nameplate: VA = V A, W = VA x power factor, single phase. */
export function motorRunningFromAmps(of: {
  amps: number;
  volts: number;
  powerFactor: number;
}): MotorRunning {
  mustBePositive('amps', of.amps, 'A');
  mustBePositive('volts', of.volts, 'V');
  mustBeShare('powerFactor', of.powerFactor);
  const va = of.amps * of.volts;
  return { watts: va * of.powerFactor, va, amps: of.amps };
}
