import { mustBePositive, mustNotBeNegative } from '../../quantity/must-be';

export type ServiceVerdict =
  | 'within' // 80 % of the rating or less, however the new load is counted
  | 'marginal' // the electrician and the inspector decide
  | 'over'; // above the rating

/** Share of the rating up to which we call a service enough without an electrician's own calculation. */
export const CLEAR_SHARE = 0.8;

/**
 * What a calculated load says of a service: `within` only when both ways of counting stay at 80 % of the rating or less,
 * `over` when even the plain sum is above it, `marginal` in between. Amps of the busier leg.
 */
export function serviceVerdict(given: {
  plainAmps: number;
  carefulAmps: number;
  ratingAmps: number;
}): ServiceVerdict {
  mustNotBeNegative('plainAmps', given.plainAmps, 'A');
  mustNotBeNegative('carefulAmps', given.carefulAmps, 'A');
  mustBePositive('ratingAmps', given.ratingAmps, 'A');
  if (given.plainAmps > given.ratingAmps) return 'over';
  const clear = CLEAR_SHARE * given.ratingAmps;
  return given.plainAmps <= clear && given.carefulAmps <= clear ? 'within' : 'marginal';
}
