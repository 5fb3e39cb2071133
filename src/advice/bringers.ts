import type { Condition, Interview, Question } from '../interview/questions/question';

/** By question, those that are asked or not by what is answered to it. */
export function bringers({ questions }: Interview): ReadonlyMap<string, readonly Question[]> {
  const found = new Map<string, Question[]>();
  for (const question of questions) {
    for (const id of new Set(question.when === undefined ? [] : namedIn(question.when))) {
      found.set(id, [...(found.get(id) ?? []), question]);
    }
  }
  return found;
}

function namedIn(condition: Condition): string[] {
  if ('all' in condition) return condition.all.flatMap(namedIn);
  if ('any' in condition) return condition.any.flatMap(namedIn);
  return [condition.q];
}
