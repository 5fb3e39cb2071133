import type { Choice, Question } from '../interview/question';

/** The choices whose "act now" words must be read: the chosen ones, or all when the household is not sure. */
export function actNowChoices(question: Question, chosen: readonly string[]): Choice[] {
  const urgent = (question.choices ?? []).filter((choice) => choice.actNow !== undefined);
  return chosen.length === 0 ? urgent : urgent.filter((choice) => chosen.includes(choice.id));
}

export const ACT_NOW_TITLE = 'Do this now, before anything else';
export const ACT_NOW_UNSURE = 'Check these now, before anything else';
