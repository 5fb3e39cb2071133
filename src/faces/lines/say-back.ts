import { NOT_SURE } from '../../interview/answers';
import type { Event } from '../../interview/event';
import { questionAt } from '../../interview/questions/relevant';
import { reduce } from '../../interview/reduce';
import { sayAnswer } from '../../interview/say-answer';
import type { Context, State } from '../../interview/state';

/** What was understood, a sentence for each answer that is new. "Not sure" is said by what is taken instead. */
export function sayBack(context: Context, before: State, after: State): string[] {
  return Object.entries(after.answers)
    .filter(([id, answer]) => answer !== before.answers[id] && answer !== NOT_SURE)
    .map(([id, answer]) => {
      const question = questionAt(context, id);
      return `Noted: ${question.says}: ${sayAnswer(question, answer)}.`;
    });
}

/**
 * An answer in a matter of life, to be said back before it counts; null for every other. What must be acted on at once
 * waits for nothing.
 */
export function toBeSureOf(context: Context, state: State, event: Event): string | null {
  if (state.view !== 'ask' || !context.interview.sureOf.includes(state.at)) return null;
  if (event.type !== 'answer' && event.type !== 'typed') return null;
  const after = reduce(context, state, event);
  const answer = after.answers[state.at];
  if (after.error !== null || after.view === 'act-now' || after.view === 'unusual') return null;
  if (answer === undefined || answer === NOT_SURE) return null;
  const question = questionAt(context, state.at);
  return `${question.says}: ${sayAnswer(question, answer)}. Is that right? Type yes, or answer again.`;
}
