import type { Facts } from '../../home/facts';
import { careful, type Trigger, yes } from '../rule';

export interface Said {
  readonly facts: Facts;
  /** The question. */
  readonly id: string;
  /** The choices that give cause to speak. */
  readonly choices: readonly string[];
  /** Why, when the household chose one of them. */
  readonly because: string;
  /** Why, when we do not know. */
  readonly unknown: string;
}

/**
 * Told, and one of these choices: yes. Not known, and either assumed to be one of these or not to
 * be assumed at all: careful. Anything else, or a question that does not apply: null.
 */
export function said({ facts, id, choices, because, unknown }: Said): Trigger | null {
  if (!facts.applies(id)) return null;
  const hit = facts.is(id, ...choices) || facts.has(id, ...choices);
  if (facts.told(id)) return hit ? yes(because) : null;
  return hit || facts.value(id) === null ? careful(unknown, id) : null;
}
