import { type Answers, choicesIn } from './answers';
import { typedFor } from './begin';
import { questionAt } from './questions/relevant';
import type { Context, State } from './state';

/** What was typed, or the ids that were ticked, and not entered: kept beside the answers, and no answer. */
export type Unfinished = Readonly<Record<string, string | readonly string[]>>;

/** True when the field holds a text that was typed since the question came up. */
export function isTyped(context: Context, state: State): boolean {
  const question = questionAt(context, state.at);
  if (question.choices !== undefined || state.field.text.trim() === '') return false;
  const before = state.unfinished[state.at] ?? typedFor(question, state.answers[state.at]);
  return state.field.text !== before;
}

/** The question on screen is left without an answer: what stands in it is kept for when it comes up again. */
export function setAside(context: Context, state: State): State {
  const question = questionAt(context, state.at);
  if (
    [
      'welcome',
      'walk',
      'act-now',
      'tonight',
      'tonight-help',
      'first-plan',
      'wait',
      'enough',
      'check',
      'read-back',
      'compare',
    ].includes(state.view)
  )
    return state;
  if (question.kind === 'choices') {
    const same = sameIds(state.ticked, state.answers[state.at]);
    return { ...state, unfinished: put(state.unfinished, state.at, same ? null : state.ticked) };
  }
  if (question.choices !== undefined) return state;
  const { text } = state.field;
  const same = text.trim() === '' || text === typedFor(question, state.answers[state.at]);
  return { ...state, unfinished: put(state.unfinished, state.at, same ? null : text) };
}

/** Without what stood unfinished in one question, or the same object when nothing did. */
export function settled(unfinished: Unfinished, id: string): Unfinished {
  return put(unfinished, id, null);
}

function put(all: Unfinished, id: string, one: string | readonly string[] | null): Unfinished {
  if (one === null) {
    if (!(id in all)) return all;
    const { [id]: _, ...rest } = all;
    return rest;
  }
  return { ...all, [id]: one };
}

function sameIds(ticked: readonly string[], answer: Answers[string] | undefined): boolean {
  const told = choicesIn(answer) ?? [];
  return ticked.length === told.length && ticked.every((id) => told.includes(id));
}
