import { practice, practiceRange } from '../../tables/practice-figures';

/** A kitchen is kept near this; in an outage without cooling it follows the day's mean outdoors above it. */
const ROOM_C = practice('kitchen-temperature');
/**
 * What a refrigerator or freezer uses more for each kelvin of a warmer room: about twice as much at 32 C as at 16 C.
 * That the room decides: Harrington, Aye & Fuller, Applied Energy 211 (2018) 346-357.
 */
const PER_KELVIN = practiceRange('cold-food-per-kelvin');

/**
 * Daily use of a refrigerator or freezer against a room at 21 C, as a factor of at least 1:
 *
 *   factor = 1 + p x max(0, T - 21 C)
 *
 * @param dayMeanC mean temperature outdoors of the day, C
 */
export function warmRoom(dayMeanC: number) {
  const warmer = Math.max(0, dayMeanC - ROOM_C);
  return {
    low: 1 + PER_KELVIN.low * warmer,
    likely: 1 + PER_KELVIN.likely * warmer,
    high: 1 + PER_KELVIN.high * warmer,
  };
}
