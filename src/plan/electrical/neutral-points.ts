import type { Home } from '../../home/home';
import { carriesLargestLoad } from '../../physics/standby-capacity';
import type { Route } from '../../routes/route';
import { hasGenerator, isWired } from './route-traits';
import { lineVolts } from './service-facts';
import type { PlainTransferPoint, TransferPoint } from './transfer-point';

/** A stand-alone source may not be smaller than the largest single load left connected, NEC 710.15(A). */
export function largestLoadPoint(home: Home, route: Route): TransferPoint | null {
  if (route.power === null || !isWired(route)) return null;
  const left = home.loads.filter((load) => !load.offInOutage || load.rank !== 'wait');
  const carried = carriesLargestLoad({
    sourceVa: route.power.continuousWatts,
    loadsVa: left.map((l) => l.runningVa.value),
  });
  const largest = [...left].sort((a, b) => b.runningVa.value - a.runningVa.value)[0];
  if (largest === undefined) return null;
  return { code: 'largest-load', load: largest.id, va: largest.runningVa.value, carried };
}

/** Neutral, bond, GFCI and flame-sensing points for this home and route. */
export function neutralPoints(home: Home, route: Route): TransferPoint[] {
  const { facts } = home;
  const generator = hasGenerator(route) && isWired(route);
  const source120 = facts.is('engine-volts', 'v120');
  const points: readonly [boolean, PlainTransferPoint][] = [
    [generator, 'one-bond'],
    [generator, 'bonded-trips-gfci'],
    [generator && !facts.told('engine-neutral'), 'generator-neutral-not-known'],
    [facts.is('heat-main', 'gas-furnace', 'oil-furnace', 'boiler'), 'flame-needs-bond'],
    [home.demand.must.needs240 && source120, 'source-120-for-240'],
    [source120 && generator, 'one-120-on-both-legs'],
    [lineVolts(home) === 208, 'neutral-loaded-at-208'],
  ];
  return points.filter(([applies]) => applies).map(([, code]) => ({ code }));
}
