import type { Home } from '../../home/home';
import { hasFixedBattery, hasGenerator } from '../../kinds/ask-traits';
import { traitsOf } from '../../kinds/route-traits';
import { largestChargerWatts } from '../../physics/generator-charging';
import { buysGenerator } from '../../routes/buys-generator';
import { LOAD_SHARE } from '../../routes/fit-power';
import { ownGenerator } from '../../routes/kinds/own-generator';
import type { Route } from '../../routes/route';
import { practice } from '../../tables/practice-figures';
import type { TransferPoint } from './transfer-point';

/** Power factor of a charger without correction: the careful end. */
const CHARGER_POWER_FACTOR = practice('charger-power-factor');

/** How large a charger the generator bought for this route, or the one here now, may feed. Null without either. */
export function generatorChargingPoint(home: Home, route: Route): TransferPoint | null {
  const here = home.facts.told('engine-watts') && !buysGenerator(route);
  const told = here ? home.facts.number('engine-watts') : null;
  // On propane or piped gas a portable set gives less than its gasoline label says.
  const own = told === null ? null : told * (ownGenerator(home)?.fuelShare ?? 1);
  const generator = hasGenerator(traitsOf[route.kind]) && !hasFixedBattery(traitsOf[route.kind]);
  const ratedWatts = own ?? (generator ? (route.power?.continuousWatts ?? null) : null);
  if (ratedWatts === null) return null;
  const chargerWatts = largestChargerWatts({
    ratedWatts,
    ratedVa: ratedWatts,
    share: LOAD_SHARE,
    otherWatts: 0,
    otherVa: 0,
    chargerPowerFactor: CHARGER_POWER_FACTOR,
  });
  return {
    code: 'charger-on-generator',
    ratedWatts,
    chargerWatts,
    powerFactor: CHARGER_POWER_FACTOR,
  };
}
