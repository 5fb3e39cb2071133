import { byRoute, pair } from './pairs';

const portable = {
  'own-sources': ['engine-portable'],
  'engine-fuel': 'gasoline',
  'engine-volts': 'v240',
  'engine-neutral': 'floating',
  'engine-connect': 'inlet',
};
const well = { 'water-source': 'well', 'well-volts': 'v240', 'well-start-kind': 'three-wire' };
const inlet = { kinds: ['engine-inlet'] } as const;

/** Panel, transfer, neutral and service. */
export const wiringPairs = [
  pair('panel-work-licensed', { 'who-works': 'self' }, inlet),
  byRoute('interlock-order', ['engine-inlet']),
  pair(
    'interlock-order',
    { 'transfer-existing': 'interlock' },
    { twin: { 'transfer-existing': 'interlock', 'home-kind': 'apartment' } },
  ),
  byRoute('transfer-listed', ['standby-engine']),
  pair(
    'neutral-bond',
    { ...portable, 'engine-neutral': 'not sure' },
    { twin: { ...portable, 'engine-connect': 'cords' } },
  ),
  pair(
    'one-leg-120',
    { 'own-sources': ['ev-outlet'], 'vehicle-kind': 'battery-only' },
    {
      twin: {
        'own-sources': ['ev-outlet'],
        'vehicle-kind': 'battery-only',
        'vehicle-volts': 'v240',
      },
      kinds: ['vehicle'],
    },
  ),
  pair('one-leg-120', { ...portable, 'engine-volts': 'v120' }, { twin: portable }),
  pair(
    'solar-with-engine',
    { ...portable, 'own-sources': ['solar', 'engine-portable'] },
    { twin: { 'own-sources': ['solar'] } },
  ),
  pair('known-bad-panel', { 'panel-signs': ['known-bad-make'] }),
  pair('panel-damage', { 'panel-signs': ['trips'] }),
  pair('main-over-bus', { 'main-amps': 200, 'panel-bus': 125 }),
  pair(
    'aluminum-wiring',
    { 'home-year': 1970, 'wiring-signs': ['aluminum'] },
    { twin: { 'home-year': 1970, 'wiring-signs': ['none'] } },
  ),
  pair('knob-and-tube', { 'home-year': 1925, 'wiring-signs': ['knob-tube'] }),
  pair(
    'old-wiring-unknown',
    { 'home-year': 1925 },
    { twin: { 'home-year': 1925, 'wiring-signs': ['none'] }, ...inlet },
  ),
  pair('manufactured-feeder', { 'home-kind': 'manufactured' }, inlet),
  pair('split-panel', { 'panel-kind': 'split-bus' }, inlet),
  pair('ungrounded-outlets', { 'home-year': 1950, 'wiring-signs': ['two-hole'] }),
  pair('pump-needs-240', well, {
    twin: { ...well, 'well-volts': 'v120' },
    kinds: ['power-pack'],
  }),
  pair('pump-start', well, { twin: { ...well, 'well-start-kind': 'soft-start' }, ...inlet }),
  pair(
    'cooling-start',
    { 'cool-main': 'central', 'cool-kind': 'single-speed' },
    { twin: { 'cool-main': 'central', 'cool-kind': 'variable' }, kinds: ['battery-whole'] },
  ),
  pair('all-start-at-once', well, { kinds: ['battery-circuits'] }),
  byRoute('auto-transfer-capacity', ['battery-solar']),
  byRoute('largest-load', ['battery-circuits']),
  pair('furnace-flame', { 'heat-main': 'gas-furnace' }, inlet),
  pair(
    'gfci-trips',
    { ...portable, 'engine-neutral': 'bonded' },
    { twin: { ...portable, 'engine-neutral': 'floating' }, ...inlet },
  ),
  pair('strips-off', { 'heat-main': 'heat-pump', 'heat-strips': 10 }, inlet),
  pair('car-off', { 'big-loads': ['ev-charger'] }, { twin: { 'big-loads': ['washer'] }, ...inlet }),
  pair('water-heater-off', { 'water-heater': 'electric-tank' }, inlet),
  byRoute('balance-legs', ['engine-inlet']),
  pair('circuit-map', { 'panel-map': 'none' }, inlet),
  byRoute('watch-for-power', ['engine-inlet']),
  pair('power-returns', { 'big-loads': ['pool-pump'] }),
  pair(
    'supply-208',
    { 'home-kind': 'apartment', 'supply-volts': 'v120-208' },
    { twin: { 'home-kind': 'apartment', 'supply-volts': 'v120-240' } },
  ),
  pair(
    'supply-volts-unknown',
    { 'home-kind': 'apartment' },
    { twin: { 'home-kind': 'apartment', 'supply-volts': 'v120-240' } },
  ),
  pair(
    'car-on-small-service',
    { 'big-loads': ['ev-charger'], 'ev-breaker': 50, 'main-amps': 60, 'panel-bus': 60 },
    { twin: { 'big-loads': ['ev-charger'], 'ev-breaker': 50, 'main-amps': 200 } },
  ),
  pair('service-load', { 'main-amps': 100, 'panel-bus': 100 }, inlet),
  byRoute('bus-sum', ['battery-whole']),
  byRoute('inlet-sign', ['engine-inlet']),
];
