import { timesFigure } from '../../quantity/figure-arithmetic';
import { type Load, seasons } from '../home';

/** Hours of the day, 0 to 24, in which somebody is taken to be awake. */
export interface AwakeHours {
  readonly from: number;
  readonly until: number;
}

/** From 6 to 22. Our judgement; 8 hours of sleep. */
export const AWAKE: AwakeHours = { from: 6, until: 22 };
export const AWAKE_HOURS = AWAKE.until - AWAKE.from;

export const isAwake = (hourOfDay: number): boolean =>
  hourOfDay >= AWAKE.from && hourOfDay < AWAKE.until;

/** The load run only while somebody is awake: the same power, the day's energy of those hours alone. */
export function onlyWhileAwake(load: Load): Load {
  const share = AWAKE_HOURS / 24;
  const kwhPerDay = Object.fromEntries(
    seasons.map((season) => [season, timesFigure(load.kwhPerDay[season], share)]),
  ) as Load['kwhPerDay'];
  const shape = Array.from({ length: 24 }, (_, hour) => (isAwake(hour) ? 1 / AWAKE_HOURS : 0));
  return { ...load, kwhPerDay, shape, awakeOnly: true };
}
