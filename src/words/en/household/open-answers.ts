import type { Plan } from '../../../plan/plan';

/** Answers that do not fit together, that are worth finding out, and what was taken instead. */
export const openAnswers = {
  settleTitle: 'Settle these first: two answers do not fit together',
  settle: ({ answers: [one, other], asks }: Plan['electrical']['toSettle'][number]) =>
    `${one} But: ${other} ${asks}`,
  findOutTitle: 'Worth finding out',
  findOut: ({ says, safety, how }: Plan['toFindOut'][number]) =>
    `${says}${safety ? ' (a safety answer: advice is held back until it is known)' : ''}. ${how}`,
  onlyToSettle:
    'What stands under "Settle these first". Beyond that, nothing that would change this plan much.',
  nothingToFindOut: 'Nothing that would change this plan much.',
  assumedTitle: 'What we assumed',
  assumed: ({ says, assumed, because }: Plan['assumptions'][number]) =>
    `${says}: ${assumed}. ${because}${/[.!?]$/.test(because) ? '' : '.'}`,
  nothingAssumed: 'Nothing: every question that applies was answered.',
};
