import type { RuleId } from '../../tables/rules';

/**
 * The cautions any home needs before the first outage, gravest first: all that is printed where too little is known to
 * say which are this home's own. Our judgement.
 */
export const anyHomeCautions: readonly RuleId[] = [
  'gas-smell',
  'co-signs',
  'fallen-wire',
  'water-and-electricity',
  'apartment-no-engine',
  'co-distance',
  'porch-carport',
  'no-backfeed',
  'oven-heat',
  'charcoal-indoors',
  'co-alarm-first',
  'second-source',
  'cold-room',
  'heat-room',
  'battery-smoke',
  'food-clock',
];

/** Of these the ones that hold whatever was told: no answer makes them needless. */
export const inEveryHome: readonly RuleId[] = [
  'gas-smell',
  'co-signs',
  'fallen-wire',
  'co-distance',
  'no-backfeed',
  'oven-heat',
  'charcoal-indoors',
];
