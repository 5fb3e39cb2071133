import type { Route } from './route';

/** A route at one of its sizes. What is slow to work out waits until the size is to be shown. */
export interface Sized {
  /** Everything but the hours it lasts, which may be left at zero here; whether it reaches the goal is told. */
  readonly route: Route;
  readonly whole: () => Route;
}

/** A kind as it is sized for a home, and all its sizes, smallest first. */
export interface SizedKind {
  readonly route: Route;
  /** Worked out when asked for; empty where it cannot be used. */
  readonly sizes: () => readonly Sized[];
}

/** A size that is whole already. */
export const whole = (route: Route): Sized => ({ route, whole: () => route });

/** A kind of one size. */
export const oneSize = (route: Route): SizedKind => ({
  route,
  sizes: () => (route.verdict === 'cannot' ? [] : [whole(route)]),
});
