import type { Measure } from '../../../home/measures/measures-of';
import type { Plan } from '../../../plan/plan';
import type { RouteInWays } from '../../../plan/ways/route-in-ways';
import type { MeasureId } from '../../../tables/measures';
import type { Words } from '../../../words/words';
import { namedTurns } from '../details/say-ways';

/** Those that are said by the hours of their thing. */
const inTurns: readonly MeasureId[] = [
  'internet-hours',
  'phones-once',
  'fridge-turns',
  'freezer-turns',
  'hot-water-once',
];

/** The route advised in both ways, where thrift changes what must run. */
function ownInWays({ waysOfLiving, advice }: Plan) {
  const { routes, measures } = waysOfLiving;
  const taken = measures.filter((one) => one.use === 'thrifty' && one.saves.of === 'must');
  const own = routes.find((one) => one.kind === advice.route.kind);
  return own === undefined || taken.length === 0 ? null : { own, taken };
}

const byThrift = ({ usual, thrifty }: RouteInWays) => thrifty.reaches && !usual.reaches;

/**
 * What living thriftily means for what must run here: hours of what has no power from the route are nobody's, nor is it set lower. What
 * does without power altogether is said whatever the route gives.
 */
function meansOf(plan: Plan, taken: readonly Measure[], words: Words, own?: RouteInWays) {
  const { carries } = plan.advice.route;
  const must = new Set(plan.mustRun.map((load) => load.id).filter((id) => carries.includes(id)));
  return {
    measures: taken.filter(
      ({ id, ends, loads }) =>
        !inTurns.includes(id) && (ends.length > 0 || loads.some((load) => carries.includes(load))),
    ),
    turns: namedTurns(plan, words).filter(({ load }) => must.has(load)),
    rests: own?.restsThriftily ?? false,
  };
}

/** For the sheet of the night: what the hours of a route sized for thrift hang on; null for any other. */
export function thriftItHangsOn(plan: Plan, words: Words): string | null {
  const found = ownInWays(plan);
  if (found === null || plan.advice.route.way !== 'thrifty') return null;
  const means = words.household.ways.means(meansOf(plan, found.taken, words, found.own), 'until');
  return means === '' ? null : means;
}

/** Where living thriftily is what reaches the goal: a line that says so, and what it means by the hour. */
export function sayThriftily(plan: Plan, words: Words): string[] {
  const { route } = plan.advice;
  if (route.way === 'thrifty' && route.carries.length === 0) {
    const taken = plan.waysOfLiving.measures.filter(
      (one) => one.use === 'thrifty' && one.saves.of === 'must',
    );
    return [words.household.ways.thriftAlone(meansOf(plan, taken, words))];
  }
  const found = ownInWays(plan);
  if (found === null || !byThrift(found.own)) return [];
  const means = meansOf(plan, found.taken, words, found.own);
  const usdLikely = plan.waysOfLiving.thriftyUsd.value;
  const goal = Math.round(plan.home.goalHours.value);
  return [words.household.ways.reachesThriftily(found.own, goal, { ...means, usdLikely })];
}

/** Elsewhere a few words behind how long it lasts. */
export function sayBothWays(plan: Plan, words: Words): string {
  const found = ownInWays(plan);
  // Where life hangs on a device, how long that one is covered stands here instead; both ways are in the details.
  if (plan.lifeFirst?.told) return '';
  if (found === null || byThrift(found.own)) return '';
  const say = words.household.ways;
  return found.own.sizedFor === 'thrifty'
    ? say.countsOnThrift(found.own.usual, meansOf(plan, found.taken, words, found.own))
    : say.bothWays(found.own);
}
