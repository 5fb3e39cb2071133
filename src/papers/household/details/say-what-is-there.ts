import type { Plan } from '../../../plan/plan';
import type { Words } from '../../../words/words';
import { titledList } from '../../markdown/bullets';

/** What the household has already, before anything is bought; nothing where nothing was told. */
export function sayWhatIsThere({ whatIsThere }: Plan, words: Words): string[] {
  const say = words.household.whatIsThere;
  return whatIsThere.length === 0 ? [] : titledList(`## ${say.title}`, whatIsThere.map(say.one));
}
