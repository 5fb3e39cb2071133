import { type Answers, choicesIn, NOT_SURE } from '../answers';
import type { Choice, Interview, Question } from '../questions/question';
import { offered, questionAt, relevant } from '../questions/relevant';

/** Where it is asked what must keep running: at once, and once more of what was told later. */
const MUST_RUN = 'must-run';
const MUST_ALSO = 'must-also';

/** One load that must run, or could, and the answers with it changed. */
export interface MustRunChange {
  readonly choice: Choice;
  readonly isIn: boolean;
  readonly answers: Answers;
  /** The question that keeping it asks. */
  readonly asks: string;
}

/** Every load the household can take off what must keep running, and every one it can add. */
export function mustRunChanges(interview: Interview, answers: Answers): MustRunChange[] {
  const asked = relevant({ interview, short: false }, answers).map(({ id }) => id);
  const context = { interview };
  return [MUST_RUN, MUST_ALSO]
    .filter((id) => asked.includes(id) && answers[id] !== undefined)
    .flatMap((id) => {
      const question = questionAt(context, id);
      const choices = offered(context, { answers }, question).filter((one) => one.alone !== true);
      const ticked = tickedOf(question, answers, choices);
      return choices.map((choice) => {
        const isIn = ticked.includes(choice.id);
        const next = isIn ? ticked.filter((one) => one !== choice.id) : [...ticked, choice.id];
        const none = question.choices?.find((one) => one.alone === true)?.id;
        const answer = next.length === 0 && none !== undefined ? [none] : next;
        return { choice, isIn, asks: id, answers: { ...answers, [id]: answer } };
      });
    });
}

/** Not sure is what is assumed then, as far as this home has it. */
function tickedOf(question: Question, answers: Answers, choices: readonly Choice[]): string[] {
  const told = answers[question.id];
  const list = told === NOT_SURE ? question.unsure.assume : told;
  const ids = choicesIn(list) ?? [];
  return ids.filter((id) => choices.some((choice) => choice.id === id));
}
