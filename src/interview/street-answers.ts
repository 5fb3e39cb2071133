import { type Answers, NOT_SURE } from './answers';
import type { Interview } from './questions/question';

/** What another home of the street can take over: the place and what power costs, as far as it was told. Nothing personal. */
export function streetAnswers(interview: Interview, answers: Answers): Answers {
  const shared = new Set([...interview.street, ...interview.tariff]);
  return Object.fromEntries(
    Object.entries(answers).filter(([id, answer]) => shared.has(id) && answer !== NOT_SURE),
  );
}

/** The same by short names, what a tariff tells under one. */
export function streetWords(interview: Interview, answers: Answers, hasTariff: boolean): string[] {
  const ids = Object.keys(streetAnswers(interview, answers));
  const says = interview.questions
    .filter(({ id }) => ids.includes(id) && !interview.tariff.includes(id))
    .map((question) => question.says);
  const pays = hasTariff || ids.some((id) => interview.tariff.includes(id));
  return [...says.map(small), ...(pays ? ['what power costs'] : [])];
}

/** "Rate plan" becomes "rate plan", "ZIP code" stays. */
function small(says: string): string {
  return /^[A-Z][a-z]/.test(says) ? says[0]!.toLowerCase() + says.slice(1) : says;
}
