import type { Home } from '../../home/home';
import { neutralAmps } from '../../physics/neutral-current';
import type { Route } from '../../routes/route';
import { isWired } from './route-traits';
import { lineVolts } from './service-facts';

/** Neutral current of the 120 V loads carried: as well shared as can be, and all on one leg. Null without any. */
export function neutralLoadPoint(home: Home, route: Route): string | null {
  const amps = home.loads
    .filter((load) => route.carries.includes(load.name) && load.volts === 120)
    .map((load) => load.runningVa.value / load.volts);
  if (!isWired(route) || amps.length === 0) return null;
  const [legA, legB] = shared(amps);
  const all = legA + legB;
  const feed = lineVolts(home) === 208 ? '120/208' : '120/240';
  const even = neutralAmps({ legAAmps: legA, legBAmps: legB, feed });
  const inStep = neutralAmps({ legAAmps: legA, legBAmps: legB, feed: '120-both-legs' });
  return `Neutral at ${feed} V: ${even.toFixed(1)} A with the 120 V loads shared over both legs, ${all.toFixed(1)} A with all on one; ${inStep.toFixed(1)} A where one 120 V source feeds both legs, so circuits that share a neutral must not be fed that way.`;
}

/** Largest first, each to the leg that has less. */
function shared(amps: readonly number[]): [number, number] {
  const legs: [number, number] = [0, 0];
  for (const one of [...amps].sort((a, b) => b - a)) legs[legs[0] <= legs[1] ? 0 : 1] += one;
  return legs;
}
