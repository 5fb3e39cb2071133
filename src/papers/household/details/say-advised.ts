import type { Plan } from '../../../plan/plan';
import type { Words } from '../../../words/words';
import { bullets } from '../../markdown/bullets';
import { sayAboveTold, sayHighAbove } from '../say-above-told';
import { sayFuelForGoal } from '../say-fuel-for-goal';
import { sayHealthFirst } from '../say-health-first';
import { highEndLines } from './say-electrical';

/** The route advised: why, what it carries and how long, what it is made of, what it hangs on. */
export function sayAdvised(plan: Plan, words: Words): string[] {
  const say = words.household.advised;
  const { route, reason } = plan.advice;
  const { onceStored: stored } = plan.counts[route.kind];
  const listed = (title: string, items: readonly string[]) =>
    items.length > 0 ? [title, bullets(items)] : [];
  return [
    `## ${say.title(words.routeTitle(route.called), plan.lifeFirst?.told === true)}`,
    words.whyAdvised(reason),
    ...aboveToldLine(plan, words),
    ...firstBuyLine(plan, words),
    ...carriesLine(plan, words),
    words.howLong(route.lasting),
    ...(stored === null ? [] : [words.howLong(stored.route.lasting)]),
    ...sayHealthFirst(plan, words),
    ...(route.fuel === null ? [] : [say.burns(route.fuel.perDay, route.fuel.fuel)]),
    ...sayFuelForGoal(plan, words),
    say.whenTheGridFails(route.transferTime),
    ...highEndLines(plan, words),
    ...listed(
      say.madeOf,
      route.parts.map((part) => say.part(words.part(part.called), part.costUsd)),
    ),
    ...listed(say.besideIt, plan.addOns.map(say.addOn)),
    ...listed(say.worksIf, route.ifs.map(words.routeIf)),
    ...listed(say.goodToKnow, route.notes.map(words.routeNote)),
  ];
}

/** The budget the first page names stands here too. */
function aboveToldLine(plan: Plan, words: Words): string[] {
  const above = sayAboveTold(plan, words);
  const high = sayHighAbove(plan, words);
  if (above === '' && high === '') return [];
  return [`${words.household.advised.costs(plan.advice.route.costUsd, above)}${high}`];
}

/** So does what comes first, and what waits. */
const firstBuyLine = ({ advice: { firstBuy } }: Plan, words: Words): string[] =>
  firstBuy === null ? [] : [words.firstBuy(firstBuy).trim()];

/** The count is that of every paper: what a way of living makes needless stands apart, and is not missed. */
function carriesLine({ advice: { carried }, home }: Plan, words: Words): string[] {
  if (carried === null) return [];
  return [
    words.household.advised.carries({
      count: carried.count,
      must: words.loadNames(home, carried.must),
      needless: words.loadNames(home, carried.needless),
      more: words.loadNames(home, carried.more),
    }),
  ];
}
