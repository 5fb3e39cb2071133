import type { Answers } from '../../../src/interview/answers';

/** Two prices by the clock, 21 cents apart, every day of the year. */
export const peakAndRest: Answers = {
  'bill-plan': 'time-of-use',
  'bill-fixed': 14,
  'price-steps': 'two',
  'price-peak': 36,
  'price-low': 15,
  'peak-hours': 'h16-21',
  'peak-days': 'every',
  'peak-season': 'all-year',
};
