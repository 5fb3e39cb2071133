import { mustBePositive, mustNotBeNegative } from '../quantity/must-be';
import { normalTail } from './normal-tail';

/**
 * Mean of the shorter of an outage's length and `hours`, when lengths are lognormal with this mean and spread sigma:
 *   mu = ln(mean) - sigma^2 / 2     z = (ln h - mu) / sigma
 *   E[min(T, h)] = mean (1 - Q(z - sigma)) + h Q(z)
 * 0 for no hours, the mean for hours without end. It is the limited expected value of the lognormal distribution, e.g.
 * Klugman, Panjer & Willmot, Loss Models, appendix A (from memory, not re-read; held to a numerical integral).
 */
export function limitedMeanLength(given: {
  hours: number;
  meanHours: number;
  sigma: number;
}): number {
  const { hours, meanHours, sigma } = given;
  mustNotBeNegative('hours', hours, 'h');
  mustNotBeNegative('meanHours', meanHours, 'h');
  mustBePositive('sigma', sigma, '(spread)');
  if (hours === 0 || meanHours === 0) return 0;
  const mu = Math.log(meanHours) - (sigma * sigma) / 2;
  const z = (Math.log(hours) - mu) / sigma;
  return meanHours * (1 - normalTail(z - sigma)) + hours * normalTail(z);
}
