import type { Load, Season } from '../home/home';
import type { WalkGenerator } from '../outage/walk/system';
import { fuelLine } from '../physics/generator-fuel';
import { fuelHeatKwh, generatorType } from '../tables/fuels';
import { practice } from '../tables/practice-figures';
import { runHours } from './fuel/run-hours';
import type { Route } from './route';

/** Share of its rating at which a generator charges a battery well. */
export const CHARGE_LOAD = practice('charge-load-share');

/** What of a route its generator goes by. */
export type WithGenerator = Pick<Route, 'kind' | 'generator' | 'fuel' | 'usableKwh' | 'way'>;

/**
 * The generator of a route as it runs down in an outage; null without one. Beside a battery it is loaded as well as it
 * charges, and no more. `careful`: a thirsty one, on the low end of the fuel.
 */
export function walkGenerator(
  route: WithGenerator,
  { loads, season, careful }: { loads: readonly Load[]; season: Season; careful?: boolean },
): WalkGenerator | null {
  const { generator, fuel, usableKwh } = route;
  if (generator === null || fuel === null) return null;
  const type = generatorType(generator.type);
  const atHand = fuel.atHand === null ? Infinity : careful ? fuel.atHand.low : fuel.atHand.value;
  return {
    ratedKw: generator.siteKw * (usableKwh === null ? 1 : CHARGE_LOAD),
    fuelLine: fuelLine({
      ratedKw: generator.ratedKw,
      fullLoadEfficiency: careful ? type.efficiencyLow : type.efficiency,
      noLoadRatio: careful ? type.noLoadRatioHigh : type.noLoadRatio,
      kwhPerUnit: fuelHeatKwh(fuel.fuel).lowerKwh,
    }),
    runsByHour: runHours(route, loads, season, generator.runsByHour),
    fuelAtStart: atHand,
    refill: 0,
    refillEveryHours: Infinity,
    tankSize: atHand,
  };
}
