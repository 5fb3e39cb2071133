import { heatPumpShare } from '../../physics/heat-pump-share';
import { MONTH_DAYS } from '../../physics/weather/calendar';
import { heatPumpCurve } from '../../tables/heat-pump-curves';
import type { Climate } from '../../tables/place/climate';
import { practice } from '../../tables/practice-figures';
import { seasonOf } from '../season-of';
import { monthMeans } from '../weather/usual-hours';
import { BALANCE_C, heatNeed } from './heat-need';

/** Heat a pump can give, and power it takes for a unit of heat, at an outdoor temperature in C over those at 47 F. */
export const capacityShare = heatPumpShare(heatPumpCurve('capacity'));
export const inputShare = heatPumpShare(heatPumpCurve('input'));

/**
 * Heat over power at 47 F of a heat pump of HSPF 8.2 (the federal minimum of 2015 to 2022), by the
 * single-speed performance maps of NREL/TP-5500-56354. It only turns heat the pump lacks into the kWh of strips.
 */
export const RATED_COP = practice('heat-pump-cop-47f');

/** No hour of any station is colder. */
const COLDEST_C = -70;

/**
 * What the climate asks of a heat pump at an outdoor temperature, over the running hours at the design temperature.
 * The kWh of a usual winter are those that degree hours alone would give; its cold days have more of them, its mild
 * days fewer.
 *
 *   share(T) = k x need(T) x input(T),   k = sum of need / sum of need x input, over the hours of December to February
 */
export function pumpShare(climate: Climate): (airC: number) => number {
  const need = (airC: number) => heatNeed(airC, climate.heat99C);
  const byDegrees = winterSum(climate, need);
  const byPump = winterSum(climate, (airC) => need(airC) * inputShare(airC));
  const k = byPump > 0 ? byDegrees / byPump : 1;
  return (airC) => k * need(airC) * inputShare(airC);
}

function winterSum(climate: Climate, of: (airC: number) => number): number {
  return monthMeans(climate, of).reduce(
    (sum, mean, month) => sum + (seasonOf(month) === 'winter' ? mean * MONTH_DAYS[month]! : 0),
    0,
  );
}

/** A heat pump hour by hour. */
export interface HeatPumpHours {
  /** What the pump draws, kW. */
  pumpKw(airC: number): number;
  /** What resistance heat would draw for the heat the pump lacks, kW. */
  beyondKw(airC: number): number;
  /** Below this the pump runs all the time and still lacks heat, C. */
  readonly keepsUpToC: number;
}

/**
 * A heat pump that takes `hardDayKwh` on a day that is `hardDayC` all through, hour by hour:
 *
 *   pump kW = A need(T) input(T)                          while A need(T) <= full x capacity(T)
 *   beyond kW = COP47 (A need(T) - full x capacity(T))    in colder hours; the pump then stays at its highest draw
 *
 * The published curve lets the draw at full output fall a little with cold; frost and variable speed work the other way,
 * so it is held. `full` is the running power, or what the hard day asks for where that is more: the day's kWh hold.
 */
export function heatPumpHours(given: {
  hardDayKwh: number;
  hardDayC: number;
  runningKw: number;
  designC: number;
}): HeatPumpHours {
  const need = (airC: number) => heatNeed(airC, given.designC);
  const hardNeed = need(given.hardDayC);
  if (hardNeed <= 0 || given.hardDayKwh <= 0) {
    return { pumpKw: () => 0, beyondKw: () => 0, keepsUpToC: COLDEST_C };
  }
  const a = given.hardDayKwh / 24 / (hardNeed * inputShare(given.hardDayC));
  const fullKw = Math.max(given.runningKw, (a * hardNeed) / capacityShare(given.hardDayC));
  const lacks = (airC: number) => a * need(airC) - fullKw * capacityShare(airC);
  const keepsUpToC = zeroOf(lacks);
  return {
    pumpKw: (airC) => {
      const t = Math.max(airC, keepsUpToC);
      return a * need(t) * inputShare(t);
    },
    beyondKw: (airC) => (airC >= keepsUpToC ? 0 : RATED_COP * lacks(airC)),
    keepsUpToC,
  };
}

/** Temperature at which a falling function is zero, between the coldest hour and the balance; the end it stays below or above. */
function zeroOf(falling: (airC: number) => number): number {
  let [low, high] = [COLDEST_C, BALANCE_C];
  if (falling(low) <= 0) return low;
  for (let round = 0; round < 50; round++) {
    const middle = (low + high) / 2;
    if (falling(middle) > 0) low = middle;
    else high = middle;
  }
  return high;
}
