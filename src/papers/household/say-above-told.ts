import { isWired } from '../../plan/electrical/route-traits';
import type { Plan } from '../../plan/plan';
import type { Words } from '../../words/words';

/** By how much the likely price of the route advised is above what was told; empty where it is not, or nothing was told. */
export function sayAboveTold({ counts, advice }: Plan, words: Words): string {
  const { aboveTold } = counts[advice.route.kind];
  return aboveTold === null ? '' : words.household.aboveTold(aboveTold);
}

/** Where only its high end is above what was told: by how much; empty elsewhere. */
export function sayHighAbove({ counts, advice: { route } }: Plan, words: Words): string {
  const { highAbove } = counts[route.kind];
  return highAbove === null ? '' : words.household.highAbove(highAbove, isWired(route));
}
