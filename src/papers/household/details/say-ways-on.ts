import { comfortLost } from '../../../plan/ladder/comfort-lost';
import type { Plan } from '../../../plan/plan';
import type { Words } from '../../../words/words';
import { bullets } from '../../markdown/bullets';

/** More money, a shorter goal, less carried, one room: what each would do. Empty where something within the money does the job. */
export function sayWaysOn(plan: Plan, words: Words): string[] {
  const { waysOn } = plan.advice;
  if (waysOn === null) return [];
  const say = words.household.waysOn;
  return [
    `## ${say.title}`,
    say.intro(plan.rideThrough.goalHours, waysOn.oneRoom),
    bullets([
      say.moreMoney(waysOn.moreMoney),
      ...(waysOn.littleMore === null ? [] : [say.littleMore(waysOn.littleMore)]),
      say.shorterGoal(waysOn.shorterGoal),
      say.lessCarried(waysOn.lessCarried, lessOf(plan, words)),
      ...(waysOn.oneRoom === null ? [] : [say.oneRoom(waysOn.oneRoom, plan.rideThrough.goalHours)]),
      ...(waysOn.timetable === null ? [] : [say.timetable(waysOn.timetable)]),
    ]),
  ];
}

/** In one line for the first page. */
export function waysOnLine(plan: Plan, words: Words): string[] {
  const { waysOn } = plan.advice;
  return waysOn === null ? [] : [words.household.waysOn.onFrontPage(waysOn, lessOf(plan, words))];
}

/** What would be done without, and whether the home is then cold or hot where that harms. */
function lessOf({ advice, home }: Plan, words: Words) {
  const less = advice.waysOn?.lessCarried ?? null;
  if (less === null) return { names: [], heat: false, cool: false };
  const without: readonly string[] = less.without;
  const lost = comfortLost(home, less.line.route!);
  return {
    names: home.loads
      .filter(({ id }) => without.includes(id))
      .map(({ called }) => words.called(called)),
    heat: lost.heat.some((id) => without.includes(id)),
    cool: lost.cool.some((id) => without.includes(id)),
  };
}
