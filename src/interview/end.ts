import type { Answer } from './answers';
import { checkTyped } from './check-answer';
import { questionAt } from './questions/relevant';
import type { Context, Ending, State } from './state';
import { isTyped, setAside } from './unfinished';
import { words } from './words';

/** The interview ended, with nothing lost: what was typed stays, and a home without a name gets one. */
export function end(context: Context, state: State, ending: Ending): State {
  const left = setAside(context, state);
  return { ...left, ending, answers: named(context, left) };
}

/** "Save and stop": a text that can be an answer is taken in first. A name that cannot be says why, and stays. */
export function saveAndStop(context: Context, state: State): State {
  const question = questionAt(context, state.at);
  if (state.view !== 'ask' || !isTyped(context, state)) return end(context, state, 'saved');
  const read = checkTyped(question, state.field.text);
  if (question.kind === 'name') {
    const problem = read.ok ? context.nameProblem(String(read.value)) : read.message;
    if (problem !== null) return { ...state, row: 0, error: `${problem} ${words.nameToSave}` };
  }
  if (!read.ok || read.unusual) return end(context, state, 'saved');
  const answers = { ...state.answers, [state.at]: read.value };
  return end(context, { ...state, answers }, 'saved');
}

/** The answers with a name to keep them under, once there is anything to keep. */
function named(context: Context, state: State): State['answers'] {
  const { answers } = state;
  if (answers['home-name'] !== undefined) return answers;
  const typed = typedName(context, state);
  if (typed !== null) return { ...answers, 'home-name': typed };
  const told = Object.entries(answers).filter(
    ([id, answer]) => !saysNone(context, id, answer) && context.takenOver?.includes(id) !== true,
  );
  return told.length === 0 ? answers : { ...answers, 'home-name': context.spareName() };
}

function typedName(context: Context, { at, field }: State): string | null {
  const question = questionAt(context, at);
  if (question.kind !== 'name' || field.text.trim() === '') return null;
  const read = checkTyped(question, field.text);
  if (!read.ok || context.nameProblem(String(read.value)) !== null) return null;
  return String(read.value);
}

/** "None of these" alone is nothing to keep: danger is asked afresh at the next sitting. */
function saysNone(context: Context, id: string, answer: Answer): boolean {
  const alone = questionAt(context, id).choices?.filter((choice) => choice.alone) ?? [];
  return Array.isArray(answer) && answer.every((one) => alone.some((choice) => choice.id === one));
}
