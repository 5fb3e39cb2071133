import type { Load } from '../home';
import { big } from './big';
import { coldFood } from './cold-food';
import type { LoadContext } from './context';
import { cooling } from './cooling';
import { heatTape } from './heat-tape';
import { heating } from './heating';
import { hotWater } from './hot-water';
import { living } from './living';
import { medical } from './medical';
import { pumps } from './pumps';

/** Everything in the home that uses electricity, medical devices first. */
export function allLoads(context: LoadContext): Load[] {
  const groups = [medical, heating, heatTape, cooling, pumps, coldFood, living, hotWater, big];
  return groups.flatMap((group) => group(context));
}
