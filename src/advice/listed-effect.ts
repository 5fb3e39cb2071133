import type { Question } from '../interview/questions/question';
import { changeBetween, type Weighing } from './change';
import type { Effect, Tried } from './effect-of-answers';
import { unsureShare } from './likely-answers';
import { liveAdvice } from './live-advice';
import { sameMakings } from './makings';
import type { Trial } from './trial';

/** By all sizes, fuel and ways of living, as the pane beside the question and the plan weigh. */
export const byTheList: Weighing = (trial) => ({
  route: liveAdvice(trial).route,
  beside: trial.advice.beside,
});

/** The answers that were tried quickly, weighed by the whole list: several times as slow. */
export function listedEffect(now: Trial, quick: Effect, question: Question): Effect {
  const tried = quick.tried.map((one) => ({ ...one, change: listedChange(now, one) }));
  const ifTold = tried.reduce((sum, { share, change }) => sum + share * change.weight, 0);
  return {
    question: question.id,
    ifTold,
    expected: ifTold * (1 - unsureShare(question)),
    tried,
  };
}

function listedChange(now: Trial, { trial, change }: Tried) {
  const { sharpens } = change;
  const listed = changeBetween(now, sameMakings(now, trial) ? now : trial, byTheList);
  return { ...listed, sharpens };
}
