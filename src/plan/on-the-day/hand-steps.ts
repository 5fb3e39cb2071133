import type { Home } from '../../home/home';
import {
  hasFixedGenerator,
  hasPortableGenerator,
  isPack,
  outletsOnly,
} from '../../kinds/ask-traits';
import type { RouteTraits } from '../../kinds/route-traits';

/** One thing done by hand when the power fails, or when it is back; its words stand in `words/`. */
export type HandStep =
  | 'say-who-is-out'
  | 'alarms-work'
  | 'generator-to-its-place'
  | 'solar-off'
  | 'branches-off'
  | 'main-off'
  | 'plate-over'
  | 'cord-in'
  | 'cord-into-vehicle'
  | 'gas-on'
  | 'start-outdoors'
  | 'generator-breaker-on'
  | 'inlet-on'
  | 'branches-one-by-one'
  | 'charger-on'
  | 'cords-straight'
  | 'one-at-a-time'
  | 'refuel-cold'
  | 'starts-itself'
  | 'exhaust-clear'
  | 'heavy-loads-off'
  | 'oil-every-day'
  | 'takes-over'
  | 'read-display'
  | 'pack-on'
  | 'pack-off-between'
  | 'vehicle-outdoors'
  | 'vehicle-reserve'
  | 'lights-not-flames'
  | 'doors-shut'
  | 'inlet-off'
  | 'plate-back'
  | 'main-on'
  | 'branches-on'
  | 'generator-off'
  | 'generator-and-gas-off'
  | 'cord-out'
  | 'solar-on'
  | 'unplug'
  | 'plug-back'
  | 'charge-again'
  | 'goes-back-itself'
  | 'steady-first'
  | 'fuel-for-next';

/** What a person does, in its order, when the power fails and when it is back. */
export interface HandSteps {
  readonly start: readonly HandStep[];
  readonly back: readonly HandStep[];
}

/**
 * The order by what the route is made of, so that a new route has one. The order at the panel is that of the caution
 * about it: the main is off before the inlet's breaker goes on, and the other way round going back.
 * @param gasLine whether a line of gas feeds the generator, and nobody fills it
 */
export function handSteps(
  traits: RouteTraits,
  home: Pick<Home, 'facts'>,
  gasLine = false,
): HandSteps {
  const steps = inOrder(traits, home);
  return gasLine && hasPortableGenerator(traits)
    ? { start: steps.start.flatMap(onGasLine), back: steps.back.flatMap(onGasLine) }
    : steps;
}

/** On a gas line nobody pours fuel; its valve is opened before the start and shut once the generator stands. */
function onGasLine(step: HandStep): readonly HandStep[] {
  if (step === 'start-outdoors') return ['gas-on', step];
  if (step === 'generator-off') return ['generator-and-gas-off'];
  return step === 'refuel-cold' ? [] : [step];
}

function inOrder(traits: RouteTraits, home: Pick<Home, 'facts'>): HandSteps {
  const solar = !home.facts.told('own-sources') || home.facts.has('own-sources', 'solar');
  if (traits.connection === 'nothing') return nothing;
  if (traits.connection === 'inlet')
    return atInlet(solar, traits.vehicle ? vehicleFeeds : generatorFeeds);
  if (hasFixedGenerator(traits)) return fixedGenerator;
  if (outletsOnly(traits) && hasPortableGenerator(traits)) return cords;
  if (traits.vehicle) return vehicle;
  if (isPack(traits)) return pack;
  return fixedBattery(hasPortableGenerator(traits));
}

const first = ['say-who-is-out', 'alarms-work'] as const;

const nothing: HandSteps = {
  start: ['say-who-is-out', 'lights-not-flames', 'doors-shut', 'heavy-loads-off'],
  back: ['steady-first'],
};

/** The panel is the same whatever feeds the inlet; what stands outdoors differs. */
const atInlet = (solar: boolean, source: FeedsInlet): HandSteps => ({
  start: [
    ...first,
    source.ready,
    ...(solar ? (['solar-off'] as const) : []),
    'branches-off',
    'main-off',
    'plate-over',
    ...source.connect,
    'inlet-on',
    'branches-one-by-one',
    source.meanwhile,
  ],
  back: [
    'steady-first',
    'branches-off',
    'inlet-off',
    'plate-back',
    'main-on',
    'branches-on',
    ...source.disconnect,
    ...(solar ? (['solar-on'] as const) : []),
    source.afterwards,
  ],
});

interface FeedsInlet {
  readonly ready: HandStep;
  readonly connect: readonly HandStep[];
  readonly meanwhile: HandStep;
  readonly disconnect: readonly HandStep[];
  readonly afterwards: HandStep;
}

const generatorFeeds: FeedsInlet = {
  ready: 'generator-to-its-place',
  connect: ['cord-in', 'start-outdoors', 'generator-breaker-on'],
  meanwhile: 'refuel-cold',
  disconnect: ['generator-off', 'cord-out'],
  afterwards: 'fuel-for-next',
};

const vehicleFeeds: FeedsInlet = {
  ready: 'vehicle-outdoors',
  connect: ['cord-into-vehicle'],
  meanwhile: 'vehicle-reserve',
  disconnect: ['cord-out'],
  afterwards: 'charge-again',
};

const cords: HandSteps = {
  start: [
    ...first,
    'generator-to-its-place',
    'start-outdoors',
    'cords-straight',
    'one-at-a-time',
    'refuel-cold',
  ],
  back: ['steady-first', 'unplug', 'generator-off', 'plug-back', 'fuel-for-next'],
};

const fixedGenerator: HandSteps = {
  start: [...first, 'starts-itself', 'exhaust-clear', 'heavy-loads-off', 'oil-every-day'],
  back: ['goes-back-itself', 'fuel-for-next'],
};

const vehicle: HandSteps = {
  start: [...first, 'vehicle-outdoors', 'cords-straight', 'one-at-a-time', 'vehicle-reserve'],
  back: ['steady-first', 'unplug', 'plug-back', 'charge-again'],
};

const pack: HandSteps = {
  start: [
    'say-who-is-out',
    'pack-on',
    'cords-straight',
    'one-at-a-time',
    'pack-off-between',
    'doors-shut',
  ],
  back: ['steady-first', 'unplug', 'plug-back', 'charge-again'],
};

const fixedBattery = (refilled: boolean): HandSteps => ({
  start: [
    'say-who-is-out',
    'takes-over',
    'read-display',
    'heavy-loads-off',
    ...(refilled
      ? ([
          'alarms-work',
          'generator-to-its-place',
          'start-outdoors',
          'charger-on',
          'refuel-cold',
        ] as const)
      : []),
  ],
  back: [
    'goes-back-itself',
    ...(refilled ? (['generator-off', 'fuel-for-next'] as const) : []),
    'read-display',
  ],
});
