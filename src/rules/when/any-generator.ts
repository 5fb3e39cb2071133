import type { Home } from '../../home/home';
import type { Routes, Trigger } from '../rule';
import { engineVehicle } from './engine-vehicle';
import { firstOf } from './first-of';
import { portableGenerator } from './portable-generator';
import { standbyGenerator } from './standby-generator';

/** Any generator, portable, fixed or in a vehicle. Not known: careful. */
export function anyGenerator(home: Home, routes: Routes): Trigger | null {
  return firstOf(
    portableGenerator(home, routes),
    standbyGenerator(home, routes),
    engineVehicle(home, routes),
  );
}
