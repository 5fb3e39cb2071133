import type { Home, Load, Season } from '../../home/home';
import type { SyntheticYears } from '../../home/weather/synthetic-years';
import { traitsOf } from '../../kinds/route-traits';
import { NEGLIGIBLE_KWH, neededForEveryStart } from '../../outage/every-start';
import { generatorHoursSurvived } from '../../outage/generator-hours-survived';
import { type NetEnergy, netEnergy } from '../../outage/net-energy';
import { quantileInPlace } from '../../outage/quantile';
import { cutToPieces, type SeasonPieces, startsOfPieces } from '../../outage/season-pieces';
import { manyWalks } from '../../outage/walk/many-walks';
import type { WalkGenerator } from '../../outage/walk/system';
import { cutWindows, type Served, servedOf } from '../../outage/windows';
import { hoursOnBattery } from '../../outage/windows-on-battery';
import { hoursOnGenerator } from '../../outage/windows-on-generator';
import { HOURS_PER_YEAR } from '../../physics/weather/calendar';
import { type HourSeries, largestOf } from '../../quantity/hour-series';
import { monthsOf } from '../../routes/battery-hours';
import { hungryKw, hungryShare } from '../../routes/hungry-share';
import type { Route } from '../../routes/route';
import { sampledStarts } from './sampled-starts';
import { storeLimits, walkSystem } from './walk-system';
import { walkableOf } from './walkable';

/** What one size feeds, and by which count. */
export interface Feeding {
  readonly route: Route;
  readonly loads: readonly Load[];
  readonly careful: boolean;
}

/**
 * Outages of the goal's length that start in one season, for many sizes of many routes: what sizes have in common is worked out
 * once. At likely use a battery and a generator alone are counted from every start hour; by the careful count, and
 * where the store depends on the time since the start, from sampled starts (one in 185 h), as everywhere in the plan.
 */
export class SizeOdds {
  private readonly goal: number;
  private readonly starts: (years: number) => readonly number[];
  private readonly pieces: SeasonPieces;
  private readonly kept = new Map<string, unknown>();
  private last: (Feeding & { readonly years: number; readonly served: Served }) | null = null;

  constructor(
    private readonly home: Home,
    private readonly drawn: SyntheticYears,
    private readonly season: Season,
  ) {
    this.goal = Math.round(home.goalHours.value);
    const months = monthsOf[season];
    this.starts = (years) =>
      this.once(`starts:${years}`, () => sampledStarts(years * HOURS_PER_YEAR, months));
    // Whole days, as the passes ask.
    this.pieces = { season: months, tailHours: 24 * Math.ceil(this.goal / 24) };
  }

  /**
   * Share of such outages served to their end, 0 to 1. Where all sampled starts go alike, a thousand of them in a hundred
   * years, the others are not counted: it is less than 1 in 100 from that end.
   */
  share(feeding: Feeding): number {
    const { route, careful, loads } = feeding;
    const share = this.sampledShare(feeding);
    const alike = share === 0 || share === 1;
    if (careful || loads.length === 0 || isWalked(route) || (alike && this.manyStarts())) {
      return share;
    }
    if (route.generator !== null) return this.countedOnGenerator(feeding);
    return route.usableKwh === null ? share : this.countedOnBattery(feeding);
  }

  /** The same from sampled starts alone. */
  sampledShare(feeding: Feeding): number {
    return this.sampled(feeding, this.drawn.years).share;
  }

  private manyStarts(): boolean {
    return this.starts(this.drawn.years).length >= MANY_STARTS;
  }

  /** Mean share of their hours served before the first that is not, 0 to 1: from the first drawn years, to keep a plan quick. */
  meanShare(feeding: Feeding): number {
    return this.sampled(feeding, Math.min(SHARE_YEARS, this.drawn.years)).meanShare;
  }

  /** The longest outage, at most the goal's length, of which so large a share is served to its end, h. */
  hoursReached(feeding: Feeding, share: number): number {
    return quantileInPlace(this.hoursServed(feeding, this.drawn.years), 1 - share) ?? 0;
  }

  /** What was asked last is kept: the odds of a size and its mean share are asked one after the other. */
  private sampled(feeding: Feeding, years: number): Served {
    const { last } = this;
    const same =
      last?.route === feeding.route &&
      last.loads === feeding.loads &&
      last.careful === feeding.careful &&
      last.years === years;
    if (last !== null && same) return last.served;
    const served = servedOf(this.hoursServed(feeding, years), this.goal);
    this.last = { ...feeding, years, served };
    return served;
  }

  /** From sampled starts of the first drawn years. */
  private hoursServed(feeding: Feeding, years: number): Float64Array {
    const { route, loads } = feeding;
    const fed = loads.length > 0 && (route.generator !== null || route.usableKwh !== null);
    if (!fed) return new Float64Array(this.starts(years).length);
    if (isWalked(route)) return this.walked(feeding, years);
    if (route.generator !== null) {
      const loadKw = this.loadWindows(feeding, years);
      const starts = this.starts(years);
      return hoursOnGenerator({ loadKw, starts }, this.goal, this.generatorOf(feeding));
    }
    return hoursOnBattery(this.netWindows(feeding, years), this.goal, route.usableKwh!);
  }

  private countedOnBattery(feeding: Feeding): number {
    const enough = feeding.route.usableKwh! + NEGLIGIBLE_KWH;
    const needed = this.needed(feeding);
    let rides = 0;
    for (let i = 0; i < needed.length; i++) if (needed[i]! <= enough) rides += 1;
    return needed.length === 0 ? 0 : rides / needed.length;
  }

