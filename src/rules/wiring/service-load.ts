import { practice } from '../../tables/practice-figures';
import { careful, type Rule, yes } from '../rule';
import { both } from '../when/both';
import { wiredRoute } from '../when/wired-route';

/** Service, A, up to which new equipment often does not fit. */
const smallServiceAmps = practice('small-service');

/** A small or unknown service: the load calculation comes before the bids. */
export const serviceLoad: Rule = {
  id: 'service-load',
  applies: ({ facts }, routes) => {
    if (!facts.applies('main-amps')) return null;
    const amps = facts.told('main-amps') ? facts.number('main-amps') : null;
    if (amps === null) {
      return both(careful('not-known-big-electric-service', 'main-amps'), wiredRoute(routes));
    }
    return amps <= smallServiceAmps
      ? both(yes({ code: 'service-amps', amps }), wiredRoute(routes))
      : null;
  },
};
