import type { Home } from '../home/home';
import type { RouteKind } from '../kinds/route-kind';
import { batteryStepsKwh, powerSteps } from '../tables/generic-steps';
import { part, total } from './costs';
import { standbyGeneratorPart } from './generator-part';
import { ownStandby } from './kinds/own-standby';
import { ownFixedBattery } from './own-battery';

/**
 * A price that no size of a kind is below, $: what costs more than something that cannot be bettered need not be sized. 0 for
 * the kinds that are quick to size.
 */
export function leastUsd(home: Home, kind: RouteKind): number {
  const smallest = batteryStepsKwh()[0]!;
  switch (kind) {
    case 'battery-circuits':
      return total([part('battery', smallest), part('backup-subpanel')]).value;
    case 'battery-whole':
      return total([part('battery', smallest), part('load-control')]).value;
    case 'battery-solar':
      return total([part('battery-with-solar', smallest), part('backup-subpanel')]).value;
    case 'battery-engine':
      return ownFixedBattery(home) === null
        ? total([part('battery', smallest), part('backup-subpanel')]).value
        : 0;
    case 'standby-engine':
      return ownStandby(home) === null
        ? total([standbyGeneratorPart(powerSteps('standby')[0]!.watts)]).value
        : 0;
    default:
      return 0;
  }
}
