import { byRoute, pair } from './pairs';

const pack = {
  'own-sources': ['power-pack'],
  'battery-kwh': 1,
  'battery-kw': 1,
  'battery-kind': 'lfp',
};
const wall = {
  'own-sources': ['home-battery'],
  'battery-kwh': 15,
  'battery-kw': 7,
  'battery-kind': 'lfp',
};
const solar = { 'own-sources': ['solar'], 'solar-kw': 6, 'solar-in-outage': 'nothing' };
const both = { ...wall, ...solar, 'own-sources': ['home-battery', 'solar'] };

const shed = { 'battery-place': 'shed-unheated' };
const hot = { coldF: 50, hotF: 100 };

/** Batteries, solar and vehicles. */
export const batteryPairs = [
  // A shed that froze in a place where the stations nearby never do.
  pair(
    'no-freezing-charge',
    { ...shed, 'battery-place-range': ['below-32'] },
    { twin: { ...shed, 'battery-place-range': ['none'] }, kinds: ['battery-circuits'], site: hot },
  ),
  pair(
    'hot-place',
    { ...shed, 'battery-place-range': ['above-100'] },
    { twin: { ...shed, 'battery-place-range': ['none'] }, kinds: ['battery-circuits'], site: hot },
  ),
  pair('battery-smoke', pack),
  pair(
    'flooded-lithium',
    { ...pack, 'flood-history': 'inside' },
    { twin: { ...pack, 'flood-history': 'never' } },
  ),
  pair('solar-live', solar),
  pair('home-made-battery', { ...pack, 'battery-kind': 'home-made' }, { twin: pack }),
  pair('panels-in-cold', { ...pack, 'solar-row': 3 }, { twin: { ...pack, 'solar-row': 0 } }),
  pair('panels-in-cold', pack, { twin: { ...pack, 'solar-row': 0 } }),
  pair(
    'not-where-you-sleep',
    { 'battery-place': 'bedroom-living' },
    { twin: { 'battery-place': 'utility-room' }, kinds: ['battery-circuits'] },
  ),
  pair(
    'over-limit',
    { ...wall, 'battery-kwh': 45, 'battery-place': 'basement' },
    { twin: { ...wall, 'battery-kwh': 45, 'battery-place': 'detached' } },
  ),
  byRoute('storage-limits', ['battery-whole']),
  byRoute('spacing', ['battery-circuits']),
  pair(
    'car-impact',
    { 'battery-place': 'attached-garage' },
    { twin: { 'battery-place': 'basement' }, kinds: ['battery-circuits'] },
  ),
  pair(
    'fire-detector',
    { 'battery-place': 'basement' },
    { twin: { 'battery-place': 'outside-wall' }, kinds: ['battery-circuits'] },
  ),
  pair('above-flood', { 'flood-history': 'inside' }, { kinds: ['battery-circuits'] }),
  pair(
    'no-freezing-charge',
    { 'battery-place': 'shed-unheated' },
    { twin: { 'battery-place': 'basement' }, kinds: ['battery-solar'], site: { coldF: 5 } },
  ),
  pair(
    'no-freezing-charge',
    { 'battery-place': 'outside-wall' },
    {
      twin: { 'battery-place': 'outside-wall' },
      kinds: ['battery-solar'],
      site: { coldF: 5 },
      twinSite: { coldF: 45 },
    },
  ),
  pair(
    'hot-place',
    { 'battery-place': 'attached-garage' },
    { twin: { 'battery-place': 'basement' }, kinds: ['battery-circuits'], site: { hotF: 105 } },
  ),
  pair('lead-acid-gas', { ...pack, 'battery-kind': 'lead-acid' }, { twin: pack }),
  pair('charging-indoors', pack, { twin: wall }),
  byRoute('outside-stop-battery', ['battery-whole']),
  byRoute('vehicle-house-ok', ['vehicle']),
  byRoute('rapid-shutdown', ['battery-solar']),
  byRoute('roof-pathways', ['battery-solar']),
  byRoute('roof-load', ['battery-circuits']),
  pair('solar-claim', { ...solar, 'solar-in-outage': 'runs-house' }, { twin: solar }),
  pair('solar-dark', solar, { twin: { ...solar, 'solar-in-outage': 'runs-house' } }),
  byRoute('old-solar-new-battery', ['battery-circuits'], solar),
  pair(
    'solar-over-inverter',
    { ...both, 'solar-kw': 9, 'battery-kw': 5 },
    { twin: { ...both, 'solar-kw': 4, 'battery-kw': 5 } },
  ),
  pair(
    'winter-sun',
    { 'goal-season': 'winter' },
    { twin: { 'goal-season': 'summer' }, kinds: ['battery-solar'] },
  ),
  byRoute('usable-kwh', ['power-pack']),
  byRoute('idle-draw', ['power-pack']),
  pair(
    'heater-on-pack',
    { 'heat-main': 'baseboard' },
    { twin: { 'heat-main': 'wood' }, kinds: ['power-pack'] },
  ),
  pair(
    'storage-reserve',
    { 'bill-plan': 'time-of-use' },
    { twin: { 'bill-plan': 'flat' }, kinds: ['battery-whole'] },
  ),
  byRoute('vehicle-charge-left', ['vehicle']),
  pair('no-blink', { 'goal-gap': 'no-blink' }, { kinds: ['engine-inlet'] }),
];
