import type { Climate } from '../../tables/place/climate';
import { BALANCE_C } from '../heat/heat-need';
import type { Load } from '../home';
import { monthMeans } from './usual-hours';
import { weatherLoadKw } from './weather-load';

/** What the loads named take for heating and for cooling on a usual day of each month, kWh, January first. */
export function weatherKwh(
  loads: readonly Load[],
  climate: Climate,
): { heating: number[]; cooling: number[] } {
  const kw = weatherLoadKw(loads, climate);
  return {
    heating: monthMeans(climate, (airC) => (airC < BALANCE_C ? 24 * kw(airC) : 0)),
    cooling: monthMeans(climate, (airC) => (airC > BALANCE_C ? 24 * kw(airC) : 0)),
  };
}
