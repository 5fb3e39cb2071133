import { traitsOf } from '../../kinds/route-traits';
import type { Plan } from '../../plan/plan';
import type { Finding } from '../../rules/rule';
import type { RuleId } from '../../tables/rules';

/** So many fit, whole, on the first page of the sheet for the night beside when to leave. */
const FOR_THE_NIGHT = 4;

/** What can kill. */
const DEADLY = 5;

/**
 * The gravest of the front page, whole, on the sheet for the night. Where nothing was told that could stand there, what
 * kills in any home: a sheet for the night never goes without.
 */
export function forTheNight(plan: Plan): Finding[] {
  const { frontCautions: front, cautions } = plan;
  const deadly = front.length > 0 ? front : cautions.filter(({ severity }) => severity === DEADLY);
  return deadly.filter(({ id }) => !isTheOrder(plan, id)).slice(0, FOR_THE_NIGHT);
}

/** The order at the panel stands on the sheet as its steps, one by one. */
const isTheOrder = ({ advice }: Plan, id: RuleId) =>
  id === 'interlock-order' && traitsOf[advice.route.kind].connection === 'inlet';

/** What else stands on the front page: to be put right before the night comes, so it stands on the family's sheet. */
export function putRightBefore(plan: Plan): Finding[] {
  const night = forTheNight(plan);
  return plan.frontCautions.filter((one) => !night.includes(one) && !isTheOrder(plan, one.id));
}
