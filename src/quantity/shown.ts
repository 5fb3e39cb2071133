import { formatQuantity, formatRange } from './format-quantity';

/**
 * Digits a figure of a plan is shown with, by its unit, the same on every screen and paper. Explanations alone print
 * more, as many as make each step true by hand, and come down to these at the end.
 *
 * | Unit | Shown |
 * |---|---|
 * | h | whole hours, whole minutes below one |
 * | $ | whole dollars, from 1,000 to the nearest ten; an amount in whole dollars as it is |
 * | W, VA | whole; from 10,000 as kW, three digits |
 * | all others | three digits, or whole numbers |
 */
export function shownValue(value: number, unit: string): number {
  if (unit === 'h') return Math.abs(value) < 1 ? Math.round(60 * value) / 60 : Math.round(value);
  if (unit === '$') return shownDollars(value);
  return unit === 'W' || unit === 'VA' ? Math.round(value) : value;
}

/** From here on a dollar more or less is not known. */
const ROUGH_USD = 1000;

function shownDollars(value: number): number {
  // Told, or of a table whose prices are round.
  if (Number.isInteger(value)) return value;
  const step = Math.abs(value) >= ROUGH_USD ? 10 : 1;
  return Math.round(value / step) * step;
}

/** "35 h", "$3,520", "29.2 kVA". */
export const shown = (value: number, unit: string): string =>
  formatQuantity(shownValue(value, unit), unit);

/** "35 h (24 to 47 h)"; the value alone where all three are shown alike. */
export function shownRange(
  { low, value, high }: { low: number; value: number; high: number },
  unit: string,
): string {
  const at = (one: number) => shownValue(one, unit);
  return formatRange(at(low), at(value), at(high), unit);
}
