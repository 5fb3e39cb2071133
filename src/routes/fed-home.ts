import type { Home } from '../home/home';
import { onThermostat } from '../home/measures/lived-home';
import { hasFixedBattery } from '../kinds/ask-traits';
import type { RouteKind } from '../kinds/route-kind';
import { traitsOf } from '../kinds/route-traits';

/**
 * The home as a kind of route feeds it. A pack rests between turns; a battery fixed to the house is on all day anyway, and turns
 * would only move the use of cold food out of the sun.
 */
export const fedHome = (kind: RouteKind, home: Home): Home =>
  hasFixedBattery(traitsOf[kind]) ? onThermostat(home) : home;
