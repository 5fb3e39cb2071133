import type { Plan } from '../../../plan/plan';
import type { Words } from '../../../words/words';
import { titledList } from '../../markdown/bullets';

/** Questions shown that are worth finding out. */
const SHOWN = 12;

/** Answers that do not fit together stand first: what follows rests on them. Empty when all fit. */
export function sayToSettle({ electrical }: Plan, words: Words): string[] {
  const say = words.household.openAnswers;
  const lines = electrical.toSettle.map(say.settle);
  return lines.length === 0 ? [] : titledList(`## ${say.settleTitle}`, lines);
}

/** What is worth finding out, or settling if something else is ever wanted; where nothing is, but answers are to be settled, it says so. */
export function sayToFindOut(plan: Plan, words: Words): string[] {
  const { toFindOut, electrical, settleIfEver } = plan;
  const say = words.household.openAnswers;
  return titledList(
    `## ${say.findOutTitle}`,
    [...say.findOut(toFindOut.slice(0, SHOWN)), ...settleIfEver.map(say.settleIfEver)],
    electrical.toSettle.length > 0 ? say.onlyToSettle : say.nothingToFindOut,
  );
}

/** What was taken for each answer that was "not sure" or never given. */
export function sayAssumptions({ assumptions }: Plan, words: Words): string[] {
  const say = words.household.openAnswers;
  return titledList(`## ${say.assumedTitle}`, say.assumed(assumptions), say.nothingAssumed);
}
