import type { Rule } from '../rule';
import { engineVehicle } from '../when/engine-vehicle';
import { firstOf } from '../when/first-of';
import { portableGenerator } from '../when/portable-generator';

/** 20 ft from every opening for a portable generator or an engine vehicle. Fixed generators: fixed-engine-exhaust. */
export const coDistance: Rule = {
  id: 'co-distance',
  applies: (home, routes) => firstOf(portableGenerator(home, routes), engineVehicle(home, routes)),
};
