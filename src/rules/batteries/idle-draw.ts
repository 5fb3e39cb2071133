import { isPack } from '../../kinds/ask-traits';
import { type Rule, yes } from '../rule';
import { firstOf } from '../when/first-of';
import { routeWith } from '../when/route-with';

/** A small battery loses much of its energy to its own inverter. */
export const idleDraw: Rule = {
  id: 'idle-draw',
  applies: ({ facts }, routes) =>
    firstOf(
      facts.has('own-sources', 'power-pack') ? yes('power-pack') : null,
      routeWith(routes, isPack, 'small-battery-plan'),
    ),
};
