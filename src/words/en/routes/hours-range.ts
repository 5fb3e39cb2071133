import type { Figure } from '../../../quantity/figure';
import { shown } from '../../../quantity/shown';

/** "about 2 days 4 h (careful count 30 h)": the low end of a route's hours is its careful count. */
export function hoursRange(hours: Figure): string {
  const [low, likely] = [hours.low, hours.value].map((h) => shown(h, 'h'));
  return low === likely ? `about ${likely}` : `about ${likely} (careful count ${low})`;
}
