import { quantileInPlace } from '../quantile';
import { requireRecord, type WalkRecord, type WalkSystem } from './system';
import { walkChecked } from './walk';

/** Hours served with the first rungs of the ladder in use, at one place among the start hours. */
export interface LadderGain {
  /** Rungs in use, from none to all. */
  readonly rungs: number;
  readonly hoursServed: number;
  /** What the last of these rungs bought, hours; may be a little below 0 where it shed too late. */
  readonly gainedHours: number;
}

/**
 * What each rung of the ladder buys: the hours served with no rung, with the first, and so on, of the start hour than
 * which `startShare` of those given are no better (0.5 the middle one, 0.1 a hard one). An outage is followed for at
 * most `outageHours`. Empty for no start hour.
 */
export function ladderGains(input: {
  system: WalkSystem;
  record: WalkRecord;
  starts: readonly number[];
  outageHours: number;
  startKwh: number;
  startShare: number;
}): LadderGain[] {
  const { system, record, starts, outageHours, startKwh, startShare } = input;
  requireRecord(record, system);
  if (starts.length === 0) return [];
  const served = (rungs: number) => {
    const part = { ...system, ladder: system.ladder.slice(0, rungs) };
    const hours = Float64Array.from(starts, (start) => {
      const walk = { system: part, record, start, outageHours, startKwh, untilFailure: true };
      return walkChecked(walk).hoursServed;
    });
    return quantileInPlace(hours, startShare)!;
  };
  let before = served(0);
  return Array.from({ length: system.ladder.length + 1 }, (_, rungs) => {
    const hoursServed = rungs === 0 ? before : served(rungs);
    const gainedHours = hoursServed - before;
    before = hoursServed;
    return { rungs, hoursServed, gainedHours };
  });
}
