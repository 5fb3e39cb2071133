import type { Home, Load } from '../../home/home';
import { neverLessened } from '../../home/loads/never-lessened';
import { harms } from '../../home/measures/harms';
import { loadsOf } from '../../routes/pick-loads';
import { hardestSeason } from '../hardest-season';

/**
 * What may go so that the rest is carried: never what health or the dryness of the house hangs on, nor heat or cooling where the
 * lack of it makes somebody ill. Least missed of its size first is not ours to say, so the hungriest first.
 */
export function mayGo(home: Home): Load[] {
  const season = hardestSeason(home);
  return loadsOf(home, ['must'])
    .filter((load) => !neverLessened(load) && !keepsWell(home, load))
    .sort((a, b) => b.kwhPerDay[season].value - a.kwhPerDay[season].value);
}

function keepsWell({ facts }: Home, { follows }: Load): boolean {
  if (follows === 'neither') return false;
  return harms(facts, 'cold') || harms(facts, 'heat');
}
