import { choicesIn } from '../answers';
import type { Condition } from './question';
import type { Known } from './resolve';

/** True when the condition holds on what is known. A question not yet settled fails every test. */
export function holds(condition: Condition, known: ReadonlyMap<string, Known>): boolean {
  if ('all' in condition) return condition.all.every((c) => holds(c, known));
  if ('any' in condition) return condition.any.some((c) => holds(c, known));
  const at = known.get(condition.q);
  if ('lacks' in condition) {
    return !list(condition.lacks).some((id) => asList(at?.value ?? null).includes(id));
  }
  if (at === undefined) return false;
  const { value } = at;
  if ('unsure' in condition) return (at.how !== 'told') === condition.unsure;
  if ('is' in condition) return list(condition.is).includes(value as string);
  if ('isNot' in condition)
    return value !== null && !list(condition.isNot).includes(value as string);
  if ('has' in condition) return list(condition.has).some((id) => asList(value).includes(id));
  if ('hasNot' in condition) {
    return value !== null && !list(condition.hasNot).some((id) => asList(value).includes(id));
  }
  if ('atLeast' in condition) return typeof value === 'number' && value >= condition.atLeast;
  return typeof value === 'number' && value < condition.below;
}

function list(one: string | readonly string[]): readonly string[] {
  return typeof one === 'string' ? [one] : one;
}

function asList(value: Known['value']): readonly string[] {
  return typeof value === 'string' ? [value] : (choicesIn(value) ?? []);
}
