import type { RouteKind } from '../kinds/route-kind';
import type { RouteTitle } from '../kinds/route-title';
import type { OtherEnough } from './list/other-enough';
import type { OneRoom } from './ways-on/ways-on';

/** Why a route is advised, in codes and figures; the sentence is made where it is read. */
export interface Reason {
  readonly code: ReasonCode;
  /** The money told, $; null: none was told, so none set a limit. */
  readonly budgetUsd: number | null;
  /** Of it, what could be added only over two years, $. */
  readonly laterUsd: number;
  /** Where the money buys no source: the cheapest there is, with its likely price. */
  readonly cheapest: {
    readonly kind: RouteKind;
    readonly called: RouteTitle;
    readonly usd: number;
  } | null;
  /** Where none is enough: what within the money does more, for a price that what it adds is not worth. */
  readonly tooDear: {
    readonly kind: RouteKind;
    readonly called: RouteTitle;
    /** It is of the kind of the one advised. */
    readonly larger: boolean;
    /** The likely price, and how far above that of the one advised, $. */
    readonly usd: number;
    readonly apartUsd: number;
  } | null;
  /** It stands for a battery for one job of the same price: with the rest unplugged it lasts as long. */
  readonly lessPluggedIn: boolean;
  /** It counts on living thriftily. */
  readonly thriftily: boolean;
  /** What one room in place of the whole home would need, where that does the whole job within the money; null elsewhere. */
  readonly oneRoom: Pick<OneRoom, 'heats' | 'cools'> | null;
  /** What else is enough: cheaper at the price of comfort or of fuel, or dearer and without thrift. */
  readonly others: readonly OtherEnough[];
}

export type ReasonCode =
  | 'too-little-told'
  | 'nothing-named' // nothing was named that must run
  | 'no-source-open'
  | 'no-source-in-budget'
  | 'none-worth-it' // what the money buys comes about as near as nothing at all
  | 'no-power-needed' // thriftily nothing is left that a source would have to carry
  | 'cheapest-enough' // of those that carry all that must run through the goal
  | 'cheapest-enough-but-off' // the same, but for what no backup carries
  | 'nearest-all' // none is enough: all that must run, for the most of the time
  | 'nearest-part';
