import type { RouteKind } from '../kinds/route-kind';
import type { Route } from '../routes/route';
import { practice } from '../tables/practice-figures';
import { shareOfJob } from './beside';
import type { Change } from './change';
import type { Effect } from './effect-of-answers';
import type { Trial } from './trial';

/** Why a question is asked now: a code and its figures. Its sentence is made where it is printed. */
export type WhyNow =
  /** Part of the opening: without it there is no first plan. */
  | { readonly code: 'opening' }
  /** The words of what was just told are copied while they are at hand. */
  | { readonly code: 'in-its-words' }
  /** It was "not sure", and nothing can be advised without it: asked once more before the end. */
  | { readonly code: 'asked-again' }
  /** An answer could forbid these routes, which are on the table. */
  | { readonly code: 'could-forbid'; readonly routes: readonly RouteKind[] }
  /** The hour at which somebody who lives by a device has to leave is made of it. */
  | { readonly code: 'when-to-leave' }
  /** What is there already can hurt, and brings cautions of its own. */
  | { readonly code: 'may-hurt-here' }
  /** What a battery that is there can do hangs on it and on others together. */
  | { readonly code: 'what-is-owned' }
  /** Decides whether this route, closed so far, is possible; `usd`: how far the price moves, 0 where that is no weight. */
  | {
      readonly code: 'opens-route';
      readonly route: RouteKind;
      readonly job: JobThen;
      readonly usd: number;
    }
  /** Decides whether the route advised so far stays possible. */
  | {
      readonly code: 'closes-route';
      readonly route: RouteKind;
      readonly job: JobThen;
      readonly usd: number;
    }
  /** Decides between two routes that are both possible. */
  | {
      readonly code: 'turns-route';
      readonly from: RouteKind;
      readonly to: RouteKind;
      readonly job: JobThen;
      readonly usd: number;
    }
  /** The route stays; its likely price moves between these, $. */
  | { readonly code: 'moves-price'; readonly lowUsd: number; readonly highUsd: number }
  /** The route and its price stay; how long it lasts moves between these, h. Null: without an end. */
  | { readonly code: 'moves-hours'; readonly low: number; readonly high: number | null }
  /** A route laid beside could turn out to be impossible. */
  | { readonly code: 'closes-beside'; readonly routes: readonly RouteKind[] }
  /** More or less of the job is done. */
  | { readonly code: 'moves-share'; readonly low: number; readonly high: number };

/**
 * What the other route does of the job, against the one advised now: all of it, more, less, or about as much; or it does not, and for
 * more money something does the whole job that nothing does now.
 */
export type JobThen = 'whole' | 'whole-for-more' | 'more' | 'less' | 'same';

/** Prices that differ by less are told alike, $. */
const SAME_USD = 50;

/**
 * The largest of what an effect does, in the order of the measure: route, price, hours, the rest.
 * @param route what is advised now by the weighing of the effect
 */
export function whyNow(now: Trial, { tried }: Effect, route: Route = now.advice.route): WhyNow {
  const usd = route.costUsd.value;
  const [turn] = tried
    .filter(({ change }) => change.route)
    .sort((a, b) => b.share * b.change.weight - a.share * a.change.weight);
  if (turn !== undefined) {
    const { to, usd: thenUsd, closes } = turn.change;
    const job = jobThen(shareOfJob(now.home, route), turn.change);
    const moved = apartUsd(usd, thenUsd);
    const closed = (kind: RouteKind) =>
      now.routes.some((one) => one.kind === kind && one.verdict === 'cannot');
    if (closed(to)) return { code: 'opens-route', route: to, job, usd: moved };
    if (closes.includes(route.kind))
      return { code: 'closes-route', route: route.kind, job, usd: moved };
    return { code: 'turns-route', from: route.kind, to, job, usd: moved };
  }
  const prices = [usd, ...tried.map(({ change }) => change.usd)];
  const [lowUsd, highUsd] = [Math.min(...prices), Math.max(...prices)];
  if (highUsd - lowUsd >= SAME_USD) return { code: 'moves-price', lowUsd, highUsd };
  const all = [route.lasting.hours?.value ?? null, ...tried.map(({ change }) => change.hours)];
  const hours = all.map((one) => one ?? Infinity);
  const [low, high] = [Math.min(...hours), Math.max(...hours)];
  if (high - low >= 1) return { code: 'moves-hours', low, high: high === Infinity ? null : high };
  const routes = [...new Set(tried.flatMap(({ change }) => change.closes))];
  if (routes.length > 0) return { code: 'closes-beside', routes };
  const shares = tried.map(({ change }) => change.share);
  return { code: 'moves-share', low: Math.min(...shares), high: Math.max(...shares) };
}

/** A share of the job this near to all of it, or to another share, is no difference. Our judgement. */
const ALIKE_SHARE = 0.05;
const WHOLE_SHARE = 0.995;

function jobThen(share: number, { share: then, opensWhole }: Change): JobThen {
  if (then >= WHOLE_SHARE && share < WHOLE_SHARE) return 'whole';
  if (opensWhole) return 'whole-for-more';
  if (Math.abs(then - share) <= ALIKE_SHARE) return 'same';
  return then > share ? 'more' : 'less';
}

/** How far prices are apart, where that is another choice of money; else 0: a kind of route is not weighed by a few dollars. */
function apartUsd(usd: number, then: number): number {
  const apart = Math.abs(then - usd);
  return apart < practice('price-apart-share') * Math.max(usd, then) ? 0 : apart;
}
