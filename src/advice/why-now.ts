import type { RouteKind } from '../kinds/route-kind';
import type { Effect } from './effect-of-answers';
import type { Trial } from './trial';

/** Why a question is asked now: a code and its figures. Its sentence is made where it is printed. */
export type WhyNow =
  /** Part of the opening: without it there is no first plan. */
  | { readonly code: 'opening' }
  /** The words of what was just told are copied while they are at hand. */
  | { readonly code: 'in-its-words' }
  /** An answer could forbid these routes, which are on the table. */
  | { readonly code: 'could-forbid'; readonly routes: readonly RouteKind[] }
  /** The hour at which somebody who lives by a device has to leave is made of it. */
  | { readonly code: 'when-to-leave' }
  /** Decides whether this route, closed so far, is possible; `usd`: how far the price moves. */
  | { readonly code: 'opens-route'; readonly route: RouteKind; readonly usd: number }
  /** Decides whether the route advised so far stays possible. */
  | { readonly code: 'closes-route'; readonly route: RouteKind; readonly usd: number }
  /** Decides between two routes that are both possible. */
  | {
      readonly code: 'turns-route';
      readonly from: RouteKind;
      readonly to: RouteKind;
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

/** Prices that differ by less are told alike, $. */
const SAME_USD = 50;

/** The largest of what an effect does, in the order of the measure: route, price, hours, the rest. */
export function whyNow(now: Trial, { tried }: Effect): WhyNow {
  const { route } = now.advice;
  const usd = route.costUsd.value;
  const [turn] = tried
    .filter(({ change }) => change.route)
    .sort((a, b) => b.share * b.change.weight - a.share * a.change.weight);
  if (turn !== undefined) {
    const { to, usd: thenUsd, closes } = turn.change;
    const moved = Math.abs(thenUsd - usd);
    const closed = (kind: RouteKind) =>
      now.routes.some((one) => one.kind === kind && one.verdict === 'cannot');
    if (closed(to)) return { code: 'opens-route', route: to, usd: moved };
    if (closes.includes(route.kind)) return { code: 'closes-route', route: route.kind, usd: moved };
    return { code: 'turns-route', from: route.kind, to, usd: moved };
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
