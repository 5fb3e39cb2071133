import type { Rule } from '../rule';
import { both } from '../when/both';
import { lifeDevice } from '../when/life-device';
import { routeIn } from '../when/route-in';
import { sourceKinds } from '../when/route-list';

/** A rehearsal cuts the supply of a life device. */
export const rehearsalLifeDevice: Rule = {
  id: 'rehearsal-life-device',
  applies: (home, kinds) =>
    both(
      lifeDevice(home),
      routeIn(kinds, sourceKinds, 'You would try out the backup with the power off.'),
    ),
};
