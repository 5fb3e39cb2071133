import { type Rule, yes } from '../rule';
import { both } from '../when/both';
import { firstOf } from '../when/first-of';
import { knownGenerator } from '../when/known-generator';
import { wiredRoute } from '../when/wired-route';

/** A manufactured home is fed from a pedestal by four wires. */
export const manufacturedFeeder: Rule = {
  id: 'manufactured-feeder',
  applies: (home, routes) =>
    both(
      home.facts.told('home-kind') && home.facts.is('home-kind', 'manufactured')
        ? yes('live-manufactured-home')
        : null,
      firstOf(wiredRoute(routes), knownGenerator(home, routes)),
    ),
};
