import type { NotWhere } from '../../tables/measures';
import type { Facts } from '../facts';
import { gasHere } from '../heat/gas-here';
import { warmOtherwise } from '../heat/warm-otherwise';
import { harms } from './harms';

/** What closes a measure in this home. Every one takes the careful branch: what nobody told closes too. */
const closes: Readonly<Record<NotWhere, (facts: Facts) => boolean>> = {
  'cold-harms': (facts) => harms(facts, 'cold'),
  'heat-harms': (facts) => harms(facts, 'heat'),
  'no-other-phone': (facts) =>
    !(facts.told('phone-works') && facts.is('phone-works', 'cell', 'landline')),
  'medicine-in-fridge': (facts) => !hasNone(facts, 'fridge-medicine', 'other-device'),
  'pipes-may-freeze': (facts) =>
    !(facts.told('freeze-risk') && facts.list('freeze-risk').every((one) => one === 'none')),
  'no-stove': (facts) => !warmOtherwise(facts),
  'stove-there': warmOtherwise,
  'no-gas': (facts) => !['street', 'tank', 'some'].includes(gasHere(facts)),
  'no-other-cooking': (facts) => !cooksOtherwise(facts),
  'animals-outside': (facts) => !facts.told('animals') || facts.has('animals', 'stay-outside'),
  dialysis: (facts) => !hasNone(facts, 'dialysis'),
  rented: (facts) => !(facts.told('home-tenure') && facts.is('home-tenure', 'own')),
};

/** Null where the measure may be used here; else the first thing that closes it. */
export function closedBy(facts: Facts, notWhere: readonly NotWhere[]): NotWhere | null {
  return notWhere.find((one) => closes[one](facts)) ?? null;
}

/** The household told of its health devices, and none of these is among them. */
function hasNone(
  facts: Facts,
  ...devices: readonly ('fridge-medicine' | 'other-device' | 'dialysis')[]
) {
  return (
    facts.told('medical-devices') &&
    !facts.has('medical-devices', 'prefer-not-to-say') &&
    !facts.has('medical-devices', ...devices)
  );
}

/** A flame for food that is no danger where it is used: the gas stove lit by hand, or one outdoors. */
function cooksOtherwise(facts: Facts): boolean {
  if (!facts.told('cook-without') || facts.has('cook-without', 'charcoal-indoors')) return false;
  return facts.has('cook-without', 'gas-match', 'outdoor-grill', 'camp-stove');
}
