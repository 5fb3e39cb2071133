import { goalShare } from '../../advice/ride/goal-share';
import type { Home, Season } from '../../home/home';
import type { SyntheticYears } from '../../home/weather/synthetic-years';
import { neededForEveryStart } from '../../outage/every-start';
import { startsOfPieces } from '../../outage/season-pieces';
import { usableOf } from '../../routes/battery-hours';
import { part } from '../../routes/costs';
import type { Route } from '../../routes/route';
import { batteryStepsKwh, solarStepsKw } from '../../tables/generic-steps';
import { priceOfExchange } from './price-of-exchange';
import type { Neighbor, NeighborStep } from './ride-through';
import { seasonNet } from './season-net';
import { stepsBeside } from './steps-beside';

interface Size {
  readonly kwh: number;
  readonly solarKw: number;
}

/** Beside a fixed battery: one step of battery, and of solar where there is some. */
export function batteryNeighbors(
  home: Home,
  drawn: SyntheticYears,
  route: Route,
  season: Season,
): Neighbor[] {
  if (route.nameplateKwh === null || route.power === null || route.sizeByOdds === null) return [];
  const now: Size = { kwh: route.nameplateKwh, solarKw: route.solarKw ?? 0 };
  const room = drawn.roof?.roomKw ?? 0;
  const same = (step: number) => step;
  const kwhSteps = stepsBeside(batteryStepsKwh(), now.kwh, same);
  const sunSteps = now.solarKw > 0 ? stepsBeside(solarStepsKw(), now.solarKw, same) : [];
  const sizes = [
    ...kwhSteps.map((kwh) => ({ ...now, kwh })),
    ...sunSteps.filter((kw) => kw <= room).map((solarKw) => ({ ...now, solarKw })),
  ];
  const needs = new Map<number, Float64Array>();
  return sizes.map((size) => {
    const needed =
      needs.get(size.solarKw) ?? neededWith(home, drawn, route, { season, solarKw: size.solarKw });
    needs.set(size.solarKw, needed);
    const usableKwh = usableOf(home, size.kwh);
    return {
      step: stepTo(size, now),
      nameplateKwh: size.kwh,
      solarKw: size.solarKw,
      odds: shareWithin(needed, usableKwh),
      carefulOdds: goalShare(
        home,
        drawn,
        {
          ...route,
          nameplateKwh: size.kwh,
          usableKwh,
          solarKw: size.solarKw > 0 ? size.solarKw : null,
        },
        { season, careful: true },
      ),
      costUsd: costWith(route, size),
    };
  });
}

/** Usable storage, kWh, that each start hour of the season asks for; the rest of the year is not looked at. */
function neededWith(
  home: Home,
  drawn: SyntheticYears,
  route: Route,
  of: { season: Season; solarKw: number },
): Float64Array {
  const { pieces, netKwh } = seasonNet(home, drawn, route, of);
  return startsOfPieces(pieces, neededForEveryStart(netKwh, pieces.tailHours));
}

function shareWithin(needed: Float64Array, usableKwh: number): number {
  let rides = 0;
  for (const kwh of needed) if (kwh <= usableKwh + 1e-9) rides += 1;
  return needed.length === 0 ? 0 : rides / needed.length;
}

function stepTo(size: Size, now: Size): NeighborStep {
  return size.kwh !== now.kwh
    ? { code: 'battery', larger: size.kwh > now.kwh, kwh: size.kwh }
    : { code: 'solar', larger: size.solarKw > now.solarKw, kw: size.solarKw };
}

function costWith(route: Route, size: Size) {
  const battery = route.solarKw === null ? 'battery' : 'battery-with-solar';
  const solar = size.solarKw > 0 ? [part('solar', size.solarKw * 1000)] : [];
  return priceOfExchange(route, part(battery, size.kwh), ...solar);
}
