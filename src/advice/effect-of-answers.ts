import type { Answer, Answers } from '../interview/answers';
import type { Interview, Question } from '../interview/questions/question';
import { type Resolved, resolve } from '../interview/questions/resolve';
import { bringers } from './bringers';
import { type Change, changeBetween } from './change';
import { likelyAnswers, unsureShare } from './likely-answers';
import { type Trial, trials } from './trial';
import { usualHere } from './usual-here';

/** What everything about one interview is tried with: the same object all through a sitting, so that nothing is worked out twice. */
export interface Bank {
  readonly interview: Interview;
  readonly trialOf: (answers: Answers) => Trial;
  /** What is known by these answers; what nobody answered counts as "not sure". */
  readonly knownOf: (answers: Answers) => Resolved;
  /** The questions whose being asked hangs on an answer to this one. */
  readonly broughtBy: ReadonlyMap<string, readonly Question[]>;
}

/** @param asOf the day ages are counted from, YYYY-MM-DD */
export function bankOf(interview: Interview, asOf: string): Bank {
  const trialOf = trials(interview, asOf);
  const resolved = new WeakMap<Answers, Resolved>();
  const knownOf = (answers: Answers) => {
    const known = resolved.get(answers) ?? resolve(interview.questions, answers, 'assume');
    resolved.set(answers, known);
    return known;
  };
  return { interview, trialOf, knownOf, broughtBy: bringers(interview) };
}

/** One answer tried. */
export interface Tried {
  readonly answer: Answer;
  readonly share: number;
  readonly change: Change;
  /** The trial it makes. */
  readonly trial: Trial;
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

/** Below this mean change of the advice a question changes nothing worth asking for. Our judgement. */
export const CHANGES_NOTHING = 0.005;

/**
 * Put in each answer a question could get, and weigh what each would change, by how likely it is. Where no answer alone
 * changes anything, those to the questions that it brings up are put in behind it: two that matter only together.
 */
export function effectOf(answers: Answers, bank: Bank, question: Question): Effect {
  const now = bank.trialOf(answers);
  const alone = tryAnswers(answers, bank, question, now);
  const tried =
    meanWeight(alone) < CHANGES_NOTHING
      ? [...alone, ...behind(answers, bank, question, now)]
      : alone;
  const ifTold = meanWeight(tried);
  return {
    question: question.id,
    ifTold,
    expected: ifTold * (1 - unsureShare(question)),
    tried,
  };
}

const meanWeight = (tried: readonly Tried[]) =>
  tried.reduce((sum, { share, change }) => sum + share * change.weight, 0);

function tryAnswers(answers: Answers, bank: Bank, question: Question, now: Trial): Tried[] {
  const here = usualHere(question, now.home);
  if (here === null) return [];
  const known = bank.knownOf(answers);
  return likelyAnswers(here, known).map(({ answer, share }) => {
    const trial = bank.trialOf({ ...answers, [question.id]: answer });
    return { answer, share, change: changeBetween(now, trial), trial };
  });
}

/** The answers once more, each with the answers to what it brings up, as likely as both together; of several, the one that changes most. */
function behind(answers: Answers, bank: Bank, question: Question, now: Trial): Tried[] {
  const brought = (bank.broughtBy.get(question.id) ?? []).filter(
    ({ id }) => answers[id] === undefined,
  );
  if (brought.length === 0) return [];
  const known = bank.knownOf(answers);
  return likelyAnswers(question, known).flatMap(({ answer, share }) => {
    const then = { ...answers, [question.id]: answer };
    const knownThen = bank.knownOf(then);
    const sets = brought
      .filter(({ id }) => knownThen.has(id) && !known.has(id))
      .map((next) =>
        tryAnswers(then, bank, next, now).map((one) => ({
          answer,
          share: share * one.share * (1 - unsureShare(next)),
          change: one.change,
          trial: one.trial,
        })),
      );
    return sets.reduce<Tried[]>(
      (most, set) => (meanWeight(set) > meanWeight(most) ? set : most),
      [],
    );
  });
}
