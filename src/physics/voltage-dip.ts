import { mustBePositive, mustBeShare, mustNotBeNegative } from '../quantity/must-be';

/**
 * Dip of a generator generator's voltage when a motor starts, percent of rated: 100 x d / (1 + d), d = reactance x start VA /
 * rated VA. `reactance` is the transient reactance of the generator, per unit; 0.15 to 0.35 for household sets.
 * An estimate of the first moment (common practice, no source); the governor and the maker's motor-start table decide.
 */
export function generatorVoltageDipPercent(given: {
  startingVa: number;
  ratedVa: number;
  reactance: number;
}): number {
  mustNotBeNegative('startingVa', given.startingVa, 'VA');
  mustBePositive('ratedVa', given.ratedVa, 'VA');
  mustBeShare('reactance', given.reactance);
  const drop = (given.reactance * given.startingVa) / given.ratedVa;
  return (100 * drop) / (1 + drop);
}

/** What a start does to a source with a stated limit. */
export type StartVerdict = 'carries' | 'dips-too-far' | 'trips';

/** Whether a generator carries a start within a stated dip, for example 30 %, where many contactors let go. */
export function generatorStartVerdict(given: {
  startingVa: number;
  ratedVa: number;
  reactance: number;
  mostDipPercent: number;
}): StartVerdict {
  mustBePositive('mostDipPercent', given.mostDipPercent, '%');
  return generatorVoltageDipPercent(given) <= given.mostDipPercent ? 'carries' : 'dips-too-far';
}

/** Whether an inverter carries a start: it limits its current, so above its surge VA it trips or sags without a floor. */
export function inverterStartVerdict(given: { peakVa: number; surgeVa: number }): StartVerdict {
  mustNotBeNegative('peakVa', given.peakVa, 'VA');
  mustBePositive('surgeVa', given.surgeVa, 'VA');
  return given.peakVa <= given.surgeVa ? 'carries' : 'trips';
}
