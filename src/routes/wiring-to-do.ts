import { isWired } from '../kinds/ask-traits';
import { traitsOf } from '../kinds/route-traits';
import type { Route } from './route';

/** Something is to be bought and wired to the house: what is there and works as it is needs no quote and no permit. */
export function hasWiringToDo({ kind, costUsd }: Route): boolean {
  return isWired(traitsOf[kind]) && costUsd.high > 0;
}
