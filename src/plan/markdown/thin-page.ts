import { wordsOf } from '../../tables/rule-words';
import type { Plan } from '../plan';
import { anyHomeCautions } from './any-home';
import { bullets, titledList } from './bullets';
import { danger } from './say-danger';

/**
 * The summary of a home that has told too little to advise anything: what can be said already, which questions decide,
 * and the cautions any home needs. It names nothing to buy and nothing nobody told.
 */
export function thinPage(plan: Plan): string[] {
  const told = plan.cautions.filter((one) => !one.careful && wordsOf(one.id).wrongAsItIs);
  const common = anyHomeCautions.flatMap((id) => plan.cautions.filter((one) => one.id === id));
  const cautions = [...new Set([...told, ...common])].slice(0, Math.max(told.length, MOST));
  return [
    `# Backup power plan: ${plan.name}`,
    `As of ${plan.asOf}. A planning aid, not an electrical design: a licensed electrician, the building department and the local code decide.`,
    ...danger(plan),
    'DRAFT: too little is answered to advise anything yet, so this page names nothing to buy.',
    ...titledList(
      '## These answers decide',
      plan.undecided.map((one) => `${one.says}. ${one.decides}.`),
    ),
    ...titledList('## What can be said already', [
      ...plan.job.slice(0, plan.jobTold ? 1 : 0),
      'Getting ready costs little and is worth doing whatever comes of this: lights, stored water (a gallon a person a day), a cooler, a paper list of phone numbers.',
      'Nothing here is planned, sized or ruled out yet: a question that was not asked is no answer.',
    ]),
    '## Cautions any home needs',
    bullets(cautions.map((one) => one.says)),
    ...titledList('## When to leave', plan.leavingPoint),
    ...titledList('## Next steps', [
      `Go on answering: lampkeeper ${plan.name}.home.yaml`,
      ...plan.nextSteps
        .filter((step) => ['alarms', 'agree-on-device', 'on-the-lists'].includes(step.id))
        .map((step) => `${step.what} (${step.who})`),
    ]),
  ];
}

/** At most so many cautions, but never fewer than the household itself gave cause for. */
const MOST = 15;
