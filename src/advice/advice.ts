import type { Route } from '../routes/route';
import type { Carried } from './carried';
import type { FirstBuy } from './first-buy';
import type { Line } from './list/line';
import type { Neighbors } from './list/neighbors';
import type { Reason } from './reason';
import type { WaysOn } from './ways-on/ways-on';

export interface Advice {
  /** The route advised. */
  readonly route: Route;
  readonly reason: Reason;
  /** What it does for what must keep running; null: it gives no power. */
  readonly carried: Carried | null;
  /** Up to two others to lay beside it. */
  readonly beside: readonly Route[];
  /** The cheapest that would do the whole job, when the advised one does not. */
  readonly wholeJob: Route | null;
  /** What each dollar buys: the routes and sizes that nothing beats, from $0 up; empty while too little is told. */
  readonly list: readonly Line[];
  /** The list goes by the careful count: health hangs on power, or nobody knows. */
  readonly careful: boolean;
  /** Place of the advised route on the list; null: getting ready, without a source. */
  readonly advised: number | null;
  /** Where nothing within the money reaches the goal: what would. */
  readonly waysOn: WaysOn | null;
  /** Where it costs more than there is now: what comes first and what waits. */
  readonly firstBuy: FirstBuy | null;
  /** The lines of the list beside it, cheaper and dearer; null where there are none, or no source is advised. */
  readonly neighbors: Neighbors | null;
}
