import { largestStart } from '../../physics/largest-start';
import type { Load, Season } from '../home';
import { runsIn } from '../loads/demand';
import type { Saves } from './saves';

/**
 * What starting one after the other takes off the hardest start, VA, likely values. No size is ever counted on it: what
 * starts by itself may meet another in spite of it.
 */
export function apartStarts(loads: readonly Load[], seasons: readonly Season[]): Saves | null {
  const bySeason = seasons.map((season) => {
    const running = loads.filter(
      (load) => load.rank === 'must' && !load.offInOutage && runsIn(load, season),
    );
    const peak = (startsKeptApart: boolean) =>
      largestStart({
        startsKeptApart,
        loads: running.map((load) => ({
          id: load.id,
          runningVa: load.runningVa.value,
          startingVa: load.startVa?.value ?? load.runningVa.value,
          selfStarting: load.selfStarting,
        })),
      }).peakVa;
    return { season, startVa: peak(false) - peak(true) };
  });
  const most = bySeason.reduce((a, b) => (b.startVa > a.startVa ? b : a));
  if (most.startVa < 1) return null;
  return { of: 'must', runningWatts: 0, kwhPerDay: 0, packKwhPerDay: 0, ...most };
}
