import { usd } from './say-dollars';

/** "the $5,000 you told us ($1,800 now, $3,200 later)": what can be spent now is never mixed up with what may follow. */
export function sayToldMoney(toldUsd: number, laterUsd: number): string {
  return `the ${usd(toldUsd)} you told us${whenOf(toldUsd, laterUsd)}`;
}

function whenOf(toldUsd: number, laterUsd: number): string {
  if (laterUsd <= 0) return '';
  if (laterUsd >= toldUsd) return ' (all of it later)';
  return ` (${usd(toldUsd - laterUsd)} now, ${usd(laterUsd)} later)`;
}
