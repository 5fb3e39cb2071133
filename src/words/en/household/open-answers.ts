import type { Plan } from '../../../plan/plan';
import { sayContradiction } from '../contradictions/say-contradiction';
import { sayWhyNow } from '../say-why-now';
import { sayAssumption } from '../sureness/say-assumption';

/** Answers that do not fit together, that are worth finding out, and what was taken instead. */
export const openAnswers = {
  settleTitle: 'Settle these first: two answers do not fit together',
  settle(found: Plan['electrical']['toSettle'][number]): string {
    const { answers, asks } = sayContradiction(found);
    return `${answers[0]} But: ${answers[1]} ${asks}`;
  },
  findOutTitle: 'Worth finding out',
  findOut: ({ says, safety, how, decides }: Plan['toFindOut'][number]) => {
    const held = safety ? ' (a safety answer: advice is held back until it is known)' : '';
    const why = decides === null ? '' : ` ${sayWhyNow(decides)}`;
    return `${says}${held}.${why} ${how}`;
  },
  onlyToSettle:
    'What stands under "Settle these first". Beyond that, nothing that would change this plan much.',
  nothingToFindOut: 'Nothing that would change this plan much.',
  assumedTitle: 'What we assumed',
  assumed(one: Plan['assumptions'][number]): string {
    const { says, assumed, because } = sayAssumption(one);
    return `${says}: ${assumed}. ${because}${/[.!?]$/.test(because) ? '' : '.'}`;
  },
  nothingAssumed: 'Nothing: every question that applies was answered.',
};
