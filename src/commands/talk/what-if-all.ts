import interview from '#compiled/questions.js';
import type { Tariff } from '../../bill/tariff/tariff';
import type { Answers } from '../../interview/answers';
import type { Tried } from '../../interview/what-if/tried';
import { changesBetween } from '../../plan/changes/changes-between';
import type { PlanFacts } from '../../plan/changes/plan-facts';
import { quickPlans } from '../../plan/changes/quick-plan';
import type { SaidChanges } from '../../plan/changes/said-changes';
import { sayChanges } from '../../words/en/changes/say-changes';

/** The plan of these answers beside what is tried, in sentences; that there is no such size; or that the sums are at fault. */
export type WhatIfAll = (answers: Answers, tried: Tried) => SaidChanges | 'no-size' | 'failed';

/** One memory for a sitting: the plan as it is, and the weather of its place, are worked out once. */
export function whatIfAll(tariff: Tariff | null, asOf: string): WhatIfAll {
  const factsOf = quickPlans(interview, asOf, tariff !== null);
  let known: { readonly of: string; readonly facts: PlanFacts } | null = null;
  const nowOf = (answers: Answers): PlanFacts => {
    const of = JSON.stringify(answers);
    if (known?.of !== of) known = { of, facts: factsOf({ answers, size: 0 })! };
    return known.facts;
  };
  return (answers, tried) => {
    try {
      const after = factsOf(tried);
      return after === null ? 'no-size' : sayChanges(changesBetween(nowOf(answers), after));
    } catch {
      return 'failed';
    }
  };
}
