import type { OtherRoute } from '../../../plan/changes/other-route';
import { inSentence } from '../list-of';

/** The whole plan advises another route than stood beside the questions. */
export function sayOtherRoute({ talkTitle, planTitle, talkYears, planYears }: OtherRoute): string {
  return `Beside the questions stood: ${inSentence(talkTitle)}. That was a quick look at ${talkYears} drawn years. This plan counts ${planYears}, and advises: ${inSentence(planTitle)}.`;
}
