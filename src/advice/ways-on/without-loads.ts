import type { Home, Load } from '../../home/home';
import { demandOf } from '../../home/loads/demand';
import type { LoadId } from '../../home/loads/load-id';

/** The same home as if some things might wait: they still count as what is there, and no route is sized for them. */
export function withoutLoads(home: Home, ids: readonly LoadId[]): Home {
  const loads = home.loads.map(
    (load): Load => (ids.includes(load.id) ? { ...load, rank: 'wait' } : load),
  );
  const ranked = (...ranks: string[]) => loads.filter((load) => ranks.includes(load.rank));
  return {
    ...home,
    loads,
    demand: {
      must: demandOf(ranked('must'), home.goalSeasons),
      good: demandOf(ranked('must', 'good'), home.goalSeasons),
      all: demandOf(loads, home.goalSeasons),
    },
  };
}
