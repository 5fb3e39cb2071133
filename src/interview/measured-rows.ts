import type { ChoiceId, QuestionId } from '#compiled/question-ids.js';
import type { Answers } from './answers';
import type { Interview } from './questions/question';
import { offered, questionAt } from './questions/relevant';

/** The question that names what was measured. */
const MEASURED: QuestionId = 'measured';

/** One thing that may be measured, and what may be read of it beside its watts. */
export interface MeasuredRow {
  readonly id: ChoiceId<'measured'>;
  readonly label: string;
  readonly start: boolean;
  readonly day: boolean;
}

/** The things of a home that a meter could read; of every home where none is given. */
export function measuredRows(interview: Interview, answers: Answers | null): MeasuredRow[] {
  const gate = questionAt({ interview }, MEASURED);
  const things =
    answers === null ? (gate.choices ?? []) : offered({ interview }, { answers }, gate);
  const asks = (id: string) => interview.questions.some((one) => one.id === id);
  return things
    .filter(({ alone }) => alone !== true)
    .map(({ id, label }) => ({
      id: id as ChoiceId<'measured'>,
      label,
      start: asks(`${MEASURED}-${id}-start`),
      day: asks(`${MEASURED}-${id}-day`),
    }));
}

/** The questions that such a row stands for. */
export const isMeasured = ({ topic }: { readonly topic: string }): boolean => topic === MEASURED;
