import type { Home, Load } from '../home';
import { neverLessened } from '../loads/never-lessened';
import { harms } from './harms';
import { holdsMedicine } from './holds-medicine';
import { cools, warms } from './warm-and-cool';

/** Health, a dry house, or warmth or cooling without which somebody here gets ill hangs on it: nothing that may go. */
export const guards = (home: Home, load: Load): boolean =>
  neverLessened(load) || holdsMedicine(home, load) || keepsWell(home, load);

function keepsWell({ facts }: Home, load: Load): boolean {
  if (!warms(load) && !cools(load)) return false;
  return harms(facts, 'cold') || harms(facts, 'heat');
}
