import type { ChoiceId } from '#compiled/question-ids.js';
import type { HouseholdLoadId } from '../../tables/household-loads';

/** What a load is called, as a code: `words/en/loads/load-names.ts` says it. */
export type LoadName =
  | { readonly code: PlainLoadName }
  /** As the row it was made from. */
  | { readonly code: 'row'; readonly row: HouseholdLoadId }
  /** Devices for health that were told of together, one at least. */
  | { readonly code: 'devices'; readonly ticked: readonly SmallDeviceId[] };

export type SmallDeviceId = Extract<
  ChoiceId<'medical-devices'>,
  'feeding-pump' | 'suction' | 'nebuliser' | 'power-chair' | 'medical-bed' | 'other-device'
>;

/** One that is not called as its row. */
export type PlainLoadName =
  | 'lights'
  | 'phones'
  | 'always-on'
  | 'internet'
  | 'cpap'
  | 'freezer'
  | 'second-ac'
  | 'lift-charger'
  | 'well-pump'
  | 'sump-pump'
  | 'grinder-pump'
  | 'septic-pump'
  | 'furnace'
  | 'oil-furnace'
  | 'boiler'
  | 'heat-pump'
  | 'backup-strips'
  | 'electric-furnace'
  | 'baseboard'
  | 'room-heater'
  | 'room-cooler';
