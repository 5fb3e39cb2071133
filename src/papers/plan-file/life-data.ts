import type { Plan } from '../../plan/plan';
import type { PlanData } from './plan-schema';

export function lifeFirstData(first: Plan['lifeFirst']): PlanData['lifeFirst'] {
  if (first === null) return 'nobody';
  const { ownBattery } = first;
  return {
    ...first,
    callToday: [...first.callToday],
    ownBattery: { ...ownBattery, toldHours: ownBattery.toldHours ?? 'not known' },
    secondWays: [...first.secondWays],
  };
}

export function healthFirstData(first: Plan['healthFirst']): PlanData['healthFirst'] {
  if (first === null) return null;
  return {
    carried: [...first.carried],
    missed: [...first.missed],
    covered: first.covered === null ? null : { ...first.covered },
  };
}
