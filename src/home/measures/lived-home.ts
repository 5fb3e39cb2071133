import type { Home, Way } from '../home';
import { demandOf } from '../loads/demand';
import { thriftyLoads } from './thrifty-loads';

const thriftyOf = new WeakMap<Home, Home>();
const usualOf = new WeakMap<Home, Home>();

/**
 * The home as it lives in one of two ways: `usual`, or `thrifty` with every measure that costs nothing or little and
 * everything in turns. All that is worked out from a home (routes, hours, odds) is worked out for that way by handing
 * this one in. Made once for each home.
 */
export function livedHome(home: Home, way: Way): Home {
  if (home.way === way) return home;
  if (way === 'usual') return usualOf.get(home) ?? home;
  const made = thriftyOf.get(home) ?? thriftyHome(home);
  thriftyOf.set(home, made);
  usualOf.set(made, home);
  return made;
}

function thriftyHome(home: Home): Home {
  const loads = thriftyLoads(home, home.loads);
  const ranked = (...ranks: string[]) => loads.filter((load) => ranks.includes(load.rank));
  return {
    ...home,
    way: 'thrifty',
    loads,
    demand: {
      must: demandOf(ranked('must'), home.goalSeasons),
      good: demandOf(ranked('must', 'good'), home.goalSeasons),
      all: demandOf(loads, home.goalSeasons),
    },
  };
}
