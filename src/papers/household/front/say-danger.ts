import type { Plan } from '../../../plan/plan';
import type { Words } from '../../../words/words';
import { bullets } from '../../markdown/bullets';

/** A danger told while the plan was made comes before anything planned. */
export function danger({ danger }: Plan, words: Words): string[] {
  if (danger === null) return [];
  const told = words.household.danger(danger.told.map(({ says }) => says));
  return [`**${told}**`, bullets(danger.steps)];
}
