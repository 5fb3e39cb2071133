import type { ChoiceId } from '#compiled/question-ids.js';
import type { HouseholdLoadId } from '../../tables/household-loads';

/** Loads that stand for several rows of the table, or for one in another use. */
type OwnId =
  | 'well'
  | 'sump'
  | 'waste'
  | 'second-ac'
  | 'water-heater'
  | 'other-medical'
  | 'room-heater'
  | 'room-cooler';

/** What a load is in the program; what people call it is its `LoadName`, and is never compared. */
export type LoadId = HouseholdLoadId | ChoiceId<'medical-devices'> | OwnId;
