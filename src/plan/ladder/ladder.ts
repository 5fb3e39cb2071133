import type { Home, Load } from '../../home/home';
import type { LoadId } from '../../home/loads/load-id';
import { wasAskedAbout } from '../../home/loads/load-told';
import { livedHome } from '../../home/measures/lived-home';
import type { Route } from '../../routes/route';
import { atRisk } from '../../rules/when/at-risk';

/** Why things go off at a rung; the last one names what stays on: devices of life, else what a home keeps to the end. */
export type WhyOff =
  | { readonly code: 'from-the-start' | 'no-source' | 'good-to-have' | 'thrifty' | 'comfort' }
  | { readonly code: 'by-need'; readonly fridge: boolean }
  | {
      readonly code: 'leaving';
      readonly life: readonly LoadId[];
      readonly left: readonly LoadId[];
    };

/** What goes off at which level of charge or fuel, and what that buys. */
export interface LadderStep {
  /** Share of the charge, or of the fuel, that is left, %; 100 is "from the start". */
  readonly atPercent: number;
  readonly switchOff: readonly LoadId[];
  /** Runs thriftily from here on, by its turns or its allotment; it stays on. */
  readonly lessens: readonly LoadId[];
  /** Average power saved on a hard day, W. */
  readonly savesWatts: number;
  /**
   * Hours gained against not switching off, walked hour by hour, by the likely count; null where no store runs down, or
   * it buys next to nothing.
   */
  readonly gainsHours: number | null;
  /** The same by the careful count. */
  readonly carefulGainsHours: number | null;
  readonly why: WhyOff;
}

/**
 * Levels at which good-to-have loads go off, the home begins to live thriftily, and must-run loads go off. Life support is
 * never on the ladder.
 */
const LEVELS = { good: 70, thrifty: 60, comfort: 50, house: 30 } as const;

/** Must-run loads a home can do without for some hours, in the order in which they go. */
const comfortFirst = [
  'laptop',
  'desktop',
  'heat-pump',
  'central-ac',
  'room-ac',
  'room-heater',
  'room-cooler',
  'mini-split',
  'water-heater',
];
/** What protects people or the house stays to the last rung. */
const keepToTheEnd = [
  'sump',
  'furnace-gas',
  'furnace-oil',
  'boiler',
  'pellet-stove',
  'phone-charging',
  'waste',
  'lights-led',
];

/** A sump pump, a light and a phone go last of all. */
const lastOn = ['sump', 'phone-charging', 'lights-led'];

/**
 * The order in which things go off, from the start of the outage down to what only life support keeps. What each
 * step buys is not known until it is walked (ride-through/ladder-walk.ts).
 */
export function ladderOf(home: Home, route: Route): LadderStep[] {
  const carried = new Set(route.carries);
  const thrift = thriftOf(home, route);
  const on = home.loads
    .filter((load) => carried.has(load.id) && !thrift.needless.includes(load.id))
    .map(keepMedical);
  const toTheEnd = (load: Load) => keepToTheEnd.includes(load.id) || keepsSafe(home, load);
  const groups: { atPercent: number; loads: Load[]; why: WhyOff }[] = [
    {
      atPercent: LEVELS.good,
      loads: on.filter((l) => l.rank !== 'must' && !l.life && !keepsSafe(home, l)),
      why: { code: 'good-to-have' },
    },
    {
      atPercent: LEVELS.comfort,
      loads: on.filter(
        (l) => l.rank === 'must' && !l.life && comfortFirst.includes(l.id) && !toTheEnd(l),
      ),
      why: { code: 'comfort' },
    },
    {
      atPercent: LEVELS.house,
      loads: on.filter(
        (l) => l.rank === 'must' && !l.life && !comfortFirst.includes(l.id) && !toTheEnd(l),
      ),
      why: { code: 'by-need', fridge: on.some((l) => l.id === 'fridge') },
    },
  ];
  if (on.length === 0) return [withoutPower(home)];
  const steps = [fromTheStart(home, carried)];
  const rungs = groups.filter((g) => g.loads.length > 0).map(rungOf(home));
  const thrifty = thriftyRung(home, thrift);
  steps.push(
    ...[...rungs, ...thrifty].sort((a, b) => b.atPercent - a.atPercent),
    lastStep(home, on),
  );
  return steps;
}

const rungOf =
  (home: Home) =>
  (group: { atPercent: number; loads: Load[]; why: WhyOff }): LadderStep => ({
    atPercent: group.atPercent,
    switchOff: group.loads.map((load) => load.id),
    lessens: [],
    savesWatts: wattsOf(home, group.loads),
    gainsHours: null,
    carefulGainsHours: null,
    why: group.why,
  });

