import { livedHome } from '../../home/measures/lived-home';
import { preparation } from '../../routes/kinds/preparation';
import { lasts } from '../../routes/make-route';
import { mustLoads } from '../../routes/must-carried';
import type { Route } from '../../routes/route';
import { whole } from '../../routes/sized';
import type { Candidate } from './candidate';
import type { Living } from './living';

/**
 * Where living thriftily leaves nothing that must run and needs power (lights alone, which lanterns replace), getting ready does it
 * without any source; null elsewhere.
 */
export function thriftAlone(living: Living): Candidate | null {
  const { home, way, extraUsd } = living;
  const route: Route = {
    ...preparation(),
    way,
    lasting: lasts(null, true, { code: 'needs-no-power' }),
  };
  const needless = mustLoads(home).length === 0 && mustLoads(livedHome(home, 'usual')).length > 0;
  if (way !== 'thrifty' || !needless) return null;
  return { sized: whole(route), living, usd: route.costUsd.value + extraUsd, counted: route };
}
