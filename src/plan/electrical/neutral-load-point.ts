import type { Home } from '../../home/home';
import { neutralAmps } from '../../physics/neutral-current';
import { shareOverLegs } from '../../physics/service-load/share-over-legs';
import type { Route } from '../../routes/route';
import { carriedLegs } from './carried-legs';
import { isWired } from './route-traits';
import { lineVolts } from './service-facts';
import type { TransferPoint } from './transfer-point';

/** Neutral current of the 120 V loads carried: as well shared as can be, and all on one leg. Null without any. */
export function neutralLoadPoint(home: Home, route: Route): TransferPoint | null {
  const carried = home.loads.filter((load) => route.carries.includes(load.id));
  const amps = carried
    .filter((load) => load.volts === 120)
    .map((load) => ({ amps: load.runningVa.value / load.volts }));
  if (!isWired(route) || amps.length === 0) return null;
  const on = (leg: readonly { amps: number }[]) => leg.reduce((sum, one) => sum + one.amps, 0);
  const shared = shareOverLegs(amps);
  const [legA, legB] = [on(shared.legA), on(shared.legB)];
  const feed = lineVolts(home) === 208 ? '120/208' : '120/240';
  const sharedAmps = neutralAmps({ legAAmps: legA, legBAmps: legB, feed });
  const inStepAmps = neutralAmps({ legAAmps: legA, legBAmps: legB, feed: '120-both-legs' });
  const legs = carriedLegs(carried);
  return {
    code: 'neutral-current',
    feed,
    sharedAmps,
    allOnOneAmps: legA + legB,
    inStepAmps,
    busierLegAmps: Math.max(legs.legA, legs.legB),
  };
}
