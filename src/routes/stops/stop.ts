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
