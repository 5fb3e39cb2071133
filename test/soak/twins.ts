import interview from '#compiled/questions.js';
import type { Home } from '../../src/home/home';
import type { Answer, Answers } from '../../src/interview/answers';
import { homeFromAnswers } from '../../src/plan/home-from-answers';
import { findings } from '../../src/rules/find';
import { reasonCode } from '../../src/rules/reason';
import { ruleOf } from '../../src/tables/rules';
import { firstSentences } from '../../src/words/en/first-sentences';
import { homeAsked } from '../plan/asked-home';
import { says } from '../says';
import type { Hazard } from './hazards';
import type { Seen } from './seen';

/** The same home with the hazard told; null where this home cannot be asked about it. */
export function withHazard(answers: Answers, { question: id, choice }: Hazard): Answers | null {
  const question = interview.questions.find((one) => one.id === id)!;
  const home = homeAsked(interview, answers, question);
  if (home === null) return null;
  return { ...home, [id]: question.kind === 'choice' ? choice : ticked(home[id], choice) };

  function ticked(now: Answer | undefined, one: string): string[] {
    const alone = question.choices!.filter((c) => c.alone).map((c) => c.id);
    if (alone.includes(one)) return [one];
    const kept = Array.isArray(now) ? now.filter((other) => !alone.includes(other as string)) : [];
    return [...new Set([...(kept as string[]), one])];
  }
}

/** What is wrong with how a plan tells of a hazard that the household told. */
export function notTold(hazard: Hazard, { plan, text, front }: Seen): string[] {
  const rule = ruleFor(hazard, plan.home);
  const found = plan.cautions.find((one) => one.id === rule);
  if (found === undefined) return [`${rule} is not in the plan`];
  const wrong = ruleOf(rule).wrongAsItIs === true;
  const whole = plan.undecided.length > 0 ? wrong || found.severity === 5 : found.severity >= 4;
  return [
    ...(found.careful ? [`${rule} speaks as if nobody had told`] : []),
    ...(whole && !text.includes(says(found)) ? [`${rule} is not printed whole`] : []),
    ...(wrong && !front.includes(firstSentences(says(found)))
      ? [`${rule} is not on the first page`]
      : []),
  ];
}

/** What is wrong with the twin that told it has no such thing. */
export function notQuiet(hazard: Hazard, answers: Answers, asOf: string): string[] {
  const home = homeFromAnswers(interview, { ...answers, ...hazard.without }, asOf);
  const rule = ruleFor(hazard, home);
  return findings(home, ['preparation'])
    .filter((one) => one.id === rule && !one.careful)
    .map((one) => `${rule} speaks on the twin: ${reasonCode(one.because)}`);
}

const ruleFor = ({ rule, gentler }: Hazard, home: Home) =>
  home.lifeSupport === 'no' ? (gentler ?? rule) : rule;
