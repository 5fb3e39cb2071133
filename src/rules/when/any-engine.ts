import type { Home } from '../../home/home';
import type { Routes, Trigger } from '../rule';
import { engineVehicle } from './engine-vehicle';
import { firstOf } from './first-of';
import { portableEngine } from './portable-engine';
import { standbyEngine } from './standby-engine';

/** Any engine, portable, fixed or in a vehicle. Not known: careful. */
export function anyEngine(home: Home, routes: Routes): Trigger | null {
  return firstOf(
    portableEngine(home, routes),
    standbyEngine(home, routes),
    engineVehicle(home, routes),
  );
}
