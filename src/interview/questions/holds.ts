import { choicesIn } from '../answers';
import type { Condition } from './question';
import type { Known } from './resolve';

type Test = (known: ReadonlyMap<string, Known>) => boolean;

const tests = new WeakMap<Condition, Test>();

/**
 * True when the condition holds on what is known. A question not yet settled fails every test. What a condition asks is
 * looked at once, for all of them are asked at each answer; so it must not change.
 */
export function holds(condition: Condition, known: ReadonlyMap<string, Known>): boolean {
  const test = tests.get(condition);
  if (test !== undefined) return test(known);
  const made = testOf(condition);
  tests.set(condition, made);
  return made(known);
}

function testOf(condition: Condition): Test {
  if ('all' in condition) {
    const parts = condition.all.map(testOf);
    return (known) => parts.every((part) => part(known));
  }
  if ('any' in condition) {
    const parts = condition.any.map(testOf);
    return (known) => parts.some((part) => part(known));
  }
  const { q } = condition;
  if ('lacks' in condition) {
    const ids = list(condition.lacks);
    return (known) => !hasOne(known.get(q)?.value ?? null, ids);
  }
  const fits = valueTest(condition);
  return (known) => {
    const at = known.get(q);
    return at !== undefined && fits(at);
  };
}

type OfValue = Exclude<Condition, { all: unknown } | { any: unknown } | { lacks: unknown }>;

/** What is asked of the value of a question that is settled. */
function valueTest(condition: OfValue): (at: Known) => boolean {
  if ('unsure' in condition) return ({ how }) => (how !== 'told') === condition.unsure;
  if ('is' in condition) {
    const ids = list(condition.is);
    return ({ value }) => ids.includes(value as string);
  }
  if ('isNot' in condition) {
    const ids = list(condition.isNot);
    return ({ value }) => value !== null && !ids.includes(value as string);
  }
  if ('has' in condition) {
    const ids = list(condition.has);
    return ({ value }) => hasOne(value, ids);
  }
  if ('hasNot' in condition) {
    const ids = list(condition.hasNot);
    return ({ value }) => value !== null && !hasOne(value, ids);
  }
  if ('atLeast' in condition) {
    return ({ value }) => typeof value === 'number' && value >= condition.atLeast;
  }
  return ({ value }) => typeof value === 'number' && value < condition.below;
}

function list(one: string | readonly string[]): readonly string[] {
  return typeof one === 'string' ? [one] : one;
}

/** One of the choices, or the one chosen, is among these. */
function hasOne(value: Known['value'], ids: readonly string[]): boolean {
  if (typeof value === 'string') return ids.includes(value);
  const chosen = choicesIn(value) ?? [];
  return ids.some((id) => chosen.includes(id));
}
