import type { Facts } from './facts';
import type { Season } from './home';

/** Winter and summer when both matter; "not sure" counts as both. */
export function seasonsOf(facts: Facts): Season[] {
  const season = facts.value('goal-season');
  if (season === 'winter' || season === 'summer') return [season];
  return ['winter', 'summer'];
}
