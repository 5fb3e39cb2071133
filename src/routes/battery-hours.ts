import { toldToFreeze } from '../home/battery-place';
import type { Home, Load, Season } from '../home/home';
import type { SyntheticYears } from '../home/weather/synthetic-years';
import { neededForEveryStart } from '../outage/every-start';
import { hoursSurvived } from '../outage/hours-survived';
import { netEnergy, type StoreLimits } from '../outage/net-energy';
import { quantileInPlace } from '../outage/quantile';
import type { MonthSpan as Months } from '../outage/season';
import { cutToPieces, type SeasonPieces, startsOfPieces } from '../outage/season-pieces';
import { quantileOfYears } from '../outage/size-by-odds';
import { borrowHours, giveBack } from '../outage/spare-hours';
import { usableKwh } from '../physics/battery-capacity';
import { coldCapacity } from '../physics/cold-battery';
import { splitRoundTrip } from '../physics/round-trip';
import { HOURS_PER_YEAR } from '../physics/weather/calendar';
import type { HourSeries } from '../quantity/hour-series';
import { batteryType, coldPoints } from '../tables/battery-types';
import { practice } from '../tables/practice-figures';
import { hungryKw, hungryShare } from './hungry-share';
import type { SizeByOdds } from './route';

/** Months of each season of the plan. */
export const monthsOf: Readonly<Record<Season, Months>> = {
  winter: { firstMonth: 11, months: 3 },
  summer: { firstMonth: 5, months: 3 },
  mild: { firstMonth: 2, months: 3 },
};

/** A battery is planned at five years old, for it fades. */
export const PLANNED_AGE_YEARS = practice('planned-battery-age');
/** What an inverter for a house draws by being on, kW. */
export const IDLE_KW = practice('home-inverter-idle') / 1000;
/** Odds the plan is sized for. */
export const ODDS = 0.9;

const lfp = batteryType('lithium-iron-phosphate');

/** Usable kWh of a battery of so much nameplate, at its planned age and the cold of its place. */
export function usableOf(home: Home, nameplateKwh: number): number {
  return usableKwh({
    nameplateKwh,
    usableDepth: lfp.usableDepth,
    ageYears: PLANNED_AGE_YEARS,
    fadePerYear: lfp.fadePerYear,
    coldShare: coldCapacity(cellC(home), coldPoints(lfp)),
  });
}

/** Cells of a battery kept indoors, C. */
export const INDOORS_C = practice('indoor-cells');

/** Temperature of the cells on a hard day of the goal's seasons, C. */
export function cellC(home: Home): number {
  if (!home.goalSeasons.includes('winter')) return INDOORS_C;
  const outdoors = home.facts.is('battery-place', 'detached', 'outside-wall', 'shed-unheated');
  // A battery with its own heater keeps its cells near freezing on the coldest days.
  return outdoors || toldToFreeze(home.facts) ? 0 : INDOORS_C;
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

/** Net energy of every hour of the first so many drawn years for a battery that carries these loads, with so much sun on the roof. */
export function netOf(
  drawn: SyntheticYears,
  loads: readonly Load[],
  inverterKw: number,
  solarKw: number,
  years = drawn.years,
): Float64Array {
  const hours = Math.min(years, drawn.years) * HOURS_PER_YEAR;
  const loadKw = drawn.loadKw(loads).subarray(0, hours);
  const supplyKw = drawn.sunKw(solarKw).subarray(0, hours);
  const overloadKwh = borrowHours(loadKw.length);
  const netKwh = new Float64Array(loadKw.length);
  netEnergy({ loadKw, supplyKw, limits: limitsOf(inverterKw) }, { netKwh, overloadKwh });
  giveBack(overloadKwh);
  return netKwh;
}

/** What loads and sun do in the hours that outages of the goal's seasons may meet. */
export interface GoalHours {
  readonly pieces: SeasonPieces;
  readonly loadKw: HourSeries;
  /** The high end of every use over the likely one. */
  readonly hungry: number;
  /** From one kW of panels; null without a roof. */
  readonly sunKwPerKw: HourSeries | null;
}

/** The goal's seasons with these loads, one entry each. */
export function goalHours(home: Home, drawn: SyntheticYears, loads: readonly Load[]): GoalHours[] {
  const loadKw = drawn.loadKw(loads);
  const tailHours = longestCounted(home);
  return home.goalSeasons.map((season) => {
    const pieces = { season: monthsOf[season], tailHours };
    const sun = drawn.sunKwhPerKw();
    return {
      pieces,
      loadKw: cutToPieces(pieces, loadKw),
      hungry: hungryShare(loads, season),
      sunKwPerKw: sun === null ? null : cutToPieces(pieces, sun),
    };
  });
}

/** Net energy in those hours of a battery with an inverter of so many kW and so much sun. */
export function goalNet(
  { loadKw: likelyKw, sunKwPerKw, hungry }: GoalHours,
  inverterKw: number,
  solarKw: number,
  careful = false,
): Float64Array {
  const loadKw = careful ? hungryKw(likelyKw, hungry, inverterKw) : likelyKw;
  const supplyKw = borrowHours(loadKw.length);
  for (let i = 0; i < supplyKw.length; i++) {
    supplyKw[i] = sunKwPerKw === null ? 0 : sunKwPerKw[i]! * solarKw;
  }
  const overloadKwh = borrowHours(loadKw.length);
  const netKwh = new Float64Array(loadKw.length);
  netEnergy({ loadKw, supplyKw, limits: limitsOf(inverterKw) }, { netKwh, overloadKwh });
  giveBack(supplyKw, overloadKwh);
  return netKwh;
}

/** Net energy of one of the goal's seasons. */
export interface SeasonNet {
  readonly pieces: SeasonPieces;
  readonly netKwh: Float64Array;
}

/** Usable storage the goal asks for, by both measures, in the hardest of the goal's seasons. */
export function sizeFor(home: Home, nets: readonly SeasonNet[]): SizeByOdds {
  const hours = Math.round(home.goalHours.value);
  const sizes = nets.map(({ pieces, netKwh }) => {
    const starts = startsOfPieces(pieces, neededForEveryStart(netKwh, hours));
    return {
      years: quantileOfYears(starts, pieces.season, ODDS) ?? 0,
      outages: quantileInPlace(starts, ODDS) ?? 0,
    };
  });
  return {
    nineOutagesInTenKwh: Math.max(...sizes.map((size) => size.outages)),
    nineYearsInTenKwh: Math.max(...sizes.map((size) => size.years)),
  };
}

/** Longest outage looked at, h, where the goal is no longer. */
export const LIMIT_HOURS = 336;

/** Longest outage looked at for this home, h: nothing is said of hours that were not counted. */
export function longestCounted(home: Home): number {
  return Math.max(LIMIT_HOURS, Math.round(home.goalHours.value));
}

/**
 * Hours a full battery lasts, up to the longest outage counted: reached in 9, in 5 and in 1 of 10 outages of the
 * hardest goal season.
 */
export function hoursFrom(nets: readonly SeasonNet[], capKwh: number) {
  const bySeason = nets.map(({ pieces, netKwh }) => {
    const spare = borrowHours(netKwh.length);
    const survived = hoursSurvived({ netKwh, capKwh, limitHours: pieces.tailHours }, spare);
    const starts = startsOfPieces(pieces, survived);
    giveBack(spare);
    const at = (share: number) => quantileInPlace(starts, share) ?? 0;
    return { low: at(1 - ODDS), value: at(0.5), high: at(ODDS) };
  });
  return bySeason.reduce((a, b) => (b.value < a.value ? b : a));
}
