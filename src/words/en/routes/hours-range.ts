import type { Figure } from '../../../quantity/figure';
import { formatQuantity } from '../../../quantity/format-quantity';

/** "about 2 days 4 h (careful count 30 h)": the low end of a route's hours is its careful count. */
export function hoursRange(hours: Figure): string {
  const [low, likely] = [hours.low, hours.value].map((h) => formatQuantity(Math.round(h), 'h'));
  return low === likely ? `about ${likely}` : `about ${likely} (careful count ${low})`;
}
