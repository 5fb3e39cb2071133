import type { Home, Way } from '../home';
import { withLoads } from '../loads/with-loads';
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
  return { ...withLoads(home, thriftyLoads(home, home.loads)), way: 'thrifty' };
}

const steadyOf = new WeakMap<Home, Home>();

/** A home whose cold food is in turns, with it on its thermostat instead; the same home where nothing is. */
export function onThermostat(home: Home): Home {
  if (!home.loads.some(({ steadyShape }) => steadyShape !== undefined)) return home;
  const made = steadyOf.get(home) ?? steadyHome(home);
  steadyOf.set(home, made);
  return made;
}

function steadyHome(home: Home): Home {
  const steady = withLoads(
    home,
    home.loads.map(({ steadyShape, ...load }) =>
      steadyShape === undefined ? load : { ...load, shape: steadyShape },
    ),
  );
  const usual = usualOf.get(home);
  if (usual !== undefined) usualOf.set(steady, usual);
  return steady;
}
