import type { Home, Load } from '../../home/home';
import { guards } from '../../home/measures/guards';
import { loadsOf } from '../../routes/pick-loads';
import { hardestSeason } from '../hardest-season';

/**
 * What may go so that the rest is carried: never what health or the dryness of the house hangs on, nor heat or cooling where the
 * lack of it makes somebody ill. Least missed of its size first is not ours to say, so the hungriest first.
 */
export function mayGo(home: Home): Load[] {
  const season = hardestSeason(home);
  return loadsOf(home, ['must'])
    .filter((load) => !guards(home, load))
    .sort((a, b) => b.kwhPerDay[season].value - a.kwhPerDay[season].value);
}
