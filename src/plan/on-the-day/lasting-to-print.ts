import { onceStored } from '../../routes/fuel/once-stored';
import type { Plan } from '../plan';

/** Hours of the route advised by both counts, and with what fuel; h, gal. */
export interface LastingToPrint {
  readonly likelyHours: number;
  readonly carefulHours: number;
  /** Gallons once the cans are filled; null for what is here today. */
  readonly storedGallons: number | null;
}

/**
 * What a sheet says of how long it lasts: today, and once the cans of the parts are filled where some are to be filled.
 * Empty while no end is foreseen, as with piped gas.
 */
export function lastingToPrint({ advice: { route }, home }: Plan): LastingToPrint[] {
  const stored = onceStored(home, route);
  return [
    { lasting: route.lasting, storedGallons: null },
    ...(stored === null ? [] : [{ lasting: stored.route.lasting, storedGallons: stored.gallons }]),
  ].flatMap(({ lasting: { hours }, storedGallons }) =>
    hours === null ? [] : [{ likelyHours: hours.value, carefulHours: hours.low, storedGallons }],
  );
}
