import type { Home } from '../../home/home';
import type { RouteKind } from '../../home/route-kind';
import type { Trigger } from '../rule';
import { engineVehicle } from './engine-vehicle';
import { firstOf } from './first-of';
import { portableEngine } from './portable-engine';
import { standbyEngine } from './standby-engine';

/** Any engine, portable, fixed or in a vehicle. Not known: careful. */
export function anyEngine(home: Home, kinds: ReadonlySet<RouteKind>): Trigger | null {
  return firstOf(
    portableEngine(home, kinds),
    standbyEngine(home, kinds),
    engineVehicle(home, kinds),
  );
}
