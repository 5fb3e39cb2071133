import type { Home } from '../home/home';
import { owned, part } from './costs';
import type { Part } from './route';

/** Thick outdoor cords were told: they are used, and not bought again. Thinner ones get hot and count as none. */
export function cordsPart({ facts }: Home): Part {
  const there = facts.told('cords') && facts.is('cords', 'heavy');
  return there ? owned({ code: 'own-cords' }, 'cords') : part('cords');
}
