/** Which loads are to ride through: what must keep running, with good-to-have, or everything. */
export type Scope = 'must' | 'good' | 'all';
export const SCOPES: readonly Scope[] = ['must', 'good', 'all'];

/** Share of outages of one length that are ridden through from a full store. */
export interface Odds {
  readonly hours: number;
  /** Of outages that start in the goal's hardest season, 0 to 1. */
  readonly season: number;
  /** Of outages that start at any hour of the year. */
  readonly year: number;
  /** By month of the start, January first; null where none starts. */
  readonly months: readonly (number | null)[];
  /** Standard error of `season` where it comes from a sample; null where every start was counted, or all went alike. */
  readonly standardError: number | null;
}

/** How much of what must keep running the odds speak of. */
export interface MustCarried {
  readonly things: number;
  readonly of: number;
}
