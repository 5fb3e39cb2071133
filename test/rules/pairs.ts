import type { Site } from '../../src/home/home';
import type { Answers } from '../../src/interview/answers';
import type { RouteKind } from '../../src/kinds/route-kind';

/** A home with a hazard and its twin without: both are the calm home but for what is said here. */
export interface Pair {
  readonly rule: string;
  readonly hazard: Answers;
  /** What the twin says instead; nothing, when the calm home will do. */
  readonly twin: Answers;
  readonly kinds: readonly RouteKind[];
  readonly twinKinds: readonly RouteKind[];
  readonly site: Partial<Site>;
  readonly twinSite: Partial<Site>;
}

type Differs = Partial<Omit<Pair, 'rule' | 'hazard'>>;

/** A pair; the twin shares routes and site unless it is given its own. */
export function pair(rule: string, hazard: Answers, differs: Differs = {}): Pair {
  const { twin = {}, kinds = [], site = {} } = differs;
  const { twinKinds = kinds, twinSite = site } = differs;
  return { rule, hazard, twin, kinds, twinKinds, site, twinSite };
}

/** A pair that differs in the routes under discussion only. */
export function byRoute(rule: string, kinds: readonly RouteKind[], answers: Answers = {}): Pair {
  return pair(rule, answers, { twin: answers, kinds, twinKinds: ['preparation'] });
}
