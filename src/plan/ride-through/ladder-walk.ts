import { LADDER_YEARS, MEANS_EVERY_HOURS, sampledStarts } from '../../advice/ride/sampled-starts';
import { HARD_START, MIDDLE_START } from '../../advice/ride/start-shares';
import { type Walkable, walkableOf } from '../../advice/ride/walkable';
import { walkedShare } from '../../advice/ride/walked-odds';
import { type Home, type Load, type Season, seasons } from '../../home/home';
import { livedHome } from '../../home/measures/lived-home';
import type { SyntheticYears } from '../../home/weather/synthetic-years';
import { ladderGains } from '../../outage/walk/ladder-gain';
import { SAMPLE_EVERY_HOURS } from '../../outage/walk/sampled-odds';
import type { Route } from '../../routes/route';
import type { LadderStep } from '../ladder/ladder';
import { LENGTHS } from './lengths';
import type { Variant } from './ride-through';

/** The order of switching off, followed hour by hour. */
export interface LadderWalk {
  /** The same steps, with the hours each buys. */
  readonly steps: readonly LadderStep[];
  /** Odds of what stays on to the end; null where nothing runs down or nothing goes off on the way. */
  readonly variant: Variant | null;
}

/** Less than this is not worth a line, h. */
const LEAST_GAIN_HOURS = 0.5;

/**
 * Walks outages in which each thing goes off when the store falls to its step, with everything the route carries on
 * at first. What a step buys is the hours served with it less those without, of outages of at most two weeks, by both
 * counts: likely, and careful.
 */
export function walkLadder(
  home: Home,
  drawn: SyntheticYears,
  route: Route,
  steps: readonly LadderStep[],
  season: Season,
): LadderWalk {
  const carried = livedHome(home, route.way).loads.filter((load) =>
    route.carries.includes(load.id),
  );
  const rungs = steps.filter(
    (step) => step.atPercent < 100 && step.switchOff.length + step.lessens.length > 0,
  );
  const wayBy = (careful: boolean) =>
    wayWith(home, drawn, route, { carried, rungs, season, careful });
  const way = wayBy(false);
  if (rungs.length === 0 || !runsDown(way))
    return { steps: withGains(steps, () => null), variant: null };
  const hard = wayBy(true);
  const likely = gainsOf(way, MIDDLE_START);
  const careful = gainsOf(hard, HARD_START);
  const off = (upTo: number) => new Set(rungs.slice(0, upTo + 1).flatMap((step) => step.switchOff));
  // A store that lasts because nothing runs from it has bought nobody anything.
  const nothingOn = (i: number) => carried.every((load) => off(i).has(load.id));
  const bought = (step: LadderStep) => {
    const i = rungs.indexOf(step);
    return i < 0 || nothingOn(i) ? null : { likely: likely[i]!, careful: careful[i]! };
  };
  const goal = Math.round(home.goalHours.value);
  return {
    steps: withGains(steps, bought),
    variant: {
      use: { code: 'switched-off-in-order' },
      ...walkedShare(way, goal, SAMPLE_EVERY_HOURS),
      carefulShare: walkedShare(hard, goal, MEANS_EVERY_HOURS).share,
    },
  };
}

/** Hours each rung buys, at one place among the start hours. */
function gainsOf({ system, record, startKwh, months }: Walkable, startShare: number): number[] {
  const starts = sampledStarts(record.solarKw.length, months);
  const outageHours = LENGTHS.at(-1)!;
  return ladderGains({ system, record, starts, outageHours, startKwh, startShare })
    .slice(1)
    .map((gain) => gain.gainedHours);
}

interface Bought {
  readonly likely: number;
  readonly careful: number;
}

function withGains(steps: readonly LadderStep[], bought: (step: LadderStep) => Bought | null) {
  const worth = (hours = 0) => (hours < LEAST_GAIN_HOURS ? null : hours);
  return steps.map((step) => {
    const hours = bought(step);
    return {
      ...step,
      gainsHours: worth(hours?.likely),
      carefulGainsHours: worth(hours?.careful),
    };
  });
}

interface Rungs {
  readonly carried: readonly Load[];
  readonly rungs: readonly LadderStep[];
  readonly season: Season;
  readonly careful: boolean;
}

function wayWith(
  home: Home,
  drawn: SyntheticYears,
  route: Route,
  { carried, rungs, season, careful }: Rungs,
): Walkable {
  const goesOff = new Set(rungs.flatMap((step) => step.switchOff));
  const lessens = new Set(rungs.flatMap((step) => step.lessens));
  const thrifty = new Map(livedHome(home, 'thrifty').loads.map((load) => [load.id, load]));
  const lasting = (load: Load) =>
    lessens.has(load.id) ? { ...load, kwhPerDay: thrifty.get(load.id)!.kwhPerDay } : load;
  const stays = carried.filter((load) => !goesOff.has(load.id)).map(lasting);
  return walkableOf(home, drawn, route, {
    season,
    careful,
    years: LADDER_YEARS,
    classes: [
      stays,
      ...rungs.map((step) => [
        ...carried.filter((load) => step.switchOff.includes(load.id)).map(lasting),
        ...carried
          .filter((load) => step.lessens.includes(load.id))
          .map((load) => restOf(load, thrifty.get(load.id)!)),
      ]),
    ],
    ladder: rungs.map((step, i) => ({ load: i + 1, offBelow: step.atPercent / 100 })),
  });
}

/** Piped gas never falls to a step, and a route without a store has none. */
function runsDown({ system: { battery, generator, vehicle } }: Walkable): boolean {
  if (battery !== null || vehicle !== null) return true;
  return generator !== null && Number.isFinite(generator.fuelAtStart);
}

/** What a load uses as usual beyond what it does thriftily, in its usual hours: the walk takes it off at its rung. */
function restOf(usual: Load, thrifty: Load): Load {
  const kwhPerDay = Object.fromEntries(
    seasons.map((season) => {
      const [a, b] = [usual.kwhPerDay[season], thrifty.kwhPerDay[season]];
      const value = Math.max(0, a.value - b.value);
      const [low, high] = [Math.max(0, a.low - b.low), Math.max(0, a.high - b.high)];
      return [season, { ...a, value, low: Math.min(low, value), high: Math.max(high, value) }];
    }),
  ) as Load['kwhPerDay'];
  return { ...usual, kwhPerDay };
}
