import { isSource, outletsOnly } from '../../../kinds/ask-traits';
import { traitsOf } from '../../../kinds/route-traits';
import { isWired } from '../../../plan/electrical/route-traits';
import type { Plan } from '../../../plan/plan';
import { isCountedOn } from '../../../plan/steps/add-ons';
import { thriftCostUsd } from '../../../plan/thrift-cost';
import type { Words } from '../../../words/words';
import { sayAboveTold, sayHighAbove } from '../say-above-told';
import { sayDevicesAlone } from '../say-health-first';
import { sayBothWays } from './say-thriftily';

/** What to buy; where life hangs on a device, only beside what comes before. */
export function buy(plan: Plan, words: Words): string {
  const { addOns, lifeFirst } = plan;
  const beside = lifeFirst?.told ? [] : addOns.filter((one) => !isCountedOn(one));
  return purchase(plan, words, beside.length > 0 ? words.household.frontPage.addOns(beside) : '');
}

/** The same without what is worth having beside it. */
export function purchase(plan: Plan, words: Words, also = ''): string {
  const { advice, lifeFirst } = plan;
  const { route } = advice;
  const say = words.household.frontPage;
  const told = lifeFirst?.told === true;
  if (route.parts.length > 0 && route.costUsd.high === 0 && !told)
    return say.buyNothing(route, also);
  return say.buy(route, {
    head: !told ? 'buy' : isSource(traitsOf[route.kind]) ? 'bridge' : 'beside',
    aboveTold: sayAboveTold(plan, words),
    installed: isWired(route),
    thriftUsd: thriftCostUsd(advice),
    roomUnits: plan.addOns.filter(isCountedOn),
    highAbove: sayHighAbove(plan, words),
    first: advice.firstBuy === null ? '' : words.firstBuy(advice.firstBuy),
    also,
  });
}

/** How long it lasts by both counts, and whether that is what was asked for. */
export function lasts(plan: Plan, words: Words): string {
  return lasting(plan, words, `${sayBothWays(plan, words)}${sayDevicesAlone(plan, words)}`);
}

/** The same in hours alone, and what else is said of it behind. */
export function lasting(plan: Plan, words: Words, more = ''): string {
  const say = words.household.frontPage;
  const { advice, home, counts } = plan;
  const { route } = advice;
  const { hours, reachesGoal } = route.lasting;
  const { onceStored: stored, missed } = counts[route.kind];
  const onlyPart = route.carries.length > 0 && missed.length > 0;
  if (hours === null || route.carries.length === 0)
    return say.howLong(words.howLong(route.lasting), onlyPart);
  const goalHours = home.goalHours.value;
  const careful = (stored?.route.lasting.hours ?? hours).low;
  return say.lasts({
    onlyPart,
    hours,
    justUnder: !reachesGoal && Math.round(hours.value) === Math.round(goalHours),
    fuelToday: route.fuel?.atHand ?? null,
    stored,
    goalHours,
    reached: stored?.route.lasting.reachesGoal || reachesGoal,
    enoughByOdds: advice.list[advice.advised ?? -1]?.reaches === true,
    carefulFallsShort: Math.round(careful) < goalHours,
    more,
  });
}

/** What must run and is not carried, and the cheapest route that does the whole job. */
export function notCarried({ advice, home, counts, lifeFirst }: Plan, words: Words): string {
  const { route, wholeJob, waysOn } = advice;
  const say = words.household.frontPage;
  const missed = words.loadNames(home, counts[route.kind].missed);
  if (route.carries.length === 0) return missed.length > 0 ? say.carriesNothing : say.needsNoPower;
  const reach = outletsOnly(traitsOf[route.kind]) ? say.outletsOnly : '';
  if (missed.length === 0) return say.carriesAll(reach);
  // The ways on name it too; and a bridge until somebody leaves is not the whole job.
  const named = waysOn?.moreMoney || lifeFirst?.told;
  const other = wholeJob === null || named ? '' : say.cheapestForAll(wholeJob);
  return say.doesNotCarry(missed, reach, other);
}
