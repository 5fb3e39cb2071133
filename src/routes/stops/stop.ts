import { type StopCode, stopKindOf } from './stop-codes';

/** Why a route cannot be used, with the figure it hangs on where it has one. The sentence is made where it is printed. */
export interface Stop {
  readonly code: StopCode;
  /** Room for panels on a roof that is too small, kW. */
  readonly roomKw?: number;
}

/** Nobody told it, so the route may be possible after all. */
export const isOpen = ({ code }: Stop): boolean => stopKindOf(code).open;

/** Nothing told stands against it; only answers are missing. */
export const onlyUnknown = (stops: readonly Stop[]): boolean =>
  stops.length > 0 && stops.every(isOpen);

/** What can never be otherwise in this home. */
export const isForGood = ({ code }: Stop): boolean => {
  const { open, opens } = stopKindOf(code);
  return !open && opens === null;
};

/**
 * Of what closes a route, what is worth saying: what can never be otherwise, one of these; else what was told; else what
 * nobody told. What is missing beside something that was told settles nothing.
 */
export function decisive(stops: readonly Stop[]): readonly Stop[] {
  const told = stops.filter((stop) => !isOpen(stop));
  const forGood = stops.filter(isForGood).slice(0, 1);
  return [forGood, told, stops].find((some) => some.length > 0) ?? [];
}
