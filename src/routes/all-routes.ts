import type { Widths } from '../home/answer-figure';
import type { Home } from '../home/home';
import type { World } from '../home/world';
import { type RouteKind, routeKinds } from '../kinds/route-kind';
import { batteryGenerator } from './kinds/battery-generator';
import { batteryCircuits, batterySolar, batteryWhole } from './kinds/fixed-battery';
import { ownBatteryRoute } from './kinds/own-battery';
import { generatorCords, generatorInlet } from './kinds/portable-generator';
import { powerPack } from './kinds/power-pack';
import { preparation } from './kinds/preparation';
import { singleBattery } from './kinds/single-battery';
import { standbyGenerator } from './kinds/standby-generator';
import { vehicle } from './kinds/vehicle';
import { cannot } from './make-route';
import { withAllLeftOut } from './must-carried';
import { loadsOf } from './pick-loads';
import type { Route } from './route';
import { notKnown } from './stop';

/** Sizes and prices one kind for a home; null where the home has nothing of the kind. */
type Sizer = (home: Home, world: World, widths: Widths) => Route | null;

/** How each kind is sized: a kind without a row here does not compile, and so is in every plan. */
const sizers: Readonly<Record<RouteKind, Sizer>> = {
  preparation,
  'own-battery': ownBatteryRoute,
  'single-battery': singleBattery,
  'power-pack': powerPack,
  'engine-cords': (home, _, widths) => generatorCords(home, widths),
  'engine-inlet': (home, _, widths) => generatorInlet(home, widths),
  'standby-engine': (home, _, widths) => standbyGenerator(home, widths),
  'battery-circuits': batteryCircuits,
  'battery-whole': batteryWhole,
  'battery-solar': batterySolar,
  'battery-engine': batteryGenerator,
  vehicle: (home, _, widths) => vehicle(home, widths),
};

/** Every route, sized for this home, plainest first; those that cannot work here say why. */
export function allRoutes(home: Home, world: World, widths: Widths): Route[] {
  const nothing = loadsOf(home, ['must']).length === 0;
  return routeKinds.flatMap((kind) => {
    const route = sizers[kind](home, world, widths);
    if (route === null) return [];
    if (route.kind !== kind) throw new Error(`the sizer of ${kind} makes a route ${route.kind}`);
    if (kind === 'preparation') return [route];
    return [nothing ? forNothing(home, route) : withAllLeftOut(home, route)];
  });
}

/** Without a load that must run there is nothing to size a source for. */
function forNothing({ facts }: Home, route: Route): Route {
  const stop = facts.told('must-run')
    ? 'nothing was named that must keep running, so there is nothing to size it for'
    : notKnown('we do not know yet what must keep running');
  return cannot(route.kind, route.title, [stop]);
}
