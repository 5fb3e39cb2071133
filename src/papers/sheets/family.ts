import type { Plan } from '../../plan/plan';
import type { Route } from '../../routes/route';
import { sayRule } from '../../words/rule-sentences';
import type { Words } from '../../words/words';
import { type Block, section } from '../document/block';
import { frontLines } from '../household/front/front-page';
import { putRightBefore } from './cautions-on-sheets';
import { dangerBlocks } from './danger-blocks';
import { draftMark } from './draft-mark';
import type { Sheet } from './sheet';

const FIND_OUT = 3;

/** The sheet for the household itself: the job, the purchase, what it brings and does not, and who does what next. */
export function familySheet(plan: Plan, words: Words): Sheet {
  const say = (text: string): Block => ({ sort: 'say', text });
  return {
    id: 'family',
    title: words.sheets.family.title,
    purpose: words.sheets.family.purpose,
    blocks: [
      ...dangerBlocks(plan, words),
      ...draftMark(
        plan,
        words.sheets.shared.draftLine(plan.draftBecause.map((why) => why.short).join('; ')),
      ),
      say(`${words.sheets.shared.asOf(plan.asOf)} ${words.sheets.shared.notADesign}`),
      { sort: 'bullets', items: [...frontLines(plan, words), ...beside(plan, words)] },
      ...section(words.sheets.family.putRight, {
        sort: 'bullets',
        items: putRightBefore(plan).map((one) => sayRule(words.rules, one)),
      }),
      ...section(words.sheets.family.steps, {
        sort: 'boxes',
        items: plan.nextSteps.map(
          (step) =>
            `${step.id === 'settle' ? step.what : words.firstSentence(step.what)} (${step.who})`,
        ),
      }),
      ...section(words.sheets.family.findOut, {
        sort: 'bullets',
        items: plan.toFindOut.slice(0, FIND_OUT).map((one) => `${one.says}: ${one.how}`),
      }),
    ],
  };
}

/** Why this one, and the two laid beside it. */
function beside({ advice }: Plan, words: Words): string[] {
  const its = words.sheets.family;
  return [
    its.why(words.whyAdvised(advice.reason)),
    ...advice.beside.slice(0, 2).map((one) => its.beside(other(one, words))),
  ];
}

function other(route: Route, words: Words): string {
  const { hours } = route.lasting;
  const lasting =
    route.carries.length === 0
      ? words.sheets.family.otherNone
      : hours === null
        ? words.sheets.family.otherGas
        : words.sheets.family.otherHours(words.quantity(Math.round(hours.value), 'h'));
  return words.sheets.family.other(route.title, words.quantity(route.costUsd.value, '$'), lasting);
}
