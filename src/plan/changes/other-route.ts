import { TRIAL_YEARS, trials } from '../../advice/trial';
import type { Answers } from '../../interview/answers';
import type { Interview } from '../../interview/questions/question';
import type { RouteTitle } from '../../kinds/route-title';
import { glanceOf } from '../draft/glance';
import type { Plan } from '../plan';

/** The whole plan advises another kind of route than its quick look beside the questions. */
export interface OtherRoute {
  readonly talk: RouteTitle;
  readonly plan: RouteTitle;
  readonly talkYears: number;
  readonly planYears: number;
}

/**
 * Null where both advise the same, or where one of them advises nothing yet.
 * @param interview as it is asked where the household has a tariff of its own
 */
export function otherRoute(
  interview: Interview,
  answers: Answers,
  { advice, undecided, asOf, weatherYears }: Plan,
): OtherRoute | null {
  const { route } = glanceOf(trials(interview, asOf)(answers), () => []);
  if (route === null || undecided.length > 0 || route.kind === advice.route.kind) return null;
  return {
    talk: route.called,
    plan: advice.route.called,
    talkYears: TRIAL_YEARS,
    planYears: weatherYears,
  };
}
