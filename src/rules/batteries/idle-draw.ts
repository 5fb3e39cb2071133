import { type Rule, yes } from '../rule';
import { firstOf } from '../when/first-of';
import { routeIn } from '../when/route-in';

/** A small battery loses much of its energy to its own inverter. */
export const idleDraw: Rule = {
  id: 'idle-draw',
  applies: ({ facts }, kinds) =>
    firstOf(
      facts.has('own-sources', 'power-pack') ? yes('You have a power pack.') : null,
      routeIn(kinds, ['power-pack', 'single-battery'], 'A small battery is in your plan.'),
    ),
};
