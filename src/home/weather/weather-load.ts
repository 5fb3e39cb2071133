import type { Climate } from '../../tables/place/climate';
import { type HeatPumpHours, heatPumpHours } from '../heat/heat-pump';
import type { Load } from '../home';
import { coldShare, hardDaysC, heatShare } from './climate-hours';

type ByTemperature = (airC: number) => number;

const nothing: ByTemperature = () => 0;

/**
 * What heating and cooling draw at an outdoor temperature, kW, each load its own kWh on a hard day:
 *
 *   kW = winter/24 x share(T) / share(hard winter day)     furnace, boiler, electric heat
 *      + heat pumps and the strips beside them             (heat-pump)
 *      + summer/24 x share(T) / share(hard summer day)     cooling
 */
export function weatherLoadKw(loads: readonly Load[], climate: Climate): ByTemperature {
  const parts = [
    degreeHours(loads, 'winter', climate),
    degreeHours(loads, 'summer', climate),
    ...pumps(loads, climate),
  ].filter((part) => part !== nothing);
  const [one, two] = parts;
  if (one === undefined) return nothing;
  if (two === undefined) return one;
  return (airC) => {
    let kw = 0;
    for (const part of parts) kw += part(airC);
    return kw;
  };
}

/** All loads of a season that go by degree hours alone. */
function degreeHours(
  loads: readonly Load[],
  season: 'winter' | 'summer',
  climate: Climate,
): ByTemperature {
  const winter = season === 'winter';
  const { hardCold, hardHot } = hardDaysC(climate);
  const share: ByTemperature = winter
    ? (airC) => coldShare(airC, climate.heat99C)
    : (airC) => heatShare(airC, climate.cool1C);
  const hardShare = share(winter ? hardCold : hardHot);
  const follows = winter ? ['cold', 'both'] : ['heat', 'both'];
  const kwh = loads
    .filter((load) => follows.includes(load.follows) && !(winter && load.heatsBy !== undefined))
    .reduce((sum, load) => sum + load.kwhPerDay[season].value, 0);
  if (kwh <= 0 || hardShare <= 0) return nothing;
  const designKw = kwh / 24 / hardShare;
  return (airC) => designKw * share(airC);
}

/** Heat pumps, and the strips that give what they lack, up to the strips' own power. */
function pumps(loads: readonly Load[], climate: Climate): ByTemperature[] {
  const hours = loads
    .filter((load) => load.heatsBy === 'pump' && load.kwhPerDay.winter.value > 0)
    .map((load) => hoursOf(load, climate));
  if (hours.length === 0) return [];
  const stripsKw = loads
    .filter((load) => load.heatsBy === 'strips')
    .reduce((sum, load) => sum + load.runningWatts.value / 1000, 0);
  const pumping = hours.map(({ pumpKw }) => pumpKw);
  if (stripsKw === 0) return pumping;
  const strips: ByTemperature = (airC) =>
    Math.min(
      stripsKw,
      hours.reduce((sum, { beyondKw }) => sum + beyondKw(airC), 0),
    );
  return [...pumping, strips];
}

/** What a heat pump of this home does at an outdoor temperature. */
export function hoursOf(pump: Load, climate: Climate): HeatPumpHours {
  return heatPumpHours({
    hardDayKwh: pump.kwhPerDay.winter.value,
    hardDayC: hardDaysC(climate).hardCold,
    runningKw: pump.runningWatts.value / 1000,
    designC: climate.heat99C,
  });
}
