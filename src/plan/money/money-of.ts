import type { Advice } from '../../advice/advice';
import { WEAR_PER_KWH } from '../../bill/lifecycle/battery-wear';
import { oldPrices } from '../../bill/lifecycle/cost-part';
import { routeMoney } from '../../bill/lifecycle/route-money';
import { carriesOver, stagedBuying } from '../../bill/lifecycle/staged-buying';
import type { Tariff } from '../../bill/tariff/tariff';
import type { Home } from '../../home/home';
import { ownSolarKw } from '../../home/solar/own-solar';
import type { SyntheticYears } from '../../home/weather/synthetic-years';
import { hasFixedBattery, isSource } from '../../kinds/ask-traits';
import type { RouteKind } from '../../kinds/route-kind';
import { traitsOf } from '../../kinds/route-traits';
import type { Route } from '../../routes/route';
import { batteryType } from '../../tables/battery-types';
import { endedBy } from '../../tables/prices/incentives';
import type { Outlook } from '../outlook';
import type { RideThrough } from '../ride-through/ride-through-of';
import { type BetweenOutages, betweenOutages, withCeiling } from './between-outages';
import { billFit } from './bill-fit';
import { batteryLife, costPartsOf } from './cost-parts';
import { type HouseYear, houseYear } from './house-year';
import { julyBills } from './july-bills';
import { keptFor } from './kept-for';
import { lossesOf } from './losses-of';
import { peakFactorsOf, peaksKnown } from './peak-factors-of';
import {
  type IncentiveNote,
  type MoneyOfRoute,
  type OldPriceIn,
  type PlanMoney,
  REAL_RATE,
  STUDY_YEARS,
} from './plan-money';
import { reserveTable } from './reserve-table';
import { carriesAll, riddenThrough } from './ridden';
import { type HomeTariff, tariffOf } from './tariff-of';

export interface MoneyInput {
  readonly home: Home;
  readonly ownTariff: Tariff | null;
  readonly drawn: SyntheticYears;
  readonly routes: readonly Route[];
  readonly advice: Advice;
  readonly outlook: Outlook;
  readonly rideThrough: RideThrough;
}

/** What every route that can work costs and saves over its life, and what doing nothing costs. */
export function moneyOf(input: MoneyInput): PlanMoney {
  const { home, drawn, advice, outlook } = input;
  const able = input.routes.filter((route) => route.verdict !== 'cannot');
  const of = tariffOf(home, input.ownTariff);
  const batteries = able.filter((route) => onTheBill(route));
  const withSun = ownSolarKw(home.facts) > 0 || batteries.some((route) => route.solarKw !== null);
  const year = houseYear(home, drawn, withSun);
  const betweens = new Map<RouteKind, BetweenOutages>();
  for (const route of of === null ? [] : batteries)
    betweens.set(route.kind, between(input, route, of!, year));
  const main = mainBattery(batteries, advice, betweens);
  if (main !== null && betweens.has(main.kind)) {
    betweens.set(main.kind, withCeiling(betweens.get(main.kind)!));
  }
  const routes = able.map((route) => moneyOfRoute(input, route, betweens.get(route.kind) ?? null));
  const mainBetween = main === null ? undefined : betweens.get(main.kind);
  const stages = stagedBuying(boughtInOrder(input, able));
  return {
    tariff: of,
    use: year.use,
    peaks: of === null ? null : peaksKnown(home, of.tariff, peakFactorsOf(home, of.tariff, year)),
    billFit: of && billFit(home, of),
    routes,
    losses: lossesOf(home, outlook),
    outageHours: { ordinary: outlook.ordinaryHours.value, major: outlook.majorHours.value },
    reserveOf: main?.kind ?? null,
    reserve:
      main === null || mainBetween === undefined
        ? []
        : reserveTable({ home, drawn, route: main }, mainBetween),
    julyBills: julyBills(routes, { advised: advice.route.kind, battery: main?.kind ?? null }),
    wearPerKwhUsd: WEAR_PER_KWH,
    stages,
    carriesOver: carriesOver(stages.flatMap((stage) => stage.parts)),
    oldPrices: oldPricesOf(routes, home.asOf),
    incentiveNotes: [toldIncentive(home), ...endedBy(home.asOf)],
  };
}

/** The battery looked at more closely: the one advised, else the one that takes most off the bill. */
function mainBattery(
  batteries: readonly Route[],
  advice: Advice,
  betweens: ReadonlyMap<RouteKind, BetweenOutages>,
): Route | null {
  if (batteries.includes(advice.route)) return advice.route;
  const net = ({ kind }: Route) => {
    const between = betweens.get(kind);
    return between === undefined ? 0 : between.savings - between.wear;
  };
  return batteries.reduce<Route | null>((a, b) => (a === null || net(b) > net(a) ? b : a), null);
}

