import type { Line } from '../../advice/list/line';
import type { Dearer } from '../../advice/list/neighbors';
import type { Home } from '../../home/home';
import type { Plan } from '../../plan/plan';
import { byWhen } from '../../plan/steps/by-when';
import type { NextStep, StepId } from '../../plan/steps/next-step';
import type { Route } from '../../routes/route';
import { sayRule } from '../../words/rule-sentences';
import type { Words } from '../../words/words';
import { section } from '../document/block';
import { waysOnLine } from '../household/details/say-ways-on';
import { comfort } from '../household/front/comfort';
import { sayThriftily } from '../household/front/say-thriftily';
import { lasting, notCarried, purchase } from '../household/front/what-it-does';
import { putRightBefore } from './cautions-on-sheets';
import { dangerBlocks } from './danger-blocks';
import { draftMark } from './draft-mark';
import type { Sheet } from './sheet';

const FIND_OUT = 3;

/** The sheet for the household itself: the job, the purchase, what it brings and does not, and who does what next. */
export function familySheet(plan: Plan, words: Words): Sheet {
  const its = words.sheets.family;
  const draft = words.sheets.shared.draftLine(
    plan.draftBecause.map(words.draftReasonShort).join('; '),
  );
  return {
    id: 'family',
    title: its.title,
    purpose: `${its.purpose} ${words.sheets.shared.asOf(plan.asOf)} ${words.sheets.shared.notADesign}`,
    blocks: [
      ...dangerBlocks(plan, words),
      ...draftMark(plan, draft),
      { kind: 'bullets', items: decided(plan, words) },
      ...section(its.putRight, {
        kind: 'bullets',
        items: putRightBefore(plan, words).map((one) => sayRule(words.rules, one)),
      }),
      ...section(its.steps, { kind: 'boxes', items: steps(plan, words) }),
      ...section(its.findOut, {
        kind: 'bullets',
        items: plan.toFindOut.slice(0, FIND_OUT).map(({ says }) => says),
      }),
    ],
  };
}

/** The job, what is bought for it, what that brings and does not, and why; the odds stand in the details. */
function decided(plan: Plan, words: Words): string[] {
  const say = words.household.frontPage;
  const { lifeFirst, advice } = plan;
  return [
    say.job(words.job(plan.job, plan.home)[0]!),
    ...(lifeFirst?.told ? [say.beforeBuying(words.lifeFirst(lifeFirst))] : []),
    ...comfort(plan, words),
    purchase(plan, words),
    notCarried(plan, words),
    lasting(plan, words),
    ...sayThriftily(plan, words),
    words.sheets.family.why(words.whyAdvised(advice.reason)),
    ...neighbors(plan, words),
    ...words.grownOld(plan.grownOld),
    ...(lifeFirst?.told ? [] : waysOnLine(plan, words)),
    ...leaveWithDevice(plan, words),
  ];
}

/** The next cheaper and the next dearer of what nothing beats, a line each; without such a list, the two laid beside. */
function neighbors({ advice, home }: Plan, words: Words): string[] {
  const its = words.sheets.family;
  if (advice.neighbors === null)
    return advice.beside.slice(0, 2).map((one) => its.beside(besideIt(one, advice, words)));
  const { cheaper, dearer } = advice.neighbors;
  const own = advice.list[advice.advised ?? -1]?.missed ?? [];
  const inShort = (line: Line, lessCareful: Dearer['lessCareful'] = null) =>
    words.household.dollarsBuy.inShort(line, words.loadNames(home, more(line)), lessCareful);
  // What the one advised leaves out as well is said of that one.
  const more = ({ missed }: Line) => missed.filter((id) => !own.includes(id));
  return [
    ...(cheaper === null ? [] : [its.cheaper(inShort(cheaper))]),
    ...(dearer === null
      ? []
      : [
          its.dearer(dearer.gain, inShort(dearer.line, dearer.lessCareful)) +
            above(dearer.line.usd, advice, words),
        ]),
  ];
}

/** By how much a price is above the money told; empty where it is not, or nothing was told. */
function above(usd: number, { reason }: Pick<Plan['advice'], 'reason'>, words: Words): string {
  const { budgetUsd } = reason;
  if (budgetUsd === null || !isAbove(usd, { reason })) return '';
  return words.sheets.family.above(words.quantity(Math.round(usd - budgetUsd), '$'));
}

const isAbove = (usd: number, { reason: { budgetUsd } }: Pick<Plan['advice'], 'reason'>) =>
  budgetUsd !== null && usd > budgetUsd;

/** What is to find out stands in a part of its own. */
function steps({ nextSteps, home }: Plan, words: Words): string[] {
  return nextSteps
    .filter(({ id }) => id !== 'find-out')
    .map((step) => words.sheets.family.step(short(step, home, words), step.who, byWhen[step.id]));
}

/** When a device decides the hour; the rest on when to leave stands on the sheet for the night. */
const leaveWithDevice = ({ leavingPoint }: Plan, words: Words): string[] =>
  leavingPoint.filter(({ code }) => code === 'device').map(words.sheets.nightLeaving);

/** What the second sentence of a step says is a caution, or what to look at: it is never left out. */
const whole: readonly StepId[] = ['settle', 'on-the-lists', 'rehearse'];

/** A step in the words of this sheet; of others the first sentence is the step. */
function short(step: NextStep, home: Home, words: Words): string {
  const own = words.sheets.family.shortSteps[step.id];
  if (own !== undefined) return own;
  const what = words.step(step, home);
  return whole.includes(step.id) ? what : words.firstSentence(what);
}

function besideIt(route: Route, advice: Plan['advice'], words: Words): string {
  const its = words.sheets.family;
  const { hours } = route.lasting;
  const lasts =
    route.carries.length === 0
      ? its.otherNone
      : hours === null
        ? its.otherGas
        : its.otherHours(words.quantity(Math.round(hours.value), 'h'));
  const price = words.quantity(route.costUsd.value, '$');
  const above = isAbove(route.costUsd.value, advice);
  return its.other(words.routeTitle(route.called), price, above, lasts);
}
