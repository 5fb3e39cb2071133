import { mustBePositive, mustNotBeNegative } from '../quantity/must-be';

/** Btu an hour in one ton of cooling. */
export const BTU_PER_HOUR_PER_TON = 12_000;

/** Btu an hour in one watt. */
export const BTU_PER_HOUR_PER_WATT = 3.412;

/** Electric watts while cooling: W = Btu/h / EER. EER holds at 95 F outdoors; SEER is a season's mean, not this. */
export function coolingWatts(of: { btuPerHour: number; eer: number }): number {
  mustBePositive('btuPerHour', of.btuPerHour, 'Btu/h');
  mustBePositive('eer', of.eer, 'Btu/Wh');
  return of.btuPerHour / of.eer;
}

/** Electric watts while cooling, from tons: W = 12,000 tons / EER, so kW a ton = 12 / EER. */
export function coolingWattsFromTons(of: { tons: number; eer: number }): number {
  mustBePositive('tons', of.tons, 'ton');
  return coolingWatts({ btuPerHour: of.tons * BTU_PER_HOUR_PER_TON, eer: of.eer });
}

/** Coefficient of performance, heat moved over work: COP = EER / 3.412. */
export function copFromEer(eer: number): number {
  mustBePositive('eer', eer, 'Btu/Wh');
  return eer / BTU_PER_HOUR_PER_WATT;
}

/** Electric watts of a heat pump or cooler from its COP: W = Btu/h / (3.412 COP). */
export function wattsFromCop(of: { btuPerHour: number; cop: number }): number {
  mustBePositive('btuPerHour', of.btuPerHour, 'Btu/h');
  mustBePositive('cop', of.cop);
  return of.btuPerHour / (BTU_PER_HOUR_PER_WATT * of.cop);
}

/** Energy of a cooling season: kWh = Btu/h x hours at full load / SEER / 1000. */
export function seasonalCoolingKwh(of: {
  btuPerHour: number;
  fullLoadHours: number;
  seer: number;
}): number {
  mustBePositive('btuPerHour', of.btuPerHour, 'Btu/h');
  mustNotBeNegative('fullLoadHours', of.fullLoadHours, 'h');
  mustBePositive('seer', of.seer, 'Btu/Wh');
  return (of.btuPerHour * of.fullLoadHours) / of.seer / 1000;
}