/** What living thriftily makes needless of what must run, and what it lessens. */
interface Thrift {
  readonly needless: readonly LoadId[];
  readonly lessened: readonly LoadId[];
  /** The same loads as they go thriftily, by id. */
  readonly loads: ReadonlyMap<LoadId, Load>;
}

/** Nothing is left to lessen for a route that is sized for the thrifty way. */
function thriftOf(home: Home, { carries, way }: Route): Thrift {
  const loads = new Map(livedHome(home, 'thrifty').loads.map((load) => [load.id, load]));
  const own = home.loads.filter(
    (load) => way === 'usual' && load.rank === 'must' && carries.includes(load.id),
  );
  const day = (load: Load) =>
    Math.max(...home.goalSeasons.map((season) => load.kwhPerDay[season].value));
  return {
    needless: own.filter(({ id }) => !loads.has(id)).map(({ id }) => id),
    lessened: own
      .filter((load) => loads.has(load.id) && day(loads.get(load.id)!) < day(load))
      .map(({ id }) => id),
    loads,
  };
}

/** The way from living as usual to living thriftily; empty where there is none. */
function thriftyRung(home: Home, { needless, lessened, loads }: Thrift): LadderStep[] {
  if (needless.length + lessened.length === 0) return [];
  const of = (ids: readonly LoadId[]) => home.loads.filter(({ id }) => ids.includes(id));
  const less = lessened.map((id) => loads.get(id)!);
  return [
    {
      atPercent: LEVELS.thrifty,
      switchOff: needless,
      lessens: lessened,
      savesWatts: wattsOf(home, of([...needless, ...lessened])) - wattsOf(home, less),
      gainsHours: null,
      carefulGainsHours: null,
      why: { code: 'thrifty' },
    },
  ];
}

/** Heat in winter and cooling in summer are no comfort where the room's cold or heat makes somebody ill. */
function keepsSafe(home: Home, load: Load): boolean {
  const needed = (by: 'cold' | 'heat', season: 'winter' | 'summer') =>
    load.follows !== 'neither' &&
    load.follows !== 'room' &&
    load.kwhPerDay[season].value > 0 &&
    home.goalSeasons.includes(season) &&
    atRisk(home, by) !== null;
  return needed('cold', 'winter') || needed('heat', 'summer');
}

/** What went off at no step before: things that protect, told as must-run, and heat or cooling without which somebody falls ill. */
function goesLast(home: Home, load: Load): boolean {
  return keepsSafe(home, load) || (load.rank === 'must' && keepToTheEnd.includes(load.id));
}

/** A device somebody needs for health never goes off, whether life hangs on it or not. */
function keepMedical(load: Load): Load {
  return load.restsOn.includes('medical-devices') ? { ...load, life: true } : load;
}

/** What this route does not run, of the things the home has: never a health device, which has its own battery or second way. */
function fromTheStart(home: Home, carried: ReadonlySet<LoadId>): LadderStep {
  const off = livedHome(home, 'usual')
    .loads.map(keepMedical)
    .filter(
      (load) =>
        !carried.has(load.id) &&
        !load.life &&
        !load.onlyInOutage &&
        wasAskedAbout(home.facts, load),
    );
  return {
    atPercent: 100,
    switchOff: off.map((load) => load.id),
    lessens: [],
    savesWatts: 0,
    gainsHours: null,
    carefulGainsHours: null,
    why: { code: 'from-the-start' },
  };
}

/** Where nothing gives power there is no level to go by: what can wait goes off, so that it does not start unseen. */
function withoutPower(home: Home): LadderStep {
  const { switchOff, ...step } = fromTheStart(home, new Set());
  const waits = new Set(home.loads.filter((l) => l.rank === 'wait').map((l) => l.id));
  return {
    ...step,
    switchOff: switchOff.filter((id) => waits.has(id)),
    why: { code: 'no-source' },
  };
}

function lastStep(home: Home, on: readonly Load[]): LadderStep {
  const life = on.filter((load) => load.life).map((load) => load.id);
  const rest = on
    .filter((load) => !load.life && !lastOn.includes(load.id) && goesLast(home, load))
    .map((load) => load.id);
  return {
    atPercent: 15,
    switchOff: rest,
    lessens: [],
    savesWatts: 0,
    gainsHours: null,
    carefulGainsHours: null,
    why: {
      code: 'leaving',
      life,
      left: on.filter((load) => lastOn.includes(load.id)).map((load) => load.id),
    },
  };
}

/** Average power on the hardest of the goal's days, W. */
function wattsOf(home: Home, loads: readonly Load[]): number {
  const day = (season: (typeof home.goalSeasons)[number]) =>
    loads.reduce((sum, load) => sum + load.kwhPerDay[season].value, 0);
  return (Math.max(0, ...home.goalSeasons.map(day)) * 1000) / 24;
}
