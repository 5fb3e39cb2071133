/** Stands in the answers where the household said it is not sure. */
export const NOT_SURE = 'not sure';

/** A choice id, a list of choice ids, a number or several in the question's unit, a text, or NOT_SURE. */
export type Answer = string | number | readonly string[] | readonly number[];

/** The ticked choices of an answer; null when it is not a list of choices. */
export function choicesIn(answer: Answer | null | undefined): readonly string[] | null {
  if (answer === null || typeof answer !== 'object') return null;
  return answer.every((one) => typeof one === 'string') ? (answer as readonly string[]) : null;
}

/** The numbers of an answer in the question's unit; null when it is not a list of numbers. */
export function numbersIn(answer: Answer | null | undefined): readonly number[] | null {
  if (answer === null || typeof answer !== 'object' || answer.length === 0) return null;
  return answer.every((one) => typeof one === 'number') ? (answer as readonly number[]) : null;
}

/** Answers by question id. A question that was not answered is absent. */
export type Answers = Readonly<Record<string, Answer>>;
