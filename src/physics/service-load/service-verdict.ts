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
export function serviceVerdict(of: {
  plainAmps: number;
  carefulAmps: number;
  ratingAmps: number;
}): ServiceVerdict {
  mustNotBeNegative('plainAmps', of.plainAmps, 'A');
  mustNotBeNegative('carefulAmps', of.carefulAmps, 'A');
  mustBePositive('ratingAmps', of.ratingAmps, 'A');
  if (of.plainAmps > of.ratingAmps) return 'over';
  const clear = CLEAR_SHARE * of.ratingAmps;
  return of.plainAmps <= clear && of.carefulAmps <= clear ? 'within' : 'marginal';
}
