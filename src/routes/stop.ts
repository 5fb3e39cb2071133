/** Why a route cannot be used: a fact of this home, or (`open`) something nobody has told yet. */
export interface Stop {
  readonly says: string;
  /** Not known, so it may be possible after all: find out, and it is settled. */
  readonly open: boolean;
}

/** Not told: the careful branch closes the route until it is known. */
export const notKnown = (says: string): Stop => ({ says, open: true });

/** A plain sentence is a fact of this home. */
export const asStop = (stop: Stop | string): Stop =>
  typeof stop === 'string' ? { says: stop, open: false } : stop;

/** Nothing told stands against it; only answers are missing. */
export const onlyUnknown = (stops: readonly Stop[]): boolean =>
  stops.length > 0 && stops.every((stop) => stop.open);
