import { anyHomeCautions, inEveryHome } from '../../../plan/cautions/any-home';
import type { Plan } from '../../../plan/plan';
import { sayRule } from '../../../words/rule-sentences';
import type { Words } from '../../../words/words';
import { bullets, titledList } from '../../markdown/bullets';
import { danger } from './say-danger';

/**
 * The summary of a home that has told too little to advise anything: what can be said already, which questions decide,
 * and the cautions any home needs. It names nothing to buy and nothing nobody told.
 */
export function thinPage(plan: Plan, words: Words): string[] {
  const say = words.household.thinPage;
  const { frontPage, headings } = words.household;
  return [
    `# ${frontPage.title(plan.name)}`,
    frontPage.standing(plan.asOf),
    ...danger(plan, words),
    say.draft,
    ...(plan.lifeFirst?.told
      ? titledList(`## ${headings.beforeBuying}`, words.lifeFirst(plan.lifeFirst))
      : []),
    ...titledList(`## ${say.theseDecide}`, plan.undecided.map(say.decides)),
    ...titledList(`## ${say.already}`, [
      ...words.job(plan.job, plan.home).slice(0, plan.jobTold ? 1 : 0),
      ...goalNotTold(plan, words),
      say.getReady,
      say.nothingRuledOut,
    ]),
    `## ${say.anyHome}`,
    bullets(thinCautions(plan, words)),
    ...titledList(`## ${headings.leaving}`, words.leavings(plan.leavingPoint)),
    ...titledList(`## ${headings.nextSteps}`, [
      say.goOn(plan.name),
      ...plan.nextSteps
        .filter((step) => ['alarms', 'agree-on-device', 'on-the-lists'].includes(step.id))
        .map((step) => frontPage.step(words.step(step, plan.home), step.who)),
    ]),
  ];
}

/** A goal nobody told is no wish of theirs. */
function goalNotTold({ home, jobTold }: Plan, words: Words): string[] {
  if (!jobTold || home.facts.told('goal-hours')) return [];
  return [words.household.thinPage.goalNotTold(home.goalHours.value)];
}

/** First what they told that is wrong as it is, then what else they told that can kill, then what any home needs. */
function thinCautions({ cautions }: Plan, words: Words): string[] {
  const told = cautions.filter((one) => !one.careful);
  const wrong = told.filter((one) => one.wrongAsItIs);
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
