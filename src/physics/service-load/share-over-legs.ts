/** 120 V loads on the two legs. */
export interface OnLegs<T> {
  readonly legA: readonly T[];
  readonly legB: readonly T[];
}

/** 120 V loads shared over both legs as evenly as an electrician would: the largest first, each to the leg with less. */
export function shareOverLegs<T extends { readonly amps: number }>(loads: readonly T[]): OnLegs<T> {
  const legs = { legA: [] as T[], legB: [] as T[] };
  const on = (leg: readonly T[]) => leg.reduce((sum, load) => sum + load.amps, 0);
  for (const load of [...loads].sort((a, b) => b.amps - a.amps)) {
    (on(legs.legA) <= on(legs.legB) ? legs.legA : legs.legB).push(load);
  }
  return legs;
}
