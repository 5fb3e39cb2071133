import type { Facts } from '../../home/facts';

/** The household said outright that it has none of these. */
export function toldNot(facts: Facts, id: string, ...choices: string[]): boolean {
  return facts.told(id) && !facts.is(id, ...choices) && !facts.has(id, ...choices);
}