/** A battery wired to the house works between outages; a pack or a generator does not. */
function onTheBill(route: Route): boolean {
  const wired = hasFixedBattery(traitsOf[route.kind]) && (route.usableKwh ?? 0) > 0;
  return wired || route.solarKw !== null;
}

function between(
  { home, rideThrough }: MoneyInput,
  route: Route,
  homeTariff: HomeTariff,
  year: HouseYear,
): BetweenOutages {
  const keptKwh = keptFor(home, route, rideThrough);
  return betweenOutages({ home, route, of: homeTariff, year, keptKwh });
}

function moneyOfRoute(
  { home, outlook }: MoneyInput,
  route: Route,
  between: BetweenOutages | null,
): MoneyOfRoute {
  const kwhOutPerYear = between === null ? 0 : between.wear / WEAR_PER_KWH;
  const parts = costPartsOf(home, route, kwhOutPerYear);
  const ridden = riddenThrough(home, route, outlook);
  // A rebate is for the wired job it was told for, never for cans and cords.
  const bought = parts.reduce((sum, part) => sum + part.cost.likely, 0);
  const told = home.facts.told('incentive-total') ? (home.facts.number('incentive-total') ?? 0) : 0;
  const incentives = Math.min(told, bought >= 1000 ? bought : 0);
  const money = routeMoney({
    parts,
    incentives,
    fuelPerYear: ridden.fuelPerYear,
    savingsPerYear: savingsRange(between),
    fadePerYear: between === null ? 0 : batteryType('lithium-iron-phosphate').fadePerYear,
    years: STUDY_YEARS,
    rate: REAL_RATE,
    ...(carriesAll(ridden) && { hoursRidden: ridden }),
    backupKwhPerYear: ridden.backupKwh,
  });
  const lives = parts.flatMap((part) => part.lifeYears ?? []);
  const heard = parts.map((part) => part.noise).find((noise) => noise.code !== 'none');
  return {
    kind: route.kind,
    called: route.called,
    parts,
    money,
    between,
    ridden,
    incentives,
    batteryLife: between === null ? null : batteryLife(route, kwhOutPerYear),
    lifeYears: lives.length > 0 ? Math.min(...lives) : null,
    upkeepPerYear: parts.reduce((sum, part) => sum + part.upkeepPerYear.likely, 0),
    leadWeeks: {
      low: Math.max(0, ...parts.map((part) => part.leadWeeks.low)),
      high: Math.max(0, ...parts.map((part) => part.leadWeeks.high)),
    },
    noise: heard ?? { code: 'none' },
  };
}

/**
 * Off the bill; wear is not taken off here, for it stands in the life of the battery. Prices move and a drawn year is
 * one of many: a fifth either way, our judgement.
 */
function savingsRange(between: BetweenOutages | null) {
  const likely = between?.savings ?? 0;
  const ends = [0.8 * likely, 1.2 * likely].sort((a, b) => a - b);
  return { low: ends[0]!, likely, high: ends[1]! };
}

/** Getting ready first; then of the route advised what can be used at once, cheapest first, and what is wired in last. */
function boughtInOrder({ home, advice }: MoneyInput, able: readonly Route[]) {
  const ready = able.filter((route) => !isSource(traitsOf[route.kind]));
  if (!isSource(traitsOf[advice.route.kind]))
    return ready.flatMap((route) => costPartsOf(home, route));
  const parts = costPartsOf(home, advice.route);
  const loose = parts.filter((part) => part.movesHouse && part.equipmentClass !== 'soft-starter');
  loose.sort((a, b) => a.cost.likely - b.cost.likely);
  const wired = parts.filter((part) => !loose.includes(part));
  return [...ready.flatMap((route) => costPartsOf(home, route)), ...loose, ...wired];
}

/** Old prices, each once, with the routes they stand in. */
function oldPricesOf(routes: readonly MoneyOfRoute[], asOf: string): OldPriceIn[] {
  const found = new Map<string, OldPriceIn>();
  for (const { parts, called } of routes) {
    for (const price of oldPrices(parts, asOf)) {
      const key = JSON.stringify(price);
      const routes = found.get(key)?.routes ?? [];
      if (!routes.includes(called)) found.set(key, { price, routes: [...routes, called] });
    }
  }
  return [...found.values()];
}

function toldIncentive({ facts }: Home): IncentiveNote {
  const dollars = facts.told('incentive-total') ? facts.number('incentive-total') : null;
  if (dollars === null || dollars === 0) return { code: 'none-promised' };
  return { code: 'told', dollars, by: facts.choice('incentive-who') };
}
