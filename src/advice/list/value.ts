import type { Home, Load } from '../../home/home';
import { healthHangs, isHealthDevice } from '../../home/people/health-devices';
import { hasPortableGenerator, isPack } from '../../kinds/ask-traits';
import { traitsOf } from '../../kinds/route-traits';
import { fedHome } from '../../routes/fed-home';
import { sizedByYears } from '../../routes/kinds/fixed-battery-size';
import { loadsOf } from '../../routes/pick-loads';
import type { Route } from '../../routes/route';
import type { SizedKind } from '../../routes/sized';
import type { SizeOdds } from '../ride/size-odds';
import { doesWholeJob } from '../whole-job';
import type { Candidate } from './candidate';
import { ENOUGH } from './enough';

/**
 * How good a size is, in the order in which it counts. Shares are whole percent, as they are printed: less than one in a
 * hundred is no difference to pay for.
 */
export interface Value {
  /** Where life hangs on a device: outages of the goal's length that carry the devices alone, careful; else null. */
  readonly devices: number | null;
  /**
   * The outages carried, as below, are enough; and where life hangs on power, or may, the stricter sizing of its kind
   * says so as well.
   */
  readonly sure: boolean;
  /** The same outages with all that must run and that any backup can carry; 0 where something of it is left out. */
  readonly odds: number;
  /** It carries all that must run for the time asked on a hard day too, with everything on that it carries. */
  readonly full: boolean;
  /**
   * It carries all of that for at least half of the hours, or for a day on stored fuel that can be fetched again: a furnace left out is not
   * made up for by a refrigerator that runs for longer.
   */
  readonly long: boolean;
  /** Things carried of those that must run x mean share of the hours served. */
  readonly share: number;
}

/** Which loads and which count a home's list goes by. */
export interface Weighing {
  readonly must: readonly Load[];
  readonly devices: readonly Load[] | null;
  /** What a battery for one job would carry: a pack with the rest unplugged does as much. Null: that is a health device. */
  readonly oneJob: readonly Load[] | null;
  readonly careful: boolean;
  readonly goalHours: number;
}

/** Careful where life or health hangs on power, or nobody knows. */
export function weighingOf(home: Home, kinds: readonly SizedKind[]): Weighing {
  const must = loadsOf(home, ['must']);
  const one = kinds.find(({ route }) => traitsOf[route.kind].oneJob && route.carries.length > 0);
  const oneJob = one === undefined ? null : carriedOf(one.route.carries, must);
  const devices = home.loads.filter(isHealthDevice);
  return {
    must,
    oneJob: oneJob?.some(isHealthDevice) ? null : oneJob,
    devices: home.lifeSupport === 'yes' && devices.length > 0 ? devices : null,
    careful: healthHangs(home),
    goalHours: home.goalHours.value,
  };
}

/** The most a candidate can come to, before anything is counted. */
export function boundOf({ counted, living }: Candidate, { must, devices }: Weighing): Value {
  const all = carriesAll(counted.carries, must);
  return {
    devices: devices === null ? null : carriesAll(counted.carries, devices) ? 100 : 0,
    odds: all ? 100 : 0,
    sure: true,
    full: doesWholeJob(living.home, counted),
    long: all,
    share: must.length === 0 ? 100 : percent(carriedOf(counted.carries, must).length / must.length),
  };
}

export function worthOf(candidate: Candidate, by: Weighing, odds: SizeOdds): Value {
  const { counted, living } = candidate;
  const bound = boundOf(candidate, by);
  if (by.must.length === 0) return { ...bound, sure: isSure(candidate, bound.odds) };
  const carried = carriedOf(counted.carries, loadsOf(fedHome(counted.kind, living.home), ['must']));
  const feeding = { route: counted, careful: by.careful };
  const meanShare = odds.meanShare({ ...feeding, loads: carried });
  const allOdds = bound.odds === 0 ? 0 : percent(odds.share({ ...feeding, loads: carried }));
  return {
    devices:
      by.devices === null || bound.devices === 0
        ? bound.devices
        : percent(odds.share({ ...feeding, loads: by.devices, careful: true })),
    odds: allOdds,
    sure: isSure(candidate, allOdds),
    full: bound.full,
    long: bound.long && isLong(counted, meanShare, by.goalHours),
    share: Math.max(
      percent((meanShare * carried.length) / Math.max(1, by.must.length)),
      oneJobShare(candidate, by, odds),
    ),
  };
}

const isSure = ({ counted, living }: Candidate, odds: number): boolean =>
  odds >= ENOUGH && (!sizedByYears(living.home) || counted.lasting.reachesGoal);

/** With all but one job unplugged. */
function oneJobShare({ counted }: Candidate, by: Weighing, odds: SizeOdds): number {
  const { oneJob, must, careful } = by;
  if (oneJob === null || !isPack(traitsOf[counted.kind]) || !carriesAll(counted.carries, oneJob)) {
    return 0;
  }
  const meanShare = odds.meanShare({ route: counted, loads: oneJob, careful });
  return percent((meanShare * oneJob.length) / Math.max(1, must.length));
}

/** Above 0: `a` is worth more. */
export function compareValues(a: Value, b: Value): number {
  return (
    (a.devices ?? 0) - (b.devices ?? 0) ||
    Number(a.sure) - Number(b.sure) ||
    a.odds - b.odds ||
    Number(a.full) - Number(b.full) ||
    Number(a.long) - Number(b.long) ||
    a.share - b.share
  );
}

export const NO_VALUE: Value = {
  devices: null,
  odds: 0,
  sure: false,
  full: false,
  long: false,
  share: 0,
};

/** Everything for so much of the time goes before a part of it for longer. Our judgement. */
const LONG_SHARE = 0.5;
/** In so many hours a household can fetch fuel again, by daylight. Our judgement; no odds count on it. */
const FETCH_HOURS = 24;

function isLong({ kind, fuel }: Route, meanShare: number, goalHours: number): boolean {
  const fetched = hasPortableGenerator(traitsOf[kind]) && fuel !== null && fuel.atHand !== null;
  return meanShare >= LONG_SHARE || (fetched && meanShare * goalHours >= FETCH_HOURS);
}

const carriedOf = (carries: readonly string[], loads: readonly Load[]) =>
  loads.filter(({ id }) => carries.includes(id));

const carriesAll = (carries: readonly string[], loads: readonly Load[]) =>
  loads.every(({ id }) => carries.includes(id));

/** Whole percent, as it is said: 100 is "more than 99", 0 is "fewer than 1". */
const percent = (share: number): number => Math.round(100 * share);
