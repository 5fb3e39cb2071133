import type { Question } from '../interview/questions/question';
import { changeBetween, type Weighing } from './change';
import type { Effect, Tried } from './effect-of-answers';
import { unsureShare } from './likely-answers';
import { liveAdvice } from './live-advice';
import { sameMakings } from './makings';
import type { Trial } from './trial';

/** What an open question could change in what the plan's own list advises. */
export interface ListedEffect extends Effect {
  /** Mean weight of what changes in the purchase alone: another kind of route, or another price. */
  readonly buys: number;
}

/** By all sizes, fuel and ways of living, as the pane beside the question and the plan weigh. */
export const byTheList: Weighing = (trial) => ({
  route: liveAdvice(trial).route,
  beside: trial.advice.beside,
});

/** The answers that were tried quickly, weighed by the whole list: several times as slow. */
export function listedEffect(now: Trial, quick: Effect, question: Question): ListedEffect {
  const tried = quick.tried.map((one) => ({ ...one, change: listedChange(now, one) }));
  const mean = (weight: (one: Tried) => number) =>
    tried.reduce((sum, one) => sum + one.share * weight(one), 0);
  const ifTold = mean(({ change }) => change.weight);
  return {
    question: question.id,
    ifTold,
    expected: ifTold * (1 - unsureShare(question)),
    tried,
    buys: mean(({ change }) => change.buys),
  };
}

function listedChange(now: Trial, { trial, change }: Tried) {
  const { sharpens } = change;
  const listed = changeBetween(now, sameMakings(now, trial) ? now : trial, byTheList);
  return { ...listed, sharpens };
}
