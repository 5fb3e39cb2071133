import type { ClockRange } from '../../bill/tariff/tariff';

/** "h16-21" is 16:00 to 21:00; anything else is null. */
export function hoursTold(choice: unknown): ClockRange[] | null {
  const found = /^h(\d+)-(\d+)$/.exec(String(choice));
  return found === null ? null : [[Number(found[1]), Number(found[2])]];
}

/** The hours of some ranges that lie in none of the others, each as a range of its own. */
export function hoursWithout(
  ranges: readonly ClockRange[],
  taken: readonly ClockRange[],
): ClockRange[] {
  const has = (list: readonly ClockRange[], h: number) =>
    list.some(([from, to]) => (from < to ? h >= from && h < to : h >= from || h < to));
  const hours = Array.from({ length: 24 }, (_, h) => h);
  return hours.filter((h) => has(ranges, h) && !has(taken, h)).map((h) => [h, h + 1] as const);
}
