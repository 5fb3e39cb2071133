import { householdLoad } from '../../tables/household-loads';
import { makeLoad } from '../loads/make-load';
import type { Change } from './household';
import { changing, lessened } from './lessen';

/** A laptop bought in place of the only desk computer, for the same hours. */
export const laptopBought: Change = (_, loads, row) => {
  if (loads.some((load) => load.id === 'laptop')) return loads;
  const laptop = householdLoad('laptop').runningWatts[1];
  return changing(
    loads,
    (load) => load.id === 'desktop',
    (load) => {
      const { rank, restsOn, runningWatts } = load;
      const share = Math.min(1, laptop / runningWatts.value);
      const less = makeLoad('laptop', { rank, restsOn });
      return { ...less, kwhPerDay: lessened(load, [share, share, 1], row).kwhPerDay };
    },
  );
};
