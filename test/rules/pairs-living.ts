import { pair } from './pairs';

const cold = { site: { coldF: 10 } };

/** Heat, cold, water, food and leaving. */
export const livingPairs = [
  pair('oven-heat', { 'heat-second': 'oven-or-grill' }, { twin: { 'heat-second': 'vented-gas' } }),
  pair('oven-heat', { 'heat-second': 'unvented' }, { twin: { 'heat-second': 'wood-stove' } }),
  pair(
    'charcoal-indoors',
    { 'cook-without': ['charcoal-indoors'] },
    { twin: { 'cook-without': ['outdoor-grill'] } },
  ),
  pair('cold-room', { 'people-risk': ['over-65'] }, cold),
  pair('cold-room', { 'people-risk': ['long-illness'] }, cold),
  pair('heat-room', { 'heat-cold': 'heat' }, { site: { hotF: 95 } }),
  pair('heat-room', { hazards: ['heat-wave'] }, { site: { hotF: 95 } }),
  pair('wildfire-go', { hazards: ['wildfire'] }, { twin: { hazards: ['ice-snow'] } }),
  pair('flood-go', { hazards: ['hurricane'] }, { twin: { hazards: ['heat-wave'] } }),
  pair('flood-go', { 'flood-history': 'inside' }),
  pair('outlasts-plan', { 'outage-longest': 60, 'goal-hours': 24 }, { twin: { 'goal-hours': 72 } }),
  pair(
    'dry-ice',
    { 'cook-without': ['dry-ice-cooler'] },
    { twin: { 'cook-without': ['gas-match'] } },
  ),
  pair('no-phone', { 'phone-works': 'neither' }),
  pair('outdoor-cooking', { 'cook-without': ['camp-stove'] }),
  pair('gas-stove-match', { 'cook-without': ['gas-match'] }),
  pair('wood-fire', { 'heat-second': 'wood-stove' }, { twin: { 'heat-main': 'gas-no-power' } }),
  pair('candles-heaters', { 'outage-failed': ['cold'] }, { twin: { 'outage-failed': ['food'] } }),
  pair(
    'heat-needs-power',
    { 'heat-main': 'gas-furnace', 'must-run': ['lights'] },
    { twin: { 'heat-main': 'gas-furnace', 'must-run': ['heat', 'lights'] } },
  ),
  pair(
    'heat-off',
    { 'home-kind': 'apartment', 'heat-main': 'building' },
    { twin: { 'heat-main': 'wood' }, ...cold },
  ),
  pair(
    'heat-off',
    { 'heat-main': 'heat-pump', 'must-run': ['lights'] },
    { twin: { 'heat-main': 'heat-pump', 'must-run': ['heat', 'lights'] }, ...cold },
  ),
  pair(
    'heat-off',
    { 'heat-main': 'baseboard', 'heat-second': 'none' },
    { twin: { 'heat-main': 'baseboard', 'heat-second': 'wood-stove' }, ...cold },
  ),
  pair('sump-own-battery', { sump: 'one' }, { twin: { sump: 'one-with-battery' } }),
  pair('septic-restart', { waste: 'septic-pump' }, { twin: { waste: 'septic-gravity' } }),
  pair('freeze-drain', { 'freeze-risk': ['crawl-pipes'] }, cold),
  pair('freeze-call-fitter', { 'freeze-risk': ['sprinkler'] }, cold),
  pair('off-grid-help', { 'home-kind': 'off-grid' }),
  pair('home-phone-dies', { 'phone-works': 'landline' }),
  pair('well-water', { 'water-source': 'well' }, { twin: { 'water-source': 'town' } }),
  pair('food-clock', { 'fridge-count': 1 }),
  pair(
    'small-plugs',
    { 'water-heater': 'tankless-gas' },
    { twin: { 'water-heater': 'gas-pilot' } },
  ),
  pair('internet-dies', { 'work-gear': 'laptop', 'internet-kind': 'cable-fiber' }),
];
