import type { Home } from '../../home/home';
import { careful, type Rule, type Trigger, yes } from '../rule';
import { both } from '../when/both';
import { fixedBattery } from '../when/fixed-battery';
import { wiredRoute } from '../when/wired-route';

/** A battery or solar inverter on the panel: the bus must have room for it. */
export const busSum: Rule = {
  id: 'bus-sum',
  applies: (home, routes) => {
    if (!home.facts.applies('panel-kind')) return null;
    return both(roomOnBus(home), both(wiredRoute(routes), fixedBattery(home, routes)));
  },
};

/** NEC 2023 705.12(B)(2): 1.25 x source A + main <= 1.2 x bus, sources at opposite ends. */
function roomOnBus({ facts }: Home): Trigger {
  const mainAmps = facts.told('main-amps') ? facts.number('main-amps') : null;
  const busAmps = facts.told('panel-bus') ? facts.number('panel-bus') : null;
  if (mainAmps === null || busAmps === null) {
    return careful(
      'not-known-rating-both-main-panel',
      mainAmps === null ? 'main-amps' : 'panel-bus',
    );
  }
  const room = Math.max(0, Math.round((1.2 * busAmps - mainAmps) * 10) / 10);
  return yes({ code: 'room-on-bus', busAmps, mainAmps, roomAmps: room });
}
