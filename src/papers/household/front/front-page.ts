import type { Plan } from '../../../plan/plan';
import { sayRule } from '../../../words/rule-sentences';
import type { Words } from '../../../words/words';
import { bullets } from '../../markdown/bullets';
import { waysOnLine } from '../details/say-ways-on';
import { sayFuelToKeep } from '../say-fuel-for-goal';
import { sayWhatYouHave } from '../say-what-you-have';
import { comfort } from './comfort';
import { firstSteps } from './first-steps';
import { possibleIfLine } from './possible-if-line';
import { danger } from './say-danger';
import { sayThriftily } from './say-thriftily';
import { buy, lasts, notCarried } from './what-it-does';
import { call, leave } from './whom-and-when';

/** One page for whoever reads no more: every figure on it stands in the details too. */
export function frontPage(plan: Plan, words: Words): string[] {
  const say = words.household.frontPage;
  return [
    `# ${say.title(plan.name)}`,
    ...danger(plan, words),
    say.standing(plan.asOf),
    ...words.grownOld(plan.grownOld),
    ...(plan.state === 'draft' ? [say.draft(plan.draftBecause.map(words.draftReasonShort))] : []),
    bullets(frontLines(plan, words)),
    say.hurtsMost,
    bullets(plan.frontCautions.map((one) => words.firstSentences(sayRule(words.rules, one)))),
    say.firstSteps,
    bullets(
      firstSteps(plan).map((step) =>
        say.step(words.firstSentences(words.step(step, plan.home)), step.who),
      ),
    ),
  ];
}

/** What was decided, in lines of a name and what stands under it. */
export function frontLines(plan: Plan, words: Words): string[] {
  const say = words.household.frontPage;
  const { lifeFirst } = plan;
  return [
    say.job(words.job(plan.job, plan.home)[0]!),
    ...(lifeFirst?.told ? [say.beforeBuying(words.lifeFirst(lifeFirst))] : []),
    ...comfort(plan, words),
    buy(plan, words),
    ...sayWhatYouHave(plan, words),
    notCarried(plan, words),
    lasts(plan, words),
    ...sayThriftily(plan, words),
    ...sayFuelToKeep(plan, words),
    ...(plan.lifeFirst?.told ? [] : waysOnLine(plan, words)),
    ...possibleIfLine(plan, words),
    ...leave(plan, words),
    call(plan, words),
  ];
}
