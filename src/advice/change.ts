import { type RouteKind, routeKinds } from '../kinds/route-kind';
import type { Route } from '../routes/route';
import { shareOfJob } from './beside';
import type { Trial } from './trial';
import { doesWholeJob } from './whole-job';

/** The route a trial advises, and those laid beside it, by one way of weighing. */
export type Weighing = (trial: Trial) => {
  readonly route: Route;
  readonly beside: readonly Route[];
};

/** By one size of each route: quick enough for hundreds. */
export const quickly: Weighing = ({ advice }) => advice;

/** What another answer makes of the advice. */
export interface Change {
  /** The route advised is of another kind. */
  readonly route: boolean;
  readonly to: RouteKind;
  /** Price of what is then advised, $, likely. */
  readonly usd: number;
  /** Share of the job it then does, 0 to 1. */
  readonly share: number;
  /** Something then does the whole job, at whatever price, where nothing does now. */
  readonly opensWhole: boolean;
  /** Hours it then lasts, likely; null where no end is foreseen. */
  readonly hours: number | null;
  /** Of the routes advised or laid beside, those that can then not be used. */
  readonly closes: readonly RouteKind[];
  /** Every kind that is then closed where it was open, or open where it was closed. */
  readonly turned: readonly RouteKind[];
  /** Any figure of the plan differs, down to the energy of a day. */
  readonly sharpens: boolean;
  /** The one measure of all this; 0 where nothing changes. */
  readonly weight: number;
}

/** Added to both prices, so that a few dollars on a small sum weigh little, $. Our judgement. */
const SMALL_USD = 100;
/** Weight of a route beside that turns out to be impossible. Our judgement. */
const CLOSED_BESIDE = 0.25;

/**
 * The stated measure: 1 for another kind of route, the ratio of the two prices as a logarithm (at most 1), the
 * difference in the share of the job done, and a quarter for each route beside that is then closed.
 */
export function changeBetween(now: Trial, then: Trial, by: Weighing = quickly): Change {
  const [{ route: a, beside }, { route: b }] = [by(now), by(then)];
  const route = a.kind !== b.kind;
  const ratio = Math.log((b.costUsd.value + SMALL_USD) / (a.costUsd.value + SMALL_USD));
  const does = shareOfJob(then.home, b);
  const turned = turnedKinds(now, then);
  const closes = [a, ...beside].map(({ kind }) => kind).filter((kind) => turned.includes(kind));
  const moved = Math.min(1, Math.abs(ratio));
  const weight =
    Number(route) +
    moved +
    Math.abs(does - shareOfJob(now.home, a)) +
    CLOSED_BESIDE * closes.length;
  const hours = b.lasting.hours?.value ?? null;
  return {
    route,
    to: b.kind,
    usd: b.costUsd.value,
    share: does,
    opensWhole: anyDoesWhole(then) && !anyDoesWhole(now),
    hours,
    closes,
    turned,
    sharpens: by === quickly && sharpens(now, then),
    weight,
  };
}

const anyDoesWhole = ({ home, advice }: Trial): boolean =>
  advice.wholeJob !== null || doesWholeJob(home, advice.route);

/** Prices that differ by no more than this share of the larger are those of the same purchase. Our judgement. */
const SAME_PRICE = 0.1;

export const samePrice = (a: number, b: number) => Math.abs(a - b) <= SAME_PRICE * Math.max(a, b);

/** A route of the same kind at about the same price. */
export const samePurchase = (a: Route, b: Route): boolean =>
  a.kind === b.kind && samePrice(a.costUsd.value, b.costUsd.value);

function turnedKinds(now: Trial, then: Trial): RouteKind[] {
  if (now === then) return [];
  const open = (of: readonly Route[]) =>
    new Set(of.filter(({ verdict }) => verdict !== 'cannot').map(({ kind }) => kind));
  const [before, after] = [open(now.routes), open(then.routes)];
  return routeKinds.filter((kind) => before.has(kind) !== after.has(kind));
}

/** What must run, and how long the route lasts, in likely figures and in their ends. */
function sharpens(now: Trial, then: Trial): boolean {
  if (now === then) return false;
  const [a, b] = [now, then].map(({ home: { demand }, advice: { route } }) =>
    JSON.stringify(
      [
        demand.must.runningWatts,
        demand.must.startVa,
        demand.must.kwhPerDay,
        route.lasting.hours,
        route.costUsd,
      ],
      ends,
    ),
  );
  return a !== b;
}

/** Only numbers of a figure: where they come from is no part of it. */
function ends(key: string, value: unknown): unknown {
  return ['name', 'source', 'unit'].includes(key) ? undefined : value;
}
