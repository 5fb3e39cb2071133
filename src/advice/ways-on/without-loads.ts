import type { Home, Load } from '../../home/home';
import type { LoadId } from '../../home/loads/load-id';
import { withLoads } from '../../home/loads/with-loads';

/** The same home as if some things might wait: they still count as what is there, and no route is sized for them. */
export function withoutLoads(home: Home, ids: readonly LoadId[]): Home {
  return withLoads(
    home,
    home.loads.map((load): Load => (ids.includes(load.id) ? { ...load, rank: 'wait' } : load)),
  );
}
