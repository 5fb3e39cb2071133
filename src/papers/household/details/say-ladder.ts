import { readingOf } from '../../../plan/ladder/ladder-reading';
import type { Plan } from '../../../plan/plan';
import type { Words } from '../../../words/words';
import { bullets } from '../../markdown/bullets';

/** What goes off at which level, and the order in which motors are switched on. */
export function sayLadder(plan: Plan, words: Words): string[] {
  const say = words.household.ladder;
  const byTank = readingOf(plan, 100).of === 'tank';
  return [
    `## ${say.title}`,
    ...(byTank ? [say.readTank] : []),
    bullets(plan.ladder.map((step) => line(plan, step, words))),
    ...startOrder(plan, words),
  ];
}

function line(plan: Plan, step: Plan['ladder'][number], words: Words): string {
  const say = words.household.ladder;
  const names = step.switchOff.map((id) => {
    const name = words.loadName(plan.home, id);
    return id === 'house-standby' ? say.pullPlugs(name) : name;
  });
  const what = names.length > 0 ? names.join(', ') : say.nothingMore;
  const at =
    step.atPercent === 100 ? say.fromTheStart : say.reading(readingOf(plan, step.atPercent));
  const why = say.why(step.why, (id) => words.loadName(plan.home, id));
  const less = step.lessens.map((id) => words.loadName(plan.home, id));
  const does = less.length > 0 ? say.thriftily(at, names, less, why) : say.switchOff(at, what, why);
  return `${does}${say.buys(step)}`;
}

/** The order in which motors are switched on with the route advised; empty with fewer than two. */
function startOrder({ electrical, advice, home }: Plan, words: Words): string[] {
  const say = words.household.ladder;
  const start = electrical.starting.find((one) => one.route === advice.route.kind);
  if (start === undefined || start.order.length < 2) return [];
  const pairs = start.keepApart.map((pair) => words.loadNames(home, pair));
  const apart = pairs.length > 0 ? say.neverTogether(pairs) : '';
  return [`${say.startOrder(words.loadNames(home, start.order))}${apart}`];
}
