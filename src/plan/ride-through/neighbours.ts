import type { Home, Season } from '../../home/home';
import type { World } from '../../home/world';
import { neededForEveryStart } from '../../outage/every-start';
import { figure } from '../../quantity/figure';
import { addFigures } from '../../quantity/figure-arithmetic';
import { formatQuantity } from '../../quantity/format-quantity';
import { usableOf } from '../../routes/battery-hours';
import { part } from '../../routes/costs';
import type { Route } from '../../routes/route';
import { batteryStepsKwh, solarStepsKw } from '../../tables/generic-steps';
import { energyOf, shareInSeason } from './battery-ride';
import type { Neighbour } from './ride-through';
import { loadsIn } from './route-loads';

/** One step smaller and one larger of battery, and of solar where there is some: what each would bring. */
export function neighboursOf(home: Home, world: World, route: Route, season: Season): Neighbour[] {
  if (route.nameplateKwh === null || route.power === null || route.sizeByOdds === null) return [];
  const kwh = route.nameplateKwh;
  const solarKw = route.solarKw ?? 0;
  const room = world.roof?.roomKw ?? 0;
  const kwhSteps = around(batteryStepsKwh(), kwh).map((step) => ({ kwh: step, solarKw }));
  const sunSteps = solarKw > 0 ? around(solarStepsKw(), solarKw).filter((kw) => kw <= room) : [];
  const sizes = [...kwhSteps, ...sunSteps.map((kw) => ({ kwh, solarKw: kw }))];
  const needs = new Map<number, Float64Array>();
  return sizes.map((size) => {
    const needed = needs.get(size.solarKw) ?? neededWith(home, world, route, size.solarKw);
    needs.set(size.solarKw, needed);
    const usableKwh = usableOf(home, size.kwh);
    return {
      says: sayStep(size, { kwh, solarKw }),
      nameplateKwh: size.kwh,
      solarKw: size.solarKw,
      odds: shareInSeason(season, needed.length, (start) => needed[start]! <= usableKwh + 1e-9),
      costUsd: costWith(route, size, { kwh, solarKw }),
    };
  });
}

function neededWith(home: Home, world: World, route: Route, solarKw: number): Float64Array {
  const inverterKw = route.power!.continuousWatts / 1000;
  const { netKwh } = energyOf(world, route, loadsIn(home, route, 'must') ?? [], {
    usableKwh: 0,
    inverterKw,
    solarKw,
  });
  return neededForEveryStart(netKwh, Math.round(home.goalHours.value));
}

function around(steps: readonly number[], size: number): number[] {
  const at = steps.findIndex((step) => step >= size - 1e-9);
  return [steps[at - 1], steps[at + 1]].filter((step) => step !== undefined);
}

interface Size {
  readonly kwh: number;
  readonly solarKw: number;
}

function sayStep(size: Size, now: Size): string {
  if (size.kwh !== now.kwh) {
    return `${size.kwh < now.kwh ? 'a smaller' : 'a larger'} battery of ${formatQuantity(size.kwh, 'kWh')}`;
  }
  return `${size.solarKw < now.solarKw ? 'less' : 'more'} solar, ${formatQuantity(size.solarKw, 'kW')}`;
}

/** The route's price with the battery or the solar exchanged for another step. */
function costWith(route: Route, size: Size, now: Size) {
  const battery = route.solarKw === null ? 'battery' : 'battery-with-solar';
  const more = [
    { of: battery, units: size.kwh - now.kwh },
    { of: 'solar', units: (size.solarKw - now.solarKw) * 1000 },
  ] as const;
  const delta = more
    .filter(({ units }) => units !== 0)
    .map(({ of, units }) => {
      const { low, value, high } = part(of, Math.abs(units)).costUsd;
      const sign = Math.sign(units);
      return figure({
        low: sign * (sign > 0 ? low : high),
        value: sign * value,
        high: sign * (sign > 0 ? high : low),
        unit: '$',
        source: route.costUsd.source,
      });
    });
  const sum = addFigures([route.costUsd, ...delta], { unit: '$', name: 'cost of the neighbor' });
  return { ...sum, low: Math.max(0, sum.low) };
}
