import { mustBePositive } from '../quantity/must-be';

export interface ResistiveLoad {
  readonly watts: number;
  readonly amps: number;
}

/**
 * A heating element on another voltage than its rating: W = rated W x (V / rated V)^2, A = W / V.
 * At 208 V a 240 V element gives three quarters of its heat.
 */
export function resistiveLoadAt(given: {
  ratedWatts: number;
  ratedVolts: number;
  volts: number;
}): ResistiveLoad {
  mustBePositive('ratedWatts', given.ratedWatts, 'W');
  mustBePositive('ratedVolts', given.ratedVolts, 'V');
  mustBePositive('volts', given.volts, 'V');
  const watts = given.ratedWatts * (given.volts / given.ratedVolts) ** 2;
  return { watts, amps: watts / given.volts };
}