  private countedOnGenerator(feeding: Feeding): number {
    const { loads } = feeding;
    const loadKw = this.once(`pieces:${keyOf(loads)}`, () =>
      cutToPieces(this.pieces, this.drawn.loadKw(loads)),
    );
    const generator = this.generatorOf(feeding);
    const survived = generatorHoursSurvived({ loadKw, generator, limitHours: this.goal });
    return servedOf(startsOfPieces(this.pieces, survived), this.goal).share;
  }

  private generatorOf(feeding: Feeding): WalkGenerator {
    return walkSystem(this.home, feeding.route, { ...feeding, season: this.season }).generator!;
  }

  /** Usable storage that each start hour of the season asks for, kWh. */
  private needed(feeding: Feeding): Float64Array {
    return this.once(`needed:${this.netKey(feeding, this.drawn.years)}`, () => {
      const { netKwh, overloadKwh } = netEnergy({
        loadKw: cutToPieces(this.pieces, this.drawn.loadKw(feeding.loads)),
        supplyKw: cutToPieces(this.pieces, this.drawn.sunKw(feeding.route.solarKw ?? 0)),
        limits: storeLimits(feeding.route, { ...feeding, season: this.season }),
      });
      for (let t = 0; t < netKwh.length; t++) {
        if (overloadKwh[t]! > NEGLIGIBLE_KWH) netKwh[t] = -Number.MAX_SAFE_INTEGER;
      }
      return startsOfPieces(this.pieces, neededForEveryStart(netKwh, this.goal));
    });
  }

  private netWindows(feeding: Feeding, years: number): NetEnergy {
    return this.once(`windows:${years}:${this.netKey(feeding, years)}`, () =>
      netEnergy({
        loadKw: this.loadWindows(feeding, years),
        supplyKw: this.sunWindows(feeding.route.solarKw ?? 0, years),
        limits: storeLimits(feeding.route, { ...feeding, season: this.season }),
      }),
    );
  }

  private sunWindows(solarKw: number, years: number): Float64Array {
    return this.once(`sun:${years}:${solarKw}`, () => {
      const sunKw = this.drawn.sunKw(solarKw).subarray(0, years * HOURS_PER_YEAR);
      return cutWindows(sunKw, this.starts(years), this.goal);
    });
  }

  /** The hours of the loads; by the careful count at hungry use, no hour lifted above what the source gives. */
  private loadWindows({ route, loads, careful }: Feeding, years: number): HourSeries {
    const likely = this.once(`load:${years}:${keyOf(loads)}`, () =>
      cutWindows(this.drawn.loadKw(loads, years), this.starts(years), this.goal),
    );
    if (!careful) return likely;
    const mostKw = (route.power?.continuousWatts ?? Infinity) / 1000;
    const share = hungryShare(loads, this.season);
    return hungryKw(likely, share, mostKw);
  }

  private walked({ route, loads, careful }: Feeding, years: number): Float64Array {
    const way = walkableOf(this.home, this.drawn, route, {
      classes: [loads],
      season: this.season,
      careful,
      years,
    });
    const walk = manyWalks(way.system, way.record);
    const outage = { outageHours: this.goal, startKwh: way.startKwh };
    return Float64Array.from(this.starts(years), (start) => walk({ start, ...outage }).hoursServed);
  }

  private netKey({ route, loads, careful }: Feeding, years: number): string {
    const { idleKw, dischargeKw } = storeLimits(route, { loads, season: this.season, careful });
    const solarKw = route.solarKw ?? 0;
    const plenty = !careful && dischargeKw >= this.mostPassing(loads, solarKw, years);
    return `${careful} ${solarKw} ${plenty ? '' : dischargeKw} ${idleKw} ${keyOf(loads)}`;
  }

  /** The most that an hour takes out of a battery or puts in, kW: an inverter that passes it limits nothing. */
  private mostPassing(loads: readonly Load[], solarKw: number, years: number): number {
    const ofLoads = this.once(`most:${years}:${keyOf(loads)}`, () =>
      largestOf(this.drawn.loadKw(loads, years)),
    );
    const ofSun =
      solarKw === 0
        ? 0
        : this.once(`most-sun:${solarKw}`, () => largestOf(this.drawn.sunKw(solarKw)));
    return Math.max(ofLoads, ofSun);
  }

  private once<T>(key: string, make: () => T): T {
    if (!this.kept.has(key)) this.kept.set(key, make());
    return this.kept.get(key) as T;
  }
}

/** Drawn years that tell how much of the job is done where the goal is not reached. */
const SHARE_YEARS = 20;

/** So many starts that go alike tell of the rest. */
const MANY_STARTS = 1000;

/** Its store depends on the time since the start. */
const isWalked = ({ generator, usableKwh, kind }: Route): boolean =>
  traitsOf[kind].vehicle || (generator !== null && usableKwh !== null);

const keys = new WeakMap<readonly Load[], string>();

/** What the hours of loads, likely and hungry, depend on; made once for each list. */
function keyOf(loads: readonly Load[]): string {
  const known = keys.get(loads) ?? madeKey(loads);
  keys.set(loads, known);
  return known;
}

function madeKey(loads: readonly Load[]): string {
  return loads
    .map(({ id, steadyShape, kwhPerDay: { winter, summer, mild } }) =>
      [
        id,
        steadyShape !== undefined,
        winter.value,
        winter.high,
        summer.value,
        summer.high,
        mild.value,
      ].join(':'),
    )
    .join(' ');
}
