import type { OtherRoute } from '../../../plan/changes/other-route';
import { inSentence } from '../list-of';

/** The whole plan advises another route than stood beside the questions. */
export function sayOtherRoute({ talkTitle, planTitle, talkYears, planYears }: OtherRoute): string {
  return `Beside the questions stood: ${inSentence(talkTitle)}. That was a quick look at ${talkYears} drawn years and one size of each kind. This plan weighs all sizes over ${planYears} years, and advises: ${inSentence(planTitle)}.`;
}
