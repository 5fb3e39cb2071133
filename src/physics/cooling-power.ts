import { mustBePositive, mustNotBeNegative } from '../quantity/must-be';

/** Btu an hour in one ton of cooling. */
export const BTU_PER_HOUR_PER_TON = 12_000;

/** Btu an hour in one watt. */
export const BTU_PER_HOUR_PER_WATT = 3.412;

/** Electric watts while cooling: W = Btu/h / EER. EER holds at 95 F outdoors; SEER is a season's mean, not this. */
export function coolingWatts(given: { btuPerHour: number; eer: number }): number {
  mustBePositive('btuPerHour', given.btuPerHour, 'Btu/h');
  mustBePositive('eer', given.eer, 'Btu/Wh');
  return given.btuPerHour / given.eer;
}

/** Electric watts while cooling, from tons: W = 12,000 tons / EER, so kW a ton = 12 / EER. */
export function coolingWattsFromTons(given: { tons: number; eer: number }): number {
  mustBePositive('tons', given.tons, 'ton');
  return coolingWatts({ btuPerHour: given.tons * BTU_PER_HOUR_PER_TON, eer: given.eer });
}

/** Coefficient of performance, heat moved over work: COP = EER / 3.412. */
export function copFromEer(eer: number): number {
  mustBePositive('eer', eer, 'Btu/Wh');
  return eer / BTU_PER_HOUR_PER_WATT;
}

/** Electric watts of a heat pump or cooler from its COP: W = Btu/h / (3.412 COP). */
export function wattsFromCop(given: { btuPerHour: number; cop: number }): number {
  mustBePositive('btuPerHour', given.btuPerHour, 'Btu/h');
  mustBePositive('cop', given.cop);
  return given.btuPerHour / (BTU_PER_HOUR_PER_WATT * given.cop);
}

/** Energy of a cooling season: kWh = Btu/h x hours at full load / SEER / 1000. */
export function seasonalCoolingKwh(given: {
  btuPerHour: number;
  fullLoadHours: number;
  seer: number;
}): number {
  mustBePositive('btuPerHour', given.btuPerHour, 'Btu/h');
  mustNotBeNegative('fullLoadHours', given.fullLoadHours, 'h');
  mustBePositive('seer', given.seer, 'Btu/Wh');
  return (given.btuPerHour * given.fullLoadHours) / given.seer / 1000;
}
