/** Lengths looked at for every home, h: 12 hours, 1, 3, 7 and 14 days. */
export const LENGTHS: readonly number[] = [12, 24, 72, 168, 336];

/** Those and the household's own goal, shortest first, h. */
export function lengthsFor(goalHours: number): number[] {
  return [...new Set([...LENGTHS, goalHours])].sort((a, b) => a - b);
}
