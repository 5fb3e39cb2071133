import type { Home, Load, Season } from '../home/home';
import type { World } from '../home/world';
import { neededForEveryStart } from '../outage/every-start';
import { hoursSurvived } from '../outage/hours-survived';
import { netEnergy, type StoreLimits } from '../outage/net-energy';
import { quantileInPlace } from '../outage/quantile';
import type { Season as Months } from '../outage/season';
import { valuesInSeason } from '../outage/season-starts';
import { sizeForShareOfOutages, sizeForShareOfYears } from '../outage/size-by-odds';
import { borrowHours, giveBack } from '../outage/spare-hours';
import { usableKwh } from '../physics/battery-capacity';
import { coldCapacity } from '../physics/cold-battery';
import { splitRoundTrip } from '../physics/round-trip';
import { batteryType, coldPoints } from '../tables/battery-types';
import type { SizeByOdds } from './route';

/** Months of each season of the plan. */
export const monthsOf: Readonly<Record<Season, Months>> = {
  winter: { firstMonth: 11, months: 3 },
  summer: { firstMonth: 5, months: 3 },
  mild: { firstMonth: 2, months: 3 },
};

/** A battery is planned at five years old: 2 % a year has faded by then. */
export const PLANNED_AGE_YEARS = 5;
/** What an inverter for a house draws by being on, kW. Common practice, 20 to 100 W. */
export const IDLE_KW = 0.05;
/** Odds the plan is sized for. */
export const ODDS = 0.9;

const lfp = batteryType('lithium-iron-phosphate');

/** Usable kWh of a battery of so much nameplate, at its planned age and the cold of its place. */
export function usableOf(home: Home, nameplateKwh: number): number {
  const outdoors = home.facts.is('battery-place', 'detached', 'outside-wall', 'shed-unheated');
  // A battery with its own heater keeps its cells near freezing on the coldest days.
  const cellC = outdoors && home.goalSeasons.includes('winter') ? 0 : 20;
  return usableKwh({
    nameplateKwh,
    usableDepth: lfp.usableDepth,
    ageYears: PLANNED_AGE_YEARS,
    fadePerYear: lfp.fadePerYear,
    coldShare: coldCapacity(cellC, coldPoints(lfp)),
  });
}

/** Limits of a battery with an inverter of so many kW. */
export function limitsOf(inverterKw: number): StoreLimits {
  return {
    chargeKw: inverterKw,
    dischargeKw: inverterKw,
    ...splitRoundTrip(lfp.roundTrip),
    idleKw: IDLE_KW,
  };
}

/** Net energy of every hour for a battery that carries these loads, with so much sun on the roof. */
export function netOf(
  world: World,
  loads: readonly Load[],
  inverterKw: number,
  solarKw: number,
): Float64Array {
  const loadKw = world.loadKw(loads);
  const supplyKw = world.sunKw(solarKw);
  const overloadKwh = borrowHours(loadKw.length);
  const netKwh = new Float64Array(loadKw.length);
  netEnergy({ loadKw, supplyKw, limits: limitsOf(inverterKw) }, { netKwh, overloadKwh });
  giveBack(overloadKwh);
  return netKwh;
}

/** Usable storage the goal asks for, by both measures, in the hardest of the goal's seasons. */
export function sizeFor(home: Home, net: Float64Array): SizeByOdds {
  const hours = Math.round(home.goalHours.value);
  const spare = borrowHours(net.length);
  const needed = neededForEveryStart(net, hours, spare);
  const most = (size: (months: Months) => number | null) =>
    Math.max(...home.goalSeasons.map((season) => size(monthsOf[season]) ?? 0));
  const size = {
    nineOutagesInTenKwh: most((months) => sizeForShareOfOutages(needed, months, ODDS)),
    nineYearsInTenKwh: most((months) => sizeForShareOfYears(needed, months, ODDS)),
  };
  giveBack(spare);
  return size;
}

/** Longest outage looked at, h. */
export const LIMIT_HOURS = 336;

/** Hours a full battery lasts: reached in 9, in 5 and in 1 of 10 outages of the hardest goal season. */
export function hoursFrom(home: Home, net: Float64Array, capKwh: number) {
  const spare = borrowHours(net.length);
  const survived = hoursSurvived({ netKwh: net, capKwh, limitHours: LIMIT_HOURS }, spare);
  const bySeason = home.goalSeasons.map((season) => {
    const starts = valuesInSeason(monthsOf[season], survived);
    const at = (share: number) => quantileInPlace(starts, share) ?? 0;
    return { low: at(1 - ODDS), value: at(0.5), high: at(ODDS) };
  });
  giveBack(spare);
  return bySeason.reduce((a, b) => (b.value < a.value ? b : a));
}
