import { hardestSeason } from '../advice/hardest-season';
import type { Home, Season } from '../home/home';
import type { LoadId } from '../home/loads/load-id';
import type { Figure } from '../quantity/figure';
import { mustLoads } from '../routes/must-carried';
import { type OneRoom, oneRoomOf } from './one-room';

/** The job of this home: what must run and for how long, how hard that is, what it takes in a day. */
export interface Job {
  readonly goalHours: number;
  readonly seasons: readonly Season[];
  /** Null where nothing was named that must keep running. */
  readonly must: MustOfJob | null;
}

export interface MustOfJob {
  readonly loads: readonly LoadId[];
  /** Named, but more than any backup carries: it stands beside the sums instead of in them. */
  readonly tooMuch: readonly LoadId[];
  /** Null where the whole home is heated and cooled as ever. */
  readonly oneRoom: OneRoom | null;
  /** All that backup can carry running at once, W. */
  readonly runningWatts: Figure;
  /** The motors of the hardest moment; none: everything switched on at once. */
  readonly startsTogether: readonly LoadId[];
  /** What that moment asks for, VA. */
  readonly startVa: Figure;
  /** The season in which a day takes most, and a hard day of it, kWh. */
  readonly hardSeason: Season;
  readonly kwhOfHardDay: Figure;
}

export function jobOf(home: Home): Job {
  return {
    goalHours: home.goalHours.value,
    seasons: home.goalSeasons,
    must: mustOfJob(home),
  };
}

function mustOfJob(home: Home): MustOfJob | null {
  const told = mustLoads(home);
  if (told.length === 0) return null;
  const { must } = home.demand;
  const hardSeason = hardestSeason(home);
  return {
    loads: told.map(({ id }) => id),
    tooMuch: told.filter((load) => load.offInOutage).map(({ id }) => id),
    oneRoom: oneRoomOf(home),
    runningWatts: must.runningWatts,
    startsTogether: must.startsTogether,
    startVa: must.startVa,
    hardSeason,
    kwhOfHardDay: must.kwhPerDay[hardSeason],
  };
}
