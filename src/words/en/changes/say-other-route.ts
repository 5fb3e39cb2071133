import type { OtherRoute } from '../../../plan/changes/other-route';
import { inSentence } from '../list-of';
import { sayRouteTitle } from '../routes/route-titles';

/** The whole plan advises another route than stood beside the questions. */
export function sayOtherRoute({ talk, plan, talkYears, planYears }: OtherRoute): string {
  return `Beside the questions stood: ${inSentence(sayRouteTitle(talk))}. That was a quick look at ${talkYears} drawn years. This plan counts ${planYears}, and advises: ${inSentence(sayRouteTitle(plan))}.`;
}
