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
import { firstBuyFigures } from './first-buy-figures';
import { aboveTold, besidePrice, highAboveTold, thriftPrice } from './front-money';
import { fuelKept } from './fuel-kept';
import { leaveHours } from './leave-hours';
import { otherWay } from './other-way';
import { serviceAmps } from './service-amps';
import { sizeOf, sourceSize } from './source-size';
import { usableBattery } from './usable-battery';
import { waysOnFigures } from './ways-on-figures';

export interface Explainable {
  readonly id: FigureId;
  readonly figure: Figure;
}

/** The figures this plan has, each with the steps it carries; nothing is worked out before somebody asks. */
export function explainable(plan: Plan): Explainable[] {
  // Nothing is advised before enough is known.
  const found: Readonly<Partial<Record<FigureId, Figure | null>>> = {
    ...homeFigures(plan),
    ...(plan.undecided.length > 0 ? {} : adviceFigures(plan)),
  };
  return FIGURE_IDS.flatMap((id) => {
    const figure = found[id] ?? null;
    return figure === null ? [] : [{ id, figure }];
  });
}

type HomeFigureId = (typeof HOME_FIGURES)[number];
const HOME_FIGURES = [
  'running-power',
  'start',
  'energy-a-day',
  'goal',
  'leave',
  'service-amps',
] as const satisfies readonly FigureId[];

type Found<Id extends FigureId> = Readonly<Record<Id, Figure | null>>;

/** Whatever is bought. */
function homeFigures(plan: Plan): Found<HomeFigureId> {
  const { demand, goalHours } = plan.home;
  return {
    'running-power': demand.must.runningWatts,
    start: demand.must.startVa,
    'energy-a-day': demand.must.kwhPerDay[hardestSeason(plan.home)],
    goal: goalHours,
    leave: leaveHours(plan),
    'service-amps': serviceAmps(plan),
  };
}

function adviceFigures(plan: Plan): Found<Exclude<FigureId, HomeFigureId>> {
  const { route } = plan.advice;
  return {
    price: route.costUsd,
    'above-told': aboveTold(plan),
    'high-above-told': highAboveTold(plan),
    'thrift-price': thriftPrice(plan),
    'beside-price': besidePrice(plan),
    ...firstBuyFigures(plan),
    hours: lastingHours(plan),
    ...fuelKept(plan),
    'hours-once-stored': hoursOnceStored(plan),
    odds: countedOdds(plan, false),
    'careful-odds': countedOdds(plan, true),
    ...otherWay(plan),
    'device-hours': deviceHours(plan),
    'fuel-a-day': route.fuel?.perDay ?? null,
    'fuel-for-goal': fuelOfGoal(plan),
    'source-size': sourceSize(plan),
    'carried-power': route.power?.runningWatts ?? null,
    'carried-start': route.power?.startDemandVa ?? null,
    battery: usableBattery(plan),
    'battery-size': sizeOf(plan, route.nameplateKwh, 'kWh'),
    'solar-size': sizeOf(plan, route.solarKw, 'kW'),
    ...waysOnFigures(plan),
    'cost-over-years': costOverYears(plan),
    'cost-a-year': costAYear(plan),
    'savings-a-year': savingsAYear(plan),
  };
}

/** Once the cans among the parts are filled; null where none are to be. */
function hoursOnceStored({ home, advice: { route } }: Plan): Figure | null {
  return onceStored(livedHome(home, route.way), route)?.route.lasting.hours ?? null;
}

/** By the careful count; null where the fuel is piped in, and where none burns. */
function fuelOfGoal({ home, advice: { route } }: Plan): Figure | null {
  return route.fuel?.atHand ? carefulGallons(home, route.fuel) : null;
}
