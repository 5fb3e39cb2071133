import type { Question } from './question';

/** A year that many homes were built in. */
const YEAR = 1985;

/** A number that could be typed here, in digits: one of the usual ones, round. */
export function exampleFor({ usual, possible, unit, decimals }: Question): string {
  if (unit === 'year') return String(YEAR);
  const [low, high] = usual ?? possible ?? [1, 100];
  const middle = low > 0 ? Math.sqrt(low * high) : low < 0 ? (low + high) / 2 : high / 10;
  const round = Number(middle.toPrecision(1));
  const [least, most] = possible ?? [low, high];
  const inside = Math.min(most, Math.max(least, round));
  const whole = decimals !== true && ['count', 'people', 'year'].includes(unit ?? 'count');
  return String(whole ? Math.max(Math.ceil(least), Math.round(inside)) : inside);
}
