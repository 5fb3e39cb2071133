import type { Home } from '../../home/home';
import { neutralAmps } from '../../physics/neutral-current';
import { shareOverLegs } from '../../physics/service-load/share-over-legs';
import type { Route } from '../../routes/route';
import { carriedLegs } from './carried-legs';
import { isWired } from './route-traits';
import { lineVolts } from './service-facts';

/** Neutral current of the 120 V loads carried: as well shared as can be, and all on one leg. Null without any. */
export function neutralLoadPoint(home: Home, route: Route): string | null {
  const carried = home.loads.filter((load) => route.carries.includes(load.id));
  const amps = carried
    .filter((load) => load.volts === 120)
    .map((load) => ({ amps: load.runningVa.value / load.volts }));
  if (!isWired(route) || amps.length === 0) return null;
  const on = (leg: readonly { amps: number }[]) => leg.reduce((sum, one) => sum + one.amps, 0);
  const shared = shareOverLegs(amps);
  const [legA, legB] = [on(shared.legA), on(shared.legB)];
  const all = legA + legB;
  const feed = lineVolts(home) === 208 ? '120/208' : '120/240';
  const even = neutralAmps({ legAAmps: legA, legBAmps: legB, feed });
  const inStep = neutralAmps({ legAAmps: legA, legBAmps: legB, feed: '120-both-legs' });
  const legs = carriedLegs(carried);
  const busier = Math.max(legs.legA, legs.legB);
  return `Neutral at ${feed} V: ${even.toFixed(1)} A with the 120 V loads shared over both legs, ${all.toFixed(1)} A with all on one; ${inStep.toFixed(1)} A where one 120 V source feeds both legs, so circuits that share a neutral must not be fed that way. Shared so, and with a quarter more of the largest motor (430.24), the busier leg carries ${busier.toFixed(1)} A.`;
}
