import type { Widths } from '../home/answer-figure';
import type { Home } from '../home/home';
import type { World } from '../home/world';
import { batteryEngine } from './kinds/battery-engine';
import { batteryCircuits, batterySolar, batteryWhole } from './kinds/fixed-battery';
import { ownBatteryRoute } from './kinds/own-battery';
import { engineCords, engineInlet } from './kinds/portable-engine';
import { powerPack } from './kinds/power-pack';
import { preparation } from './kinds/preparation';
import { singleBattery } from './kinds/single-battery';
import { standbyEngine } from './kinds/standby-engine';
import { vehicle } from './kinds/vehicle';
import { cannot } from './make-route';
import { withAllLeftOut } from './must-carried';
import { loadsOf } from './pick-loads';
import type { Route } from './route';
import { notKnown } from './stop';

/** Every route, sized for this home, plainest first; those that cannot work here say why. */
export function allRoutes(home: Home, world: World, widths: Widths): Route[] {
  const own = ownBatteryRoute(home, world);
  const sized = [
    ...(own === null ? [] : [own]),
    singleBattery(home),
    powerPack(home),
    engineCords(home, widths),
    engineInlet(home, widths),
    standbyEngine(home, widths),
    batteryCircuits(home, world),
    batteryWhole(home, world),
    batterySolar(home, world),
    batteryEngine(home, world, widths),
    vehicle(home, widths),
  ];
  const nothing = loadsOf(home, ['must']).length === 0;
  return [
    preparation(),
    ...sized.map((route) => (nothing ? forNothing(home, route) : withAllLeftOut(home, route))),
  ];
}

/** Without a load that must run there is nothing to size a source for. */
function forNothing({ facts }: Home, route: Route): Route {
  const stop = facts.told('must-run')
    ? 'nothing was named that must keep running, so there is nothing to size it for'
    : notKnown('we do not know yet what must keep running');
  return cannot(route.kind, route.title, [stop]);
}
