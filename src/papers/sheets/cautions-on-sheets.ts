import type { Plan } from '../../plan/plan';
import type { Finding } from '../../rules/rule';
import { frontCautions } from '../household/front/front-cautions';

/** So many fit, whole, on the first page of the sheet for the night beside when to leave. */
const FOR_THE_NIGHT = 4;

/** What can kill. */
const DEADLY = 5;

/**
 * The gravest of the front page, whole, on the sheet for the night. Where nothing was told that could stand there, what
 * kills in any home: a sheet for the night never goes without.
 */
export function forTheNight(plan: Plan): Finding[] {
  const front = frontCautions(plan);
  const deadly =
    front.length > 0 ? front : plan.cautions.filter(({ severity }) => severity === DEADLY);
  return deadly.slice(0, FOR_THE_NIGHT);
}

/** What else stands on the front page: to be put right before the night comes, so it stands on the family's sheet. */
export const putRightBefore = (plan: Plan): Finding[] => frontCautions(plan).slice(FOR_THE_NIGHT);
