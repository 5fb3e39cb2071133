import type { Home, Load, Rank } from '../home';
import { demandOf } from './demand';

/** The same home with other loads, and what they ask together. */
export function withLoads(home: Home, loads: readonly Load[]): Home {
  const of = (...ranks: Rank[]) =>
    demandOf(
      loads.filter((load) => ranks.includes(load.rank)),
      home.goalSeasons,
    );
  return {
    ...home,
    loads,
    demand: { must: of('must'), good: of('must', 'good'), all: demandOf(loads, home.goalSeasons) },
  };
}
