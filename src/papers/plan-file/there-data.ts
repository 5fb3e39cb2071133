import type { Plan } from '../../plan/plan';
import type { Words } from '../../words/words';
import { figureData, round } from './figure-data';
import type { PlanData } from './plan-schema';

/** What the household has already. */
export function thereData({ whatIsThere }: Plan, words: Words): PlanData['whatIsThere'] {
  return whatIsThere.map((one) => ({
    id: one.id,
    size: one.size === null ? 'not told' : figureData(one.size, words),
    ageYears: one.ageYears === null ? 'not asked' : round(one.ageYears),
    needs: [...one.needs],
    counts: one.counts,
    builtOn: one.builtOn.map(({ kind, usd }) => ({ route: kind, usd: round(usd) })),
    says: words.household.whatIsThere.one(one),
  }));
}
