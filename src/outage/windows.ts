import type { HourSeries } from '../quantity/hour-series';

/**
 * The hours of some outages of one length cut out of a record, one outage after the other. The record is a ring. What
 * many sizes are asked over the same few outages is then a short array, whatever the length of the record.
 */
export function cutWindows(
  hourly: HourSeries,
  starts: readonly number[],
  hours: number,
): Float64Array {
  const out = new Float64Array(starts.length * hours);
  starts.forEach((start, i) => {
    for (let h = 0, at = start; h < hours; h++, at++) {
      if (at === hourly.length) at = 0;
      out[i * hours + h] = hourly[at]!;
    }
  });
  return out;
}

/** Of outages of one length: the share served to their end, and the mean share of their hours served before the first that was not. */
export interface Served {
  readonly share: number;
  readonly meanShare: number;
}

/** From the hours served in each of them. */
export function servedOf(hoursServed: ArrayLike<number>, hours: number): Served {
  const count = hoursServed.length;
  let [whole, sum] = [0, 0];
  for (let i = 0; i < count; i++) {
    const served = Math.min(hours, Math.floor(hoursServed[i]! + 1e-9));
    sum += served;
    if (served >= hours) whole += 1;
  }
  return count === 0
    ? { share: 0, meanShare: 0 }
    : { share: whole / count, meanShare: sum / count / hours };
}
