import type { Facts } from '../../home/facts';

/** The first of these questions that applies and is not answered; undefined when all are. */
export function firstOpen(facts: Facts, ...ids: readonly string[]): string | undefined {
  return ids.find((id) => facts.open(id));
}
