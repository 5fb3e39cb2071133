import type { Home } from '../home/home';
import type { RouteKind } from '../kinds/route-kind';
import { traitsOf } from '../kinds/route-traits';
import { wordsOf } from '../tables/rule-words';
import { rules } from './index';
import type { Finding, Routes } from './rule';

/**
 * What the rules say about this home with these routes under discussion: most severe first, and
 * within one severity in the fixed order of `rules`. The same home and routes give the same list.
 */
export function findings(home: Home, kinds: Iterable<RouteKind>): Finding[] {
  return findingsOf(
    home,
    [...kinds].map((kind) => traitsOf[kind]),
  );
}

/** The same for routes of these traits, whatever they are called. */
export function findingsOf(home: Home, routes: Routes): Finding[] {
  const found = rules.flatMap((rule): Finding[] => {
    const trigger = rule.applies(home, routes);
    if (trigger === null) return [];
    const { id, severity, says, who, cite, proof } = wordsOf(rule.id);
    return [{ ...trigger, id, severity, says, who, cite, proof }];
  });
  return found.sort((a, b) => b.severity - a.severity);
}
