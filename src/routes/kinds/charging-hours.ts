/** Hours in which somebody is awake to start and stop a generator, in running order: a block from 7, one from 16. */
const AWAKE = [7, 16, 8, 17, 9, 18, 10, 19, 11, 20, 12, 15, 13, 14, 21, 6];

/** The most a day holds without running while people sleep, h. */
export const MOST_CHARGING_HOURS = AWAKE.length;

/**
 * When a generator that refills a battery runs: a block in the morning and one in the evening, which grow together
 * over the day; never while people sleep. Our judgement.
 * @returns 1 or 0 by hour of the day
 */
export function chargingHours(hoursPerDay: number): number[] {
  const runs = new Set(AWAKE.slice(0, hoursPerDay));
  return Array.from({ length: 24 }, (_, hour) => (runs.has(hour) ? 1 : 0));
}

/** Longest time between two blocks, which the battery carries alone, h. */
export function longestRest(runsByHour: readonly number[]): number {
  let [longest, rest] = [0, 0];
  for (let hour = 0; hour < 48; hour++) {
    rest = runsByHour[hour % 24] === 1 ? 0 : rest + 1;
    longest = Math.max(longest, rest);
  }
  return Math.min(24, longest);
}
