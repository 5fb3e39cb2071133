import type { Plan } from '../../../plan/plan';
import type { NextStep, StepId } from '../../../plan/steps/next-step';
import type { Words } from '../../../words/words';
import { titledList } from '../../markdown/bullets';
import { inQuotes } from '../../markdown/in-quotes';

/** Steps whose what and how stand in a part of their own: pointed to, once. */
const elsewhere: readonly StepId[] = ['settle', 'find-out'];

/** What to do next, in order, and who does it. */
export function sayNextSteps(plan: Plan, words: Words): string[] {
  const first = new Map(elsewhere.map((id) => [id, plan.nextSteps.find((step) => step.id === id)]));
  const steps = plan.nextSteps.filter(
    (step) => !elsewhere.includes(step.id) || first.get(step.id) === step,
  );
  return titledList(
    `## ${words.household.headings.nextSteps}`,
    steps.map((step) => `${says(step, plan, words)}${copied(step, words)} (${step.who})`),
  );
}

function says(step: NextStep, plan: Plan, words: Words): string {
  if (step.id === 'settle') return words.household.headings.settleAbove;
  if (step.id === 'find-out') return words.household.headings.findOutAbove;
  return words.step(step, plan.home);
}

/** What the household copied, in quotes. */
const copied = (step: NextStep, words: Words) => {
  const told = 'told' in step ? step.told : undefined;
  return told === undefined ? '' : words.household.headings.youCopied(inQuotes(told));
};
