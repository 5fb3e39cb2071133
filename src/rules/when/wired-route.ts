import { isWired } from '../../kinds/ask-traits';
import type { Routes, Trigger } from '../rule';
import { routeWith } from './route-with';

/** A route wired to the house is under discussion. */
export function wiredRoute(routes: Routes): Trigger | null {
  return routeWith(routes, isWired, 'route-wired-house-plan');
}
