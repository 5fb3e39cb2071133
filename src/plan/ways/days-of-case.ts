import type { BadCase } from '../ride-through/ride-through';

/** Where a drawn outage stands at the end of a day of it. */
export interface DayOfCase {
  readonly afterHours: number;
  /** Served since the outage began, kWh at the house. */
  readonly servedKwh: number;
  readonly chargeKwh: number;
  /** Gallons left; null without a generator, or where the fuel is piped in. */
  readonly fuelLeft: number | null;
  /** The hour before which it stopped to serve all; null while it serves. */
  readonly stoppedAfter: number | null;
}

const DAY = 24;

/** Day by day; an outage of less than a day has its one end. */
export function daysOfCase({ hours, endsAfter }: BadCase): DayOfCase[] {
  let servedKwh = 0;
  return hours.flatMap((hour, i) => {
    servedKwh += hour.servedKw;
    const ends = (i + 1) % DAY === 0 || i === hours.length - 1;
    if (!ends) return [];
    const { chargeKwh, fuelLeft } = hour;
    const stoppedAfter = endsAfter !== null && endsAfter <= i ? endsAfter : null;
    return [{ afterHours: i + 1, servedKwh, chargeKwh, fuelLeft, stoppedAfter }];
  });
}
