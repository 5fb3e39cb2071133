import type { Plan } from '../../../plan/plan';
import { formatQuantity } from '../../../quantity/format-quantity';
import { ruleOf } from '../../../tables/rules';
import { sayRule } from '../../../words/rule-sentences';
import type { Words } from '../../../words/words';
import { bullets, titledList } from '../../markdown/bullets';
import { anyHomeCautions, inEveryHome } from './any-home';
import { danger } from './say-danger';

/**
 * The summary of a home that has told too little to advise anything: what can be said already, which questions decide,
 * and the cautions any home needs. It names nothing to buy and nothing nobody told.
 */
export function thinPage(plan: Plan, words: Words): string[] {
  return [
    `# Backup power plan: ${plan.name}`,
    `As of ${plan.asOf}. A planning aid, not an electrical design: a licensed electrician, the building department and the local code decide.`,
    ...danger(plan, words),
    'DRAFT: too little is answered to advise anything yet, so this page names nothing to buy.',
    ...(plan.lifeFirst?.told
      ? titledList('## Before anything is bought', words.lifeFirst(plan.lifeFirst))
      : []),
    ...titledList(
      '## These answers decide',
      plan.undecided.map((one) => `${one.says}. ${one.decides}.`),
    ),
    ...titledList('## What can be said already', [
      ...plan.job.slice(0, plan.jobTold ? 1 : 0),
      ...goalNotTold(plan),
      'Getting ready costs little and is worth doing whatever comes of this: lights, stored water (a gallon a person a day), a cooler, a paper list of phone numbers.',
      'Nothing here is planned, sized or ruled out yet: a question that was not asked is no answer.',
    ]),
    '## Cautions any home needs',
    bullets(thinCautions(plan, words)),
    ...titledList('## When to leave', plan.leavingPoint),
    ...titledList('## Next steps', [
      `Go on answering: lampkeeper ${plan.name}.home.yaml`,
      ...plan.nextSteps
        .filter((step) => ['alarms', 'agree-on-device', 'on-the-lists'].includes(step.id))
        .map((step) => `${step.what} (${step.who})`),
    ]),
  ];
}

/** A goal nobody told is no wish of theirs. */
function goalNotTold({ home, jobTold }: Plan): string[] {
  if (!jobTold || home.facts.told('goal-hours')) return [];
  return [
    `How long was not told: until it is, we count ${formatQuantity(home.goalHours.value, 'h')}.`,
  ];
}

/** First what they told that is wrong as it is, then what else they told that can kill, then what any home needs. */
function thinCautions({ cautions }: Plan, words: Words): string[] {
  const told = cautions.filter((one) => !one.careful);
  const wrong = told.filter((one) => ruleOf(one.id).wrongAsItIs);
  const kills = told.filter((one) => one.severity === 5);
  const own = [...new Set([...wrong, ...kills])].map((one) => sayRule(words.rules, one));
  const common = anyHomeCautions.flatMap((id) => {
    const found = cautions.find((one) => one.id === id);
    if (found !== undefined) return sayRule(words.rules, found);
    return inEveryHome.includes(id) ? words.rules[id].says : [];
  });
  return [...new Set([...own, ...common])].slice(0, Math.max(own.length, MOST));
}

/** At most so many cautions, but never fewer than the household itself gave cause for. */
const MOST = 15;
