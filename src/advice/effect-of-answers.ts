import type { Answer, Answers } from '../interview/answers';
import type { Interview, Question } from '../interview/question';
import { resolve } from '../interview/resolve';
import { type Change, changeBetween } from './change';
import { likelyAnswers, unsureShare } from './likely-answers';
import { type Trial, trials } from './trial';

/** What everything about one interview is tried with: the same object all through a sitting, so that nothing is worked out twice. */
export interface Bank {
  readonly interview: Interview;
  readonly trialOf: (answers: Answers) => Trial;
}

/** @param asOf the day ages are counted from, YYYY-MM-DD */
export function bankOf(interview: Interview, asOf: string): Bank {
  return { interview, trialOf: trials(interview, asOf) };
}

/** One answer tried. */
export interface Tried {
  readonly answer: Answer;
  readonly share: number;
  readonly change: Change;
}

/** What an open question could change in the advice. */
export interface Effect {
  readonly question: string;
  /** Mean weight of the change over those who can answer. */
  readonly ifTold: number;
  /** The same over all, "not sure" changing nothing. */
  readonly expected: number;
  readonly tried: readonly Tried[];
}

/** Put in each answer a question could get, and weigh what each would change, by how likely it is. */
export function effectOf(answers: Answers, bank: Bank, question: Question): Effect {
  const now = bank.trialOf(answers);
  const known = resolve(bank.interview.questions, answers, 'assume');
  const tried = likelyAnswers(question, known).map(({ answer, share }) => {
    const then = bank.trialOf({ ...answers, [question.id]: answer });
    return { answer, share, change: changeBetween(now, then) };
  });
  const ifTold = tried.reduce((sum, { share, change }) => sum + share * change.weight, 0);
  return {
    question: question.id,
    ifTold,
    expected: ifTold * (1 - unsureShare(question)),
    tried,
  };
}
