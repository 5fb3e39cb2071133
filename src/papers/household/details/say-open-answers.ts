import type { Plan } from '../../../plan/plan';
import { titledList } from '../../markdown/bullets';
import { settleLines } from './say-electrical';

/** Answers that do not fit together stand first: what follows rests on them. Empty when all fit. */
export function sayToSettle(plan: Plan): string[] {
  const lines = settleLines(plan);
  return lines.length === 0
    ? []
    : titledList('## Settle these first: two answers do not fit together', lines);
}

/** What is worth finding out; where nothing is, but answers are to be settled, it says so. */
export function sayToFindOut(plan: Plan): string[] {
  const line = (one: Plan['toFindOut'][number]) =>
    `${one.says}${one.safety ? ' (a safety answer: advice is held back until it is known)' : ''}. ${one.how}`;
  const settle = settleLines(plan).length > 0;
  return titledList(
    '## Worth finding out',
    plan.toFindOut.slice(0, 12).map(line),
    settle
      ? 'What stands under "Settle these first". Beyond that, nothing that would change this plan much.'
      : 'Nothing that would change this plan much.',
  );
}

/** What was taken for each answer that was "not sure" or never given. */
export function sayAssumptions(plan: Plan): string[] {
  const lines = plan.assumptions.map(
    (a) => `${a.says}: ${a.assumed}. ${a.because}${/[.!?]$/.test(a.because) ? '' : '.'}`,
  );
  return titledList(
    '## What we assumed',
    lines,
    'Nothing: every question that applies was answered.',
  );
}
