import { carriesAllMust } from '../../routes/must-carried';
import type { Weighed } from './unbeaten';

/** Outages in a hundred that a size must carry to do the job. */
export const ENOUGH = 90;

/**
 * All that any backup can carry is carried through 9 outages in 10; where life hangs on it, or may, the stricter sizing
 * of its kind must say so as well.
 */
export const isEnough = ({ value }: Weighed): boolean =>
  value.sure && (value.devices ?? 100) >= ENOUGH;

/** The same, and nothing that must run is left out for want of a backup that can carry it. */
export const reachesGoal = (one: Weighed): boolean =>
  isEnough(one) && carriesAllMust(one.living.home, one.counted);
