import type { Home } from '../home/home';
import type { RouteKind } from '../kinds/route-kind';
import { traitsOf } from '../kinds/route-traits';
import { type RuleId, ruleOf } from '../tables/rules';
import { rules } from './index';
import type { Reason } from './reason';
import { type Finding, type Routes, type Trigger, yes } from './rule';

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
  const all = rules.flatMap((rule): Finding[] => {
    const trigger = rule.applies(home, routes);
    if (trigger === null) return [];
    return [found(rule.id, trigger)];
  });
  return all.sort((a, b) => b.severity - a.severity);
}

/** A rule that the plan itself has cause to speak, for something only the routes can tell. */
export function findingOf(id: RuleId, because: Reason): Finding {
  return found(id, yes(because));
}

function found(id: RuleId, trigger: Trigger): Finding {
  const { severity, who, cite, wrongAsItIs = false } = ruleOf(id);
  return { ...trigger, id, severity, who, wrongAsItIs, cite };
}
