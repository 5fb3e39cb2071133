import { goalShare } from '../../advice/ride/goal-share';
import type { Home, Season } from '../../home/home';
import type { SyntheticYears } from '../../home/weather/synthetic-years';
import { hoursSurvived } from '../../outage/hours-survived';
import { startsOfPieces } from '../../outage/season-pieces';
import type { SeasonNet } from '../../routes/battery-hours';
import { part } from '../../routes/costs';
import type { Route } from '../../routes/route';
import { type PackStep, packSteps } from '../../tables/generic-steps';
import { priceOfExchange } from './price-of-exchange';
import type { Neighbor } from './ride-through';
import { seasonNet } from './season-net';
import { stepsBeside } from './steps-beside';

/** Beside a plug-in battery: the next packs down and up. One that cannot run or start the loads has no odds. */
export function packNeighbors(
  home: Home,
  drawn: SyntheticYears,
  route: Route,
  season: Season,
): Neighbor[] {
  const { nameplateKwh, usableKwh, power } = route;
  // A battery for one job is a box of its own kind, not a step of the packs.
  const isPack = route.parts.some((one) => one.equipmentClass === 'power-pack');
  if (nameplateKwh === null || usableKwh === null || power === null || !isPack) return [];
  const usableShare = usableKwh / nameplateKwh;
  const net = seasonNet(home, drawn, route, { season });
  return stepsBeside(packSteps(), nameplateKwh, ({ kwh }) => kwh).map((step) => {
    const able = runs(step, power);
    return {
      step: { code: 'pack', larger: step.kwh >= nameplateKwh, kwh: step.kwh },
      nameplateKwh: step.kwh,
      solarKw: 0,
      odds: able ? shareThrough(net, step.kwh * usableShare) : null,
      carefulOdds: able
        ? goalShare(home, drawn, withSize(route, step), { season, careful: true })
        : null,
      costUsd: priceOfExchange(route, part('power-pack', step.kwh)),
    };
  });
}

/** Share of the season's starts from which a full pack of so much usable lasts through the goal. */
function shareThrough({ pieces, netKwh }: SeasonNet, capKwh: number): number {
  const goal = pieces.tailHours;
  const hours = startsOfPieces(pieces, hoursSurvived({ netKwh, capKwh, limitHours: goal }));
  return hours.length === 0 ? 0 : hours.filter((lasts) => lasts >= goal).length / hours.length;
}

/** The route with another pack, as much of it usable as of the one it has. */
const withSize = (route: Route, { kwh }: PackStep): Route => ({
  ...route,
  nameplateKwh: kwh,
  usableKwh: (kwh * route.usableKwh!) / route.nameplateKwh!,
});

function runs(step: PackStep, power: NonNullable<Route['power']>): boolean {
  return (
    power.runningWatts.value <= step.watts &&
    // A starting figure is never taken at its likely value for an inverter: it trips.
    power.startDemandVa.high <= step.startVa
  );
}
