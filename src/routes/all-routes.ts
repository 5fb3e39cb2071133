import type { Widths } from '../home/answer-figure';
import type { Home } from '../home/home';
import type { World } from '../home/world';
import { batteryEngine } from './kinds/battery-engine';
import { batteryCircuits, batterySolar, batteryWhole } from './kinds/fixed-battery';
import { engineCords, engineInlet } from './kinds/portable-engine';
import { powerPack } from './kinds/power-pack';
import { preparation } from './kinds/preparation';
import { singleBattery } from './kinds/single-battery';
import { standbyEngine } from './kinds/standby-engine';
import { vehicle } from './kinds/vehicle';
import type { Route } from './route';

/** Every route, sized for this home, plainest first; those that cannot work here say why. */
export function allRoutes(home: Home, world: World, widths: Widths): Route[] {
  return [
    preparation(),
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
}
