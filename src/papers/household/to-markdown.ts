import type { Plan } from '../../plan/plan';
import type { Words } from '../../words/words';
import { titledList } from '../markdown/bullets';
import { sayAdvised } from './details/say-advised';
import { sayCautions } from './details/say-cautions';
import { sayDollarsBuy } from './details/say-dollars-buy';
import { electricalLines } from './details/say-electrical';
import { sayElectricianPoints } from './details/say-electrician-points';
import { sayLadder } from './details/say-ladder';
import { sayLoads } from './details/say-loads';
import { sayNextSteps } from './details/say-next-steps';
import { sayAssumptions, sayToFindOut, sayToSettle } from './details/say-open-answers';
import { sayPossibleIf } from './details/say-possible-if';
import { sayRideThrough } from './details/say-ride-through';
import { sayRoutes } from './details/say-routes';
import { saySureness } from './details/say-sureness';
import { sayWays } from './details/say-ways';
import { sayWaysOn } from './details/say-ways-on';
import { sayWhatIsThere } from './details/say-what-is-there';
import { frontPage } from './front/front-page';
import { thinPage } from './front/thin-page';
import { sayMoney } from './money/say-money';

/** The plain-language summary, for the household, as Markdown that needs nothing but a reader: one page, then the details. */
export function planMarkdown(plan: Plan, words: Words): string {
  if (plan.undecided.length > 0) return `${thinPage(plan, words).join('\n\n')}\n`;
  return joined([
    frontPage(plan, words),
    [`# ${words.household.headings.details}`],
    ...detailSections(plan, words),
  ]);
}

/** The details alone, for a page that has its own sheets before them. */
export function detailsMarkdown(plan: Plan, words: Words): string {
  return plan.undecided.length > 0
    ? planMarkdown(plan, words)
    : joined(detailSections(plan, words));
}

function detailSections(plan: Plan, words: Words): string[][] {
  const say = words.household.headings;
  return [
    draftLines(plan, words),
    sayToSettle(plan, words),
    plan.lifeFirst?.told
      ? titledList(`## ${say.beforeBuying}`, words.lifeFirst(plan.lifeFirst))
      : [],
    [`## ${say.job}`, ...words.job(plan.job, plan.home)],
    sayLoads(plan, words),
    sayWhatIsThere(plan, words),
    sayWays(plan, words),
    sayDollarsBuy(plan, words),
    sayWaysOn(plan, words),
    sayRoutes(plan, words),
    sayPossibleIf(plan, words),
    sayAdvised(plan, words),
    sayRideThrough(plan.rideThrough, words),
    sayMoney(plan, plan.advice.route.kind, words),
    titledList(
      `## ${say.willNotDo}`,
      plan.willNotDo.map((one) =>
        one.code === 'not-so-long' ? say.notSoLong : words.willNotDo(one, plan.home),
      ),
      say.nothingLeftOut,
    ),
    sayCautions(plan, words),
    titledList(`## ${say.leaving}`, words.leavings(plan.leavingPoint)),
    sayElectricianPoints(plan, words),
    titledList(`## ${say.electricalFigures}`, electricalLines(plan, words)),
    sayLadder(plan, words),
    sayToFindOut(plan, words),
    sayAssumptions(plan, words),
    sayNextSteps(plan, words),
    saySureness(plan, words),
  ];
}

function joined(sections: readonly (readonly string[])[]): string {
  const filled = sections.filter((lines) => lines.length > 0);
  return `${filled.map((lines) => lines.join('\n\n')).join('\n\n')}\n`;
}
/** Every reason why the plan is a draft; the front page names them shortly. */
function draftLines(plan: Plan, words: Words): string[] {
  return plan.draftBecause.length === 0
    ? []
    : titledList(`## ${words.household.headings.draft}`, plan.draftBecause.map(words.draftReason));
}
