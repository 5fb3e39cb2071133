import type { Interview } from './questions/question';

/** The interview of a household with a tariff of its own: what the tariff tells is not asked, and not assumed. */
export function besideTariff(interview: Interview, hasTariff: boolean): Interview {
  if (!hasTariff) return interview;
  const left = (id: string) => !interview.tariff.includes(id);
  return {
    ...interview,
    questions: interview.questions.filter((question) => left(question.id)),
    mattersMost: interview.mattersMost.filter(left),
  };
}
