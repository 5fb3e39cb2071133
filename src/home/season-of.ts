import type { Season } from './home';

/** December to February is winter, June to August summer, the rest mild. January is 0. */
export function seasonOf(month: number): Season {
  if (month === 11 || month <= 1) return 'winter';
  return month >= 5 && month <= 7 ? 'summer' : 'mild';
}
