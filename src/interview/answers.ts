/** Stands in the answers where the household said it is not sure. */
export const NOT_SURE = 'not sure';

/** A choice id, a list of choice ids, a number in the question's unit, a text, or NOT_SURE. */
export type Answer = string | number | readonly string[];

/** Answers by question id. A question that was not answered is absent. */
export type Answers = Readonly<Record<string, Answer>>;
