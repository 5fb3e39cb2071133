import type { RouteTitle } from '../../../kinds/route-title';
import { inSentence } from '../list-of';

/** What each route is called, at the head of a line. */
const titles: Readonly<Record<RouteTitle, string>> = {
  preparation: 'Getting ready, without a power source',
  'own-battery': 'The home battery you have',
  'single-battery': 'Small battery for one job',
  'power-pack': 'Plug-in power pack',
  'engine-cords': 'Portable generator with cords',
  'engine-inlet': 'Portable generator with an inlet and transfer equipment',
  'standby-engine': 'Standby generator that starts by itself',
  'own-standby': 'The standby generator you have',
  'battery-circuits': 'Battery on chosen circuits',
  'battery-whole': 'Battery for the whole house, with load control',
  'battery-solar': 'Battery with roof solar',
  'battery-engine': 'Battery for the nights, portable generator to refill it',
  vehicle: 'Vehicle with an outlet, on cords',
  'vehicle-inlet': 'The vehicle you have, on an inlet and a transfer switch',
};

export const sayRouteTitle = (called: RouteTitle): string => titles[called];

/** "the portable generator with cords": in a sentence, and never with a second "the". */
export const theRoute = (called: RouteTitle): string =>
  `the ${inSentence(sayRouteTitle(called)).replace(/^the /i, '')}`;
