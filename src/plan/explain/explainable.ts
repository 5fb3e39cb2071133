import { hardestSeason } from '../../advice/hardest-season';
import { livedHome } from '../../home/measures/lived-home';
import type { Figure } from '../../quantity/figure';
import { onceStored } from '../../routes/fuel/once-stored';
import { carefulGallons } from '../fuel/fuel-for-goal';
import type { Plan } from '../plan';
import { costAYear, costOverYears, savingsAYear } from './cost-a-year';
import { deviceHours, lastingHours } from './counted-hours';
import { countedOdds } from './counted-odds';
import { FIGURE_IDS, type FigureId } from './figure-ids';
import { leaveHours } from './leave-hours';
import { serviceAmps } from './service-amps';
import { sourceSize } from './source-size';
import { usableBattery } from './usable-battery';

export interface Explainable {
  readonly id: FigureId;
  readonly figure: Figure;
}

/** The figures this plan has, each with the steps it carries; nothing is worked out before somebody asks. */
export function explainable(plan: Plan): Explainable[] {
  const {
    home,
    advice: { route },
    undecided,
  } = plan;
  const { must } = home.demand;
  // Nothing is advised before enough is known.
  const advised = undecided.length > 0 ? null : route;
  const found: Readonly<Record<FigureId, Figure | null>> = {
    'running-power': must.runningWatts,
    start: must.startVa,
    'energy-a-day': must.kwhPerDay[hardestSeason(home)],
    price: advised?.costUsd ?? null,
    hours: advised && lastingHours(plan),
    'hours-once-stored': advised && hoursOnceStored(plan),
    odds: advised && countedOdds(plan, false),
    'careful-odds': advised && countedOdds(plan, true),
    'device-hours': advised && deviceHours(plan),
    'fuel-a-day': advised?.fuel?.perDay ?? null,
    'fuel-for-goal': advised && fuelOfGoal(plan),
    'source-size': advised && sourceSize(plan),
    'carried-power': advised?.power?.runningWatts ?? null,
    'carried-start': advised?.power?.startDemandVa ?? null,
    battery: advised && usableBattery(plan),
    leave: leaveHours(plan),
    'service-amps': serviceAmps(plan),
    'cost-over-years': advised && costOverYears(plan),
    'cost-a-year': advised && costAYear(plan),
    'savings-a-year': advised && savingsAYear(plan),
  };
  return FIGURE_IDS.flatMap((id) => {
    const figure = found[id];
    return figure === null ? [] : [{ id, figure }];
  });
}

/** Once the cans among the parts are filled; null where none are to be. */
function hoursOnceStored({ home, advice: { route } }: Plan): Figure | null {
  return onceStored(livedHome(home, route.way), route)?.route.lasting.hours ?? null;
}

/** By the careful count; null where the fuel is piped in, and where none burns. */
function fuelOfGoal({ home, advice: { route } }: Plan): Figure | null {
  return route.fuel?.atHand ? carefulGallons(home, route.fuel) : null;
}
