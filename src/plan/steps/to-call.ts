import { gasHere } from '../../home/heat/gas-here';
import type { Home } from '../../home/home';
import { hasFixedBattery } from '../../kinds/ask-traits';
import { traitsOf } from '../../kinds/route-traits';
import type { Route } from '../../routes/route';

/** Whom to call before anything of the route advised is connected; the electrician stands in `electricianFor`. */
export interface ToCall {
  readonly permitOffice: boolean;
  readonly gasFitter: boolean;
  readonly powerCompany: boolean;
}

export function toCall(home: Home, route: Route): ToCall {
  return {
    permitOffice: route.parts.some((part) => part.equipmentClass === 'permit'),
    gasFitter: isGasFitters(route, home),
    powerCompany: hasFixedBattery(traitsOf[route.kind]),
  };
}

/** Piped gas and the house tank are a gas fitter's; cans and cylinders are not. */
function isGasFitters({ fuel }: Route, { facts }: Home): boolean {
  if (fuel === null) return false;
  return fuel.atHand === null || (fuel.fuel === 'propane' && gasHere(facts) === 'tank');
}
