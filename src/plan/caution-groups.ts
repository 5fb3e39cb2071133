import type { Finding } from '../rules/rule';
import { ruleOf } from '../tables/rules';
import { outOfSeason } from './out-of-season';
import type { Plan } from './plan';

/** The cautions of a plan in the order in which they matter to this home; each is in one group. */
export interface CautionGroups {
  /** Told by the household, and wrong as it is. */
  readonly wrong: readonly Finding[];
  /** What else follows from the answers. */
  readonly known: readonly Finding[];
  /** The same, of the season the plan is not for. */
  readonly otherSeason: readonly Finding[];
  /** For want of an answer. */
  readonly open: readonly Finding[];
}

export function cautionGroups({ cautions, home }: Pick<Plan, 'cautions' | 'home'>): CautionGroups {
  const told = cautions.filter((one) => !one.careful);
  const wrong = told.filter((one) => ruleOf(one.id).wrongAsItIs);
  const rest = told.filter((one) => !wrong.includes(one));
  const otherSeason = rest.filter((one) => outOfSeason(home, one.id));
  return {
    wrong,
    known: rest.filter((one) => !otherSeason.includes(one)),
    otherSeason,
    open: cautions.filter((one) => one.careful),
  };
}
