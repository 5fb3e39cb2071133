import { byRoute, pair } from './pairs';

const portable = {
  'own-sources': ['engine-portable'],
  'engine-fuel': 'gasoline',
  'engine-volts': 'v240',
  'engine-neutral': 'floating',
  'engine-connect': 'cords',
};
const standby = { ...portable, 'own-sources': ['engine-standby'], 'engine-connect': 'inlet' };
const car = { 'own-sources': ['ev-outlet'], 'vehicle-kind': 'battery-only' };

/** Generators, their exhaust, fuel and cords. */
export const generatorPairs = [
  pair(
    'backfeed-found',
    { ...portable, 'engine-connect': 'wall-outlet' },
    { twin: { ...portable, 'engine-connect': 'cords' } },
  ),
  pair('no-backfeed', portable, { twin: { 'own-sources': ['small-ups'] } }),
  pair('apartment-no-engine', { 'home-kind': 'apartment' }, { twin: { 'home-kind': 'townhouse' } }),
  pair('co-distance', portable, { twin: standby }),
  pair(
    'porch-carport',
    { ...portable, 'engine-place': 'porch-carport' },
    { twin: { ...portable, 'engine-place': 'open-20ft', 'engine-stood': 'never-ran' } },
  ),
  // Nobody told where it stood.
  pair(
    'porch-carport',
    { ...portable, 'engine-place': 'open-20ft' },
    { twin: { ...portable, 'engine-place': 'open-20ft', 'engine-stood': 'open-20ft' } },
  ),
  // Where it stood the last time speaks even where a good place was named.
  pair(
    'porch-carport',
    { ...portable, 'engine-place': 'open-20ft', 'engine-stood': 'porch-carport' },
    { twin: { ...portable, 'engine-place': 'open-20ft', 'engine-stood': 'open-20ft' } },
  ),
  pair(
    'engine-too-close',
    { ...portable, 'engine-place': 'open-20ft', 'engine-stood': 'open-closer' },
    { twin: { ...portable, 'engine-place': 'open-20ft', 'engine-stood': 'never-ran' } },
  ),
  pair(
    'engine-too-close',
    { ...portable, 'engine-place': 'open-closer' },
    { twin: { ...portable, 'engine-place': 'open-20ft' } },
  ),
  pair(
    'neighbors-openings',
    { ...portable, 'home-kind': 'townhouse' },
    { twin: { ...portable, 'home-kind': 'house' } },
  ),
  pair('fixed-engine-exhaust', standby, { twin: portable }),
  byRoute('fixed-engine-exhaust', ['standby-engine']),
  pair('co-alarm-first', { 'co-alarm': 'none' }),
  pair('co-alarm-first', portable, { twin: car }),
  pair('co-shutoff-no-substitute', portable, { twin: standby }),
  pair(
    'hybrid-starts-itself',
    { 'own-sources': ['hybrid-outlet'], 'vehicle-kind': 'hybrid' },
    { twin: car },
  ),
  pair(
    'gas-leak-self-start',
    { ...standby, 'gas-supply': 'town-gas' },
    { twin: { ...portable, 'gas-supply': 'town-gas' } },
  ),
  pair('cord-reaches', { ...portable, cords: 'none' }, { twin: { ...portable, cords: 'heavy' } }),
  pair('refuel-cool', portable, { twin: { ...portable, 'engine-fuel': 'propane' } }),
  pair(
    'fuel-in-wrong-place',
    { 'gasoline-gallons': 5, 'gasoline-place': 'inside' },
    { twin: { 'gasoline-gallons': 5, 'gasoline-place': 'detached-shed' } },
  ),
  pair(
    'fuel-too-much',
    { 'gasoline-gallons': 20, 'gasoline-place': 'attached-garage' },
    { twin: { 'gasoline-gallons': 20, 'gasoline-place': 'detached-shed' } },
  ),
  pair('fuel-storage', { 'gasoline-gallons': 5, 'gasoline-place': 'detached-shed' }),
  pair('cords-heavy', { cords: 'light' }),
  pair('wet-weather', portable, { twin: standby }),
  pair(
    'propane-upright',
    { ...portable, 'engine-fuel': 'propane' },
    { twin: { ...portable, 'engine-fuel': 'gasoline' } },
  ),
  pair(
    'gas-meter',
    { 'gas-supply': 'town-gas' },
    { twin: { 'gas-supply': 'propane-tank' }, kinds: ['standby-engine'] },
  ),
  byRoute('outside-stop-engine', ['standby-engine']),
  pair(
    'no-operator',
    { ...portable, operators: 'none' },
    { twin: { ...portable, operators: 'two' } },
  ),
  pair(
    'two-operators',
    { ...portable, operators: 'one' },
    { twin: { ...portable, operators: 'two' } },
  ),
  pair(
    'fuel-runs-out',
    { ...portable, 'fuel-refill': 'no' },
    { twin: { ...portable, 'fuel-refill': 'sure' } },
  ),
  pair('start-watts', portable, { twin: car }),
  pair('altitude', portable, {
    twin: portable,
    site: { elevationFt: feet(7000) },
    twinSite: { elevationFt: feet(500) },
  }),
  pair(
    'propane-cold',
    { 'gas-supply': 'propane-tank' },
    {
      twin: { 'gas-supply': 'propane-tank' },
      kinds: ['standby-engine'],
      site: { coldF: 0 },
      twinSite: { coldF: 40 },
    },
  ),
  pair(
    'quake-valve',
    { hazards: ['earthquake'], 'gas-supply': 'town-gas' },
    { twin: { hazards: ['hurricane'], 'gas-supply': 'town-gas' }, kinds: ['standby-engine'] },
  ),
  byRoute('engine-charges-battery', ['battery-engine']),
  pair('engine-exercise', portable),
  pair(
    'engine-oil',
    { ...portable, 'goal-hours': 72 },
    { twin: { ...portable, 'goal-hours': 24 } },
  ),
  pair(
    'noise',
    { ...portable, 'home-tenure': 'association' },
    { twin: { ...portable, 'home-tenure': 'own' } },
  ),
];

function feet(value: number) {
  const source = { kind: 'told' } as const;
  return { value, low: value, high: value, unit: 'ft', source };
}
