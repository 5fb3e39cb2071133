import type { If, PlainIf } from '../../../routes/stops/condition';

const plain: Readonly<Record<PlainIf, string>> = {
  'electrician-wires': 'a licensed electrician does the wiring, with a permit and an inspection',
  'main-read': 'the size of the main breaker is read off',
  'panel-sound': 'the panel is found sound',
  'way-onto-this-panel':
    'the electrician finds a way to connect to this kind of panel, or replaces it',
  'panel-kind-known': 'the kind of panel is known',
  'panel-cleared': 'the electrician clears or replaces the panel',
  'association-agrees': 'the association agrees in writing',
  'battery-heater': 'the battery has its own heater, for it must not be charged below 32 °F',
  'safe-from-cars': 'it is safe from cars, and the building department agrees with the place',
  'above-high-water': 'it hangs above the highest water known here',
  'gas-fitter-feeds': 'a gas fitter agrees to feed the generator from the house tank',
  'tank-dealer-agrees':
    'the dealer who owns the propane tank agrees in writing to the generator on it, and to fill it before a storm',
  'sump-plug': 'the sump pump has a plug of its own that a cord can reach',
  'lamps-with-plug': 'there are lamps with a plug, for ceiling lights stay dark',
  'co-alarms-for-the-generator':
    'battery carbon monoxide alarms hang on each floor and by the bedrooms before the generator first runs',
  'charger-set':
    'the charger is set to what the generator can give, and the maker allows this generator on it',
  'utility-agrees': 'the utility agrees before it is switched on',
  'works-with-the-old-one':
    'the new battery is of a make and kind that works with the one you have, which is counted in',
  'roof-checked': 'an installer checks the roof, its load and its shade',
  'backed-up-shown':
    'an electrician shows that it runs with the grid off, and on which circuits: a battery needs a backed-up panel for that',
  'own-standby-tested':
    'your standby generator was serviced in the last year and carried the house in a test with the main off',
  'own-switch-looked-at':
    'a licensed electrician has looked at the transfer switch that is there, and a permit or an inspection sticker was found',
  'co-alarms':
    'battery carbon monoxide alarms hang on each floor and by the bedrooms before it first runs',
  'own-inlet-looked-at':
    'a licensed electrician has looked at the inlet and the switch that are there, and a permit or an inspection sticker was found',
  'inlet-of-120':
    'the inlet is one of 120 volts for chosen circuits: your generator gives 120 volts and goes on no 240 volt inlet',
  'somebody-runs-it': 'somebody here can lift, start and refuel it',
  'gas-fitter-confirms':
    'a gas fitter and the gas company confirm that meter, pipe and regulator can feed it',
  'exhaust-aimed':
    'the exhaust can be aimed away from every opening, as far off as the site allows',
  'vehicle-at-home': 'it is at home when the power fails, and its maker allows this use',
  'vehicle-in-the-open':
    'it stands in the open, 20 feet from every opening, for its engine can start by itself',
  'vehicle-kept-at-home':
    'somebody keeps it at home through the outage, and its maker allows this use',
  'vehicle-may-feed-circuits':
    'its maker says in writing that its outlet may feed circuits of a home, and the electrician has found how its neutral is tied',
  'quiet-hours':
    "it stands still in your association's quiet hours, or the association agrees in writing to outages as an exception",
  'panels-behind-battery':
    'an installer puts the solar panels you have behind the battery, for by themselves they turn off with the grid',
};

/** What must be true, to stand after "It works if": "the panel is found sound". */
export function sayIf(one: If): string {
  if (typeof one === 'string') return plain[one];
  if (one.code === 'reserve-full') {
    const now =
      one.keptPercent === null
        ? 'what it keeps now is not known'
        : `it keeps ${one.keptPercent} % now`;
    return `the share it keeps for outages is set to 100 % before a storm: ${now}`;
  }
  const [roof, floor] = [one.roofFt2, one.floorFt2].map((ft2) => ft2.toLocaleString('en-US'));
  return `the roof is measured again: ${roof} square feet on one side is more than a home of ${floor} square feet can have`;
}
