import type { Rule } from '../rule';
import { engineVehicle } from '../when/engine-vehicle';
import { firstOf } from '../when/first-of';
import { portableEngine } from '../when/portable-engine';

/** 20 ft from every opening for a portable engine or an engine vehicle. Fixed engines: fixed-engine-exhaust. */
export const coDistance: Rule = {
  id: 'co-distance',
  applies: (home, routes) => firstOf(portableEngine(home, routes), engineVehicle(home, routes)),
};
