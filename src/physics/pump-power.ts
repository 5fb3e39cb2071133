import { mustBePositive, mustBeShare, mustNotBeNegative } from '../quantity/must-be';
import { WATTS_PER_HP } from './motor-running';

/** Feet of cold water that press as hard as 1 psi. */
export const FEET_PER_PSI = 2.31;

/** Gallons a minute times feet in one water horsepower: 33,000 ft-lbf/min over 8.33 lb/gal. */
export const GPM_FEET_PER_HP = 3960;

/** Head of a pressure, ft = 2.31 psi. */
export function headFtFromPsi(psi: number): number {
  mustNotBeNegative('psi', psi, 'psi');
  return FEET_PER_PSI * psi;
}

/** Total dynamic head, ft: lift + friction + 2.31 x the pressure wanted at the tank. */
export function totalDynamicHeadFt(given: {
  liftFt: number;
  frictionFt: number;
  psi: number;
}): number {
  mustNotBeNegative('liftFt', given.liftFt, 'ft');
  mustNotBeNegative('frictionFt', given.frictionFt, 'ft');
  return given.liftFt + given.frictionFt + headFtFromPsi(given.psi);
}

export interface PumpPower {
  /** Power given to the water. */
  readonly waterHp: number;
  /** Power at the pump shaft. */
  readonly brakeHp: number;
  /** Power at the motor's wires. */
  readonly inputWatts: number;
}

/**
 * Power to lift water: water hp = gpm x ft / 3960; brake hp = water hp / pump efficiency;
 * input W = 745.7 x brake hp / motor efficiency. gpm and ft above 0, efficiencies above 0 to 1.
 * Source: Alabama Extension ANR-0548. Some textbooks use 3956.
 */
export function pumpPower(given: {
  gpm: number;
  headFt: number;
  pumpEfficiency: number;
  motorEfficiency: number;
}): PumpPower {
  mustBePositive('gpm', given.gpm, 'gpm');
  mustBePositive('headFt', given.headFt, 'ft');
  mustBeShare('pumpEfficiency', given.pumpEfficiency);
  mustBeShare('motorEfficiency', given.motorEfficiency);
  const waterHp = (given.gpm * given.headFt) / GPM_FEET_PER_HP;
  const brakeHp = waterHp / given.pumpEfficiency;
  return { waterHp, brakeHp, inputWatts: (WATTS_PER_HP * brakeHp) / given.motorEfficiency };
}

/** Time and energy to pump so many gallons: h = gal / gpm / 60, kWh = W h / 1000. */
export function pumpingEnergy(given: { gallons: number; gpm: number; inputWatts: number }): {
  hours: number;
  kwh: number;
} {
  mustNotBeNegative('gallons', given.gallons, 'gal');
  mustBePositive('gpm', given.gpm, 'gpm');
  mustBePositive('inputWatts', given.inputWatts, 'W');
  const hours = given.gallons / given.gpm / 60;
  return { hours, kwh: (given.inputWatts * hours) / 1000 };
}
