import { mustBePositive, mustNotBeNegative } from '../quantity/must-be';
import { normalTail } from './normal-tail';

/**
 * Chance that a length with this mean exceeds `hours`, when lengths are lognormal with spread sigma:
 *   mu = ln(mean) - sigma^2 / 2     P(T > h) = Q((ln h - mu) / sigma)
 * Restoration times of distribution events are lognormal: e.g. Ahmad & Dobson, arXiv 2603.16841 (2026).
 */
export function chanceLonger(given: { hours: number; meanHours: number; sigma: number }): number {
  const { hours, meanHours, sigma } = given;
  mustNotBeNegative('hours', hours, 'h');
  mustNotBeNegative('meanHours', meanHours, 'h');
  mustBePositive('sigma', sigma, '(spread)');
  if (hours === 0) return 1;
  if (meanHours === 0) return 0;
  const mu = Math.log(meanHours) - (sigma * sigma) / 2;
  return normalTail((Math.log(hours) - mu) / sigma);
}
