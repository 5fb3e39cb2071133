import type { Plan } from '../../plan/plan';
import type { AddOn } from '../../plan/steps/add-ons';
import type { NextStep } from '../../plan/steps/next-step';
import type { Words } from '../../words/words';
import type { PlanData } from './plan-schema';

export function stepData(
  { home }: Plan,
  step: NextStep,
  words: Words,
): PlanData['nextSteps'][number] {
  const { id, told, who } = step;
  return { id, what: words.step(step, home), ...(told !== undefined && { told }), who };
}

export function addOnData(one: AddOn, words: Words): PlanData['addOns'][number] {
  const { id, ...usd } = one;
  const { name, because, cost } = words.addOn;
  return { id, name: name(one), because: because(one), ...usd, cost: cost(one) };
}

export function fuelToStoreData({ fuelToStore }: Plan, words: Words): PlanData['fuelToStore'] {
  if (fuelToStore === null) return 'nothing more';
  const { code, needGallons, moreGallons, reachesGoal } = fuelToStore;
  return { code, says: words.fuelToStore(fuelToStore), needGallons, moreGallons, reachesGoal };
}
