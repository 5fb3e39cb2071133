import type { ChoiceId } from '#compiled/question-ids.js';
import { isSource } from '../../kinds/ask-traits';
import type { Rule } from '../rule';
import { both } from '../when/both';
import { device } from '../when/device';
import { firstOf } from '../when/first-of';
import { routeWith } from '../when/route-with';
import { said } from '../when/said';

const plugged: readonly ChoiceId<'medical-devices'>[] = [
  'oxygen-concentrator',
  'ventilator',
  'cpap',
  'dialysis',
  'feeding-pump',
  'suction',
  'nebuliser',
  'power-chair',
  'medical-bed',
  'other-device',
];

/** Health devices on a generator, pack or inverter: clean power the supplier agrees to. */
export const cleanPower: Rule = {
  id: 'clean-power',
  applies: (home, routes) =>
    both(
      device(home, plugged, 'health-device-run-source'),
      firstOf(
        routeWith(routes, isSource, 'source-own-plan'),
        said({
          facts: home.facts,
          id: 'own-sources',
          choices: ['engine-portable', 'engine-standby', 'power-pack', 'home-battery', 'small-ups'],
          because: 'source-own',
          unknown: 'not-known-sources',
        }),
      ),
    ),
};
