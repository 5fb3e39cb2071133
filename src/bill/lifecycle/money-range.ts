/** Dollars as a range: low <= likely <= high. */
export interface MoneyRange {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

export const nothing: MoneyRange = { low: 0, likely: 0, high: 0 };

/** The three cases of a plan: the cheapest (low costs, high savings), the likely one, and the dearest. */
export type Case = 'low' | 'likely' | 'high';
export const cases: readonly Case[] = ['low', 'likely', 'high'];

/** Work a result out for the three cases and put it in order. */
export function rangeOf(of: (at: Case) => number): MoneyRange {
  const [low, likely, high] = [of('low'), of('likely'), of('high')].sort((a, b) => a - b);
  return { low: low!, likely: likely!, high: high! };
}

/** Sum of ranges, low ends together and high ends together. */
export function addRanges(ranges: readonly MoneyRange[]): MoneyRange {
  const sum = (inCase: Case) => ranges.reduce((total, range) => total + range[inCase], 0);
  return { low: sum('low'), likely: sum('likely'), high: sum('high') };
}
