/** Five months about one. */
export function seasonOf<T>(months: readonly T[], m: number): T[] {
  return [-2, -1, 0, 1, 2].map((step) => months[(m + step + 12) % 12]!);
}

/** The middle value of those that there are; null where there are none. */
export function median(values: readonly (number | null)[]): number | null {
  const sorted = values.filter((value) => value !== null).sort((a, b) => a - b);
  if (sorted.length === 0) return null;
  return (sorted[(sorted.length - 1) >> 1]! + sorted[sorted.length >> 1]!) / 2;
}

/** The value, held between two ends. */
export function clamp(value: number, least: number, most: number): number {
  return Math.min(Math.max(value, least), most);
}
