import type { Facts } from '../facts';
import { lifeSupport } from '../people/life-support';

/** A cold or a hot room makes somebody here ill sooner than others. Not told counts as yes. */
export function harms(facts: Facts, by: 'cold' | 'heat'): boolean {
  return (
    (facts.applies('heat-cold') &&
      (!facts.told('heat-cold') || facts.is('heat-cold', by, 'both'))) ||
    (facts.applies('people-risk') &&
      (!facts.told('people-risk') ||
        facts.has('people-risk', 'baby', 'over-65', 'pregnant', 'long-illness'))) ||
    lifeSupport(facts) !== 'no'
  );
}
