import { isSource } from '../../kinds/ask-traits';
import type { Rule } from '../rule';
import { both } from '../when/both';
import { lifeDevice } from '../when/life-device';
import { routeWith } from '../when/route-with';

/** A rehearsal cuts the supply of a life device. */
export const rehearsalLifeDevice: Rule = {
  id: 'rehearsal-life-device',
  applies: (home, routes) =>
    both(lifeDevice(home), routeWith(routes, isSource, 'try-out-backup-power')),
};
