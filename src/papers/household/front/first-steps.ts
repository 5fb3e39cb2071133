import type { Plan } from '../../../plan/plan';
import type { NextStep, StepId } from '../../../plan/steps/next-step';

/** Steps shown on the front page. */
const STEPS = 3;

/** Steps that begin the purchase: one of them stands on the front page of a plan to buy something. */
const purchase: readonly StepId[] = ['buy-first', 'buy', 'quotes'];

/** The first steps, without those that stand above already. */
export function firstSteps({ nextSteps, lifeFirst }: Plan): NextStep[] {
  const above: StepId[] = lifeFirst?.told ? ['agree-on-device', 'on-the-lists'] : [];
  const left = nextSteps.filter((step) => !above.includes(step.id));
  const first = left.slice(0, STEPS);
  const buy = left.find((step) => purchase.includes(step.id));
  return buy === undefined || first.includes(buy) ? first : [...first.slice(0, STEPS - 1), buy];
}
