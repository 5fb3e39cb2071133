import type { ChoiceId } from '#compiled/question-ids.js';
import type { IncentiveNote } from '../../../plan/money/plan-money';

const who: Readonly<Partial<Record<ChoiceId<'incentive-who'>, string>>> = {
  'power-company': 'the power company',
  government: 'a public office',
  installer: 'an installer or a seller',
};

/** Money back that is counted, or a credit that no longer applies. */
export function sayIncentive(note: IncentiveNote): string {
  switch (note.code) {
    case 'none-promised':
      return 'No money back is counted: nobody has promised any in writing.';
    case 'told': {
      const by = (note.by !== null && who[note.by]) || 'somebody';
      return `$${note.dollars} of money back is counted, as told you by ${by}. Read its date and its conditions once more.`;
    }
    case '25D':
      return `The 30 % federal credit for home solar and batteries does not apply to work finished after ${note.endedAfter}.`;
    case '25C':
      return `The federal credit that could cover a panel upgrade does not apply to work finished after ${note.endedAfter}.`;
    case '30C':
      return `The federal credit for vehicle charging equipment does not apply to equipment in service after ${note.endedAfter}.`;
  }
}
