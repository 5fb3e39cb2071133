import { mustBePositive, mustBeShare, mustNotBeNegative } from '../quantity/must-be';

/**
 * Dip of a generator generator's voltage when a motor starts, percent of rated: 100 x d / (1 + d), d = reactance x start VA /
 * rated VA. `reactance` is the transient reactance of the generator, per unit; 0.15 to 0.35 for household sets.
 * An estimate of the first moment (common practice, no source); the governor and the maker's motor-start table decide.
 */
export function generatorVoltageDipPercent(of: {
  startingVa: number;
  ratedVa: number;
  reactance: number;
}): number {
  mustNotBeNegative('startingVa', of.startingVa, 'VA');
  mustBePositive('ratedVa', of.ratedVa, 'VA');
  mustBeShare('reactance', of.reactance);
  const drop = (of.reactance * of.startingVa) / of.ratedVa;
  return (100 * drop) / (1 + drop);
}

/** What a start does to a source with a stated limit. */
export type StartVerdict = 'carries' | 'dips-too-far' | 'trips';

/** Whether a generator carries a start within a stated dip, for example 30 %, where many contactors let go. */
export function generatorStartVerdict(of: {
  startingVa: number;
  ratedVa: number;
  reactance: number;
  mostDipPercent: number;
}): StartVerdict {
  mustBePositive('mostDipPercent', of.mostDipPercent, '%');
  return generatorVoltageDipPercent(of) <= of.mostDipPercent ? 'carries' : 'dips-too-far';
}

/** Whether an inverter carries a start: it limits its current, so above its surge VA it trips or sags without a floor. */
export function inverterStartVerdict(of: { peakVa: number; surgeVa: number }): StartVerdict {
  mustNotBeNegative('peakVa', of.peakVa, 'VA');
  mustBePositive('surgeVa', of.surgeVa, 'VA');
  return of.peakVa <= of.surgeVa ? 'carries' : 'trips';
}
